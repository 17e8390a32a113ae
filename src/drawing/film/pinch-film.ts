import { keyOf } from "../../words/words.ts";
import { arrow, bold, circle, type Point, point, polygon, polyline, thin, thinSoft } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item, Stroke } from "../model.ts";
import { smooth } from "../smooth.ts";
import { strandStrokes } from "../strands.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { pinchingHand } from "./hand.ts";
import { placed } from "./moving.ts";

const steps = ["open", "lay", "close", "never teeth", "try"] as const;
type Step = (typeof steps)[number];

/** All in hundredths of the picture's width. */
const height = 78;
const radius = 12;
const middle = { x: 50, y: 36 };
/** How wide the slit is to either side of its middle. */
const gap = { open: 4.6, closed: 1.3 };
type Place = readonly [number, number];

/** The line from above the picture to below it, beside the shot and in its slit. */
const lines: Readonly<Record<"beside" | "in", readonly [from: Place, to: Place]>> = {
  beside: [
    [66, 1],
    [88, 77],
  ],
  in: [
    [middle.x, 1],
    [middle.x, 77],
  ],
};

/** A shot pinched on, larger than it is: its slit open, the line in it, closed, never with the teeth, and tried. */
export function pinchFilm(_: unknown, __: unknown, { widthMm }: FilmRoom, { words }: DrawingKit): Film {
  const unit = widthMm / 100;
  const at = (x: number, y: number) => point(x * unit, y * unit);
  return {
    widthMm,
    heightMm: height * unit,
    title: words("drawing.film.pinch.title"),
    description: words("drawing.film.pinch.about"),
    still: [],
    moments: steps.map(
      (step): Moment => ({
        caption: words(`drawing.film.pinch.do.${keyOf(step)}`),
        moving: pictures[step](at, unit),
      }),
    ),
    strip: steps.map((_, i) => i),
  };
}

type At = (x: number, y: number) => Point;

const accent: Stroke = { ink: "accent", widthMm: 0.9 };

const pictures: Readonly<Record<Step, (at: At, unit: number) => Item[]>> = {
  open: (at, unit) => [
    ...pinched(at, unit, gap.open, "beside"),
    ...arrow(at(middle.x + 16, 14), at(middle.x + 5, 20), accent, 2.6),
  ],
  lay: (at, unit) => pinched(at, unit, gap.open, "in"),
  close: (at, unit) => [
    ...pinched(at, unit, gap.closed, "in"),
    ...arrow(at(10, 30), at(22, 30), accent, 2.6),
    ...arrow(at(90, 30), at(78, 30), accent, 2.6),
  ],
  "never teeth": (at, unit) => [...mouth(at), ...slitShot(at, unit, gap.closed, bitten), ...crossedOut(at)],
  try: (at, unit) => {
    const ballMm = 0.8 * radius * unit;
    return [
      polyline([at(2, middle.y), at(98, middle.y)], strandStrokes["main line"]),
      placed(at(middle.x - 16, middle.y), [
        circle(point(0, 0), ballMm, { fill: "ink" }),
        polyline([point(-ballMm, 0), point(ballMm, 0)], { ink: "paper", widthMm: 0.5 }),
      ]),
      ...pinchingHand(at(middle.x - 5, middle.y), 4.3 * unit, 2.4 * unit),
      ...arrow(at(22, 20), at(6, 20), accent, 2.6),
      ...drop(at(34, 14), unit),
    ];
  },
};

/** The shot between finger and thumb with so wide a slit, and where the line is. */
function pinched(at: At, unit: number, slit: number, where: keyof typeof lines): Item[] {
  const [from, to] = lines[where];
  const cord = (stroke: Stroke) => polyline([at(...from), at(...to)], stroke);
  return [
    ...slitShot(at, unit, slit, radius),
    ...holdingHand(at, slit),
    // It is nearer to the reader than all else, and has a light edge.
    cord({ ink: "paper", widthMm: 2.2 }),
    cord({ ink: "accent", widthMm: 1.2 }),
  ];
}

/** A shot with its slit towards the reader, from its top to its foot; narrower by so much as the shot is smaller. */
function slitShot(at: At, unit: number, slit: number, size: number): Item[] {
  const { x, y } = middle;
  const half = (slit * size) / radius;
  const reach = Math.sqrt(size * size - half * half);
  const edge = (side: 1 | -1) =>
    smooth([
      at(x + 0.5 * side * half, y - reach),
      at(x + side * half, y),
      at(x + 0.5 * side * half, y + reach),
    ]);
  return [
    placed(at(x, y), [circle(point(0, 0), size * unit, { fill: "ink" })]),
    polygon([...edge(-1), ...edge(1).toReversed()], "paper"),
    polyline([at(x, y - reach), at(x, y + reach)], thinSoft),
  ];
}

/** A hand from below, a shot between the tips of its thumb and its forefinger, the other fingers folded. */
function holdingHand(at: At, slit: number): Item[] {
  // A shot whose slit closes gives way by so much.
  const give = (gap.open - slit) / 3;
  const left = (x: number, y: number) => at(x + give, y);
  const right = (x: number, y: number) => at(x - give, y);
  const thumb = [
    left(37.6, 34),
    left(37.9, 39),
    left(37.6, 45),
    at(39.5, 52),
    at(44, 57.5),
    at(47, 66),
    at(46, 72),
    at(20, 72),
    at(19, 62),
    at(22, 51),
    left(25.5, 41),
    left(27.5, 33),
    left(31, 28.6),
    left(35.4, 29.4),
  ];
  const forefinger = [
    right(62.4, 34),
    right(62.1, 39),
    right(63, 45),
    at(64.5, 50),
    at(60, 57),
    at(54, 72),
    at(79, 72),
    at(82, 62),
    at(81, 52),
    at(77.5, 44),
    right(74.5, 36),
    right(71, 29.6),
    right(65.4, 29),
  ];
  const folded = [56.4, 62.6, 68.8].map((y) => [
    at(79, y - 3.2),
    at(66, y - 3.4),
    at(52.5, y - 2.8),
    at(50, y),
    at(52.5, y + 2.8),
    at(66, y + 3.2),
    at(79, y + 3),
    at(80.5, y),
  ]);
  const outlined = (points: readonly Point[]) => polygon(smooth(points, true), "paper", bold);
  const nail = (points: readonly Point[]) => polygon(smooth(points, true), "paper", thin);
  return [
    outlined(forefinger),
    ...folded.toReversed().map(outlined),
    outlined(thumb),
    nail([left(28.6, 35), left(30.4, 31), left(32.6, 31.4), left(32, 35.6), left(29.8, 38.6)]),
    nail([right(71.4, 35), right(69.6, 31), right(67.4, 31.4), right(68, 35.6), right(70.2, 38.6)]),
    polygon([at(17, 71), at(84, 71), at(84, height), at(17, height)], "ink"),
  ];
}

/** Two strokes across the picture, with a light edge that tells them from what is dark below. */
function crossedOut(at: At): Item[] {
  const strokes = (stroke: Stroke) => [
    polyline([at(12, 4), at(88, 70)], stroke),
    polyline([at(88, 4), at(12, 70)], stroke),
  ];
  return [...strokes({ ink: "paper", widthMm: 2.6 }), ...strokes({ ink: "accent", widthMm: 1.4 })];
}

/** Radius of a shot between teeth. */
const bitten = 6.4;

/** A mouth seen from in front, its teeth on a shot. */
function mouth(at: At): Item[] {
  const { x, y } = middle;
  /** Lips with corners at either side, the upper one dipping in the middle. */
  const lips = (wide: number, up: number, dip: number, down: number): Item => {
    const to = (dx: number, dy: number) => {
      const { xMm, yMm } = at(x + dx, y + dy);
      return [xMm, yMm] as const;
    };
    return {
      kind: "path",
      steps: [
        ["M", ...to(-wide, 0)],
        ["C", ...to(-0.6 * wide, -up), ...to(-0.2 * wide, -1.15 * up), ...to(0, -up + dip)],
        ["C", ...to(0.2 * wide, -1.15 * up), ...to(0.6 * wide, -up), ...to(wide, 0)],
        ["C", ...to(0.6 * wide, 1.05 * down), ...to(0.3 * wide, down), ...to(0, down)],
        ["C", ...to(-0.3 * wide, down), ...to(-0.6 * wide, 1.05 * down), ...to(-wide, 0)],
        ["Z"],
      ],
      fill: "paper",
      stroke: bold,
    };
  };
  const teeth = [-1, 1].flatMap((side) =>
    [-3, -2, -1, 0, 1, 2, 3].map((place) => {
      const across = x + 7.4 * place;
      const root = y + side * (17 - 1.1 * Math.abs(place));
      const edge = y + side * (bitten - 0.2);
      return polygon(
        [at(across - 3.7, root), at(across - 3.4, edge), at(across + 3.4, edge), at(across + 3.7, root)],
        "paper",
        thin,
      );
    }),
  );
  return [lips(40, 27, 4, 30), lips(33, 17.4, 1, 18.4), ...teeth];
}

function drop({ xMm, yMm }: Point, unit: number): Item[] {
  const on = (x: number, y: number) => [xMm + x * unit, yMm + y * unit] as const;
  return [
    {
      kind: "path",
      steps: [
        ["M", ...on(0, -2.6)],
        ["C", ...on(0.6, -1), ...on(2.2, 0.4), ...on(2.2, 2)],
        ["C", ...on(2.2, 4.8), ...on(-2.2, 4.8), ...on(-2.2, 2)],
        ["C", ...on(-2.2, 0.4), ...on(-0.6, -1), ...on(0, -2.6)],
        ["Z"],
      ],
      fill: "water",
      stroke: thin,
    },
  ];
}
