import { keyOf } from "../../words/words.ts";
import {
  accent,
  arrow,
  bold,
  circle,
  type Point,
  point,
  polygon,
  polyline,
  text,
  thin,
  thinSoft,
} from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item, Stroke } from "../model.ts";
import { smooth } from "../smooth.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { pinchingHand } from "./hand.ts";
import { placed } from "./moving.ts";

const steps = ["open", "lay", "close", "never teeth", "try"] as const;
type Step = (typeof steps)[number];

/** All in hundredths of the picture's width. */
const height = 66;
const radius = 11;
const middle = { x: 34, y: 36 };
/** Half of how wide the slit is. */
const gap = { open: 4.2, closed: 0.9 };
/** A finger's half width, for `pinchingHand`. */
const hand = 3.8;

/** A shot pinched on, larger than it is: its slit open, the line in it, closed, never with the teeth, and tried. */
export function pinchFilm(
  _: unknown,
  __: unknown,
  { widthMm, textMm }: FilmRoom,
  { words }: DrawingKit,
): Film {
  const unit = widthMm / 100;
  const headMm = 1.3 * textMm;
  const at = (x: number, y: number) => point(x * unit, y * unit + headMm);
  return {
    widthMm,
    heightMm: height * unit + headMm,
    title: words("drawing.film.pinch.title"),
    description: words("drawing.film.pinch.about"),
    still: [],
    moments: steps.map(
      (step): Moment => ({
        caption: words(`drawing.film.pinch.do.${keyOf(step)}`),
        moving: [
          text(point(0, textMm), words(`drawing.film.pinch.name.${keyOf(step)}`), textMm, { face: "bold" }),
          ...pictures[step](at, unit),
        ],
      }),
    ),
    strip: steps.map((_, i) => i),
  };
}

type At = (x: number, y: number) => Point;

const pictures: Readonly<Record<Step, (at: At, unit: number) => Item[]>> = {
  open: (at, unit) => [
    ...pinched(at, unit, gap.open),
    ...line(at, [1, 12], [60, 5]),
    ...arrow(at(12, 17), at(18, 29), accent, 2.6),
  ],
  lay: (at, unit) => [...pinched(at, unit, gap.open), ...line(at, [1, middle.y], [99, middle.y])],
  close: (at, unit) => [
    ...pinched(at, unit, gap.closed),
    ...line(at, [1, middle.y], [99, middle.y]),
    ...arrow(at(24, 2), at(24, 13), accent, 2.6),
    ...arrow(at(24, 65), at(24, 56), accent, 2.6),
  ],
  "never teeth": (at, unit) => [...biting(at, unit), ...crossedOut(at)],
  try: (at, unit) => [
    ...pinched(at, unit, gap.closed),
    ...line(at, [1, middle.y], [99, middle.y]),
    // The drop wets the line, and the shot goes along it.
    ...arrow(at(20, 45), at(5, 45), accent, 2.6),
    ...drop(at(12, 27), unit),
  ],
};

/** The shot between finger and thumb, with so wide a slit. */
function pinched(at: At, unit: number, slit: number): Item[] {
  return [
    ...pinchingHand(at(middle.x, middle.y), hand * unit, 2 * radius * unit - 0.6 * (gap.open - slit) * unit),
    ...slitShot(at, unit, slit, { ...middle, size: radius }),
  ];
}

/** The line is nearer to the reader than all else, and has a light edge. */
function line(at: At, from: readonly [number, number], to: readonly [number, number]): Item[] {
  const cord = (stroke: Stroke) => polyline([at(...from), at(...to)], stroke);
  return [cord({ ink: "paper", widthMm: 2.2 }), cord({ ink: "ink", widthMm: 1.1 })];
}

interface Ball {
  readonly x: number;
  readonly y: number;
  readonly size: number;
}

/** A shot with its slit towards the reader, from side to side. */
function slitShot(at: At, unit: number, slit: number, { x, y, size }: Ball): Item[] {
  const reach = Math.sqrt(size * size - slit * slit);
  const edge = (side: 1 | -1) =>
    smooth([
      at(x - reach, y + 0.5 * side * slit),
      at(x, y + side * slit),
      at(x + reach, y + 0.5 * side * slit),
    ]);
  return [
    placed(at(x, y), [circle(point(0, 0), size * unit, { fill: "ink" })]),
    polygon([...edge(-1), ...edge(1).toReversed()], "paper"),
    polyline([at(x - reach, y), at(x + reach, y)], thinSoft),
  ];
}

/** Two strokes across the picture, with a light edge that tells them from what is dark below. */
function crossedOut(at: At): Item[] {
  const strokes = (stroke: Stroke) => [
    polyline([at(14, 5), at(88, 61)], stroke),
    polyline([at(88, 5), at(14, 61)], stroke),
  ];
  return [...strokes({ ink: "paper", widthMm: 2.6 }), ...strokes({ ink: "accent", widthMm: 1.4 })];
}

type Place = readonly [number, number];

/** A head from the side, from the neck over chin, mouth, nose and brow to its back. */
const head: readonly Place[] = [
  [72, 63.6],
  [70, 58],
  [60, 61],
  [49, 62],
  [44, 59],
  [43.4, 54],
  [41.6, 51.4],
  [41.4, 48.4],
  [44.6, 47.8],
  [53, 43],
  [55, 41.4],
  [52, 40],
  [43, 37.4],
  [40.6, 36],
  [41.6, 32.6],
  [38.4, 31.6],
  [35, 29.6],
  [36.4, 27.4],
  [41.6, 20],
  [41, 15.4],
  [43.6, 8],
  [54, 1.6],
  [70, 0.8],
  [84, 6],
  [91, 18],
  [90.4, 32],
  [86, 44],
  [88, 56],
  [91.6, 63.6],
];

/** The open mouth, between the edges of both jaws. */
const mouth: readonly Place[] = [
  [43, 37.4],
  [52, 40],
  [55, 41.4],
  [53, 43],
  [44.6, 47.8],
];
/** Its lips round it, from the profile to the corner. */
const lips: readonly (readonly Place[])[] = [
  [
    [40.7, 35.4],
    [44, 34.6],
    [49.4, 36.4],
    [55.6, 41.2],
    [52, 40.2],
    [46.4, 38.5],
    [41.6, 37.5],
  ],
  [
    [41.5, 48.2],
    [45, 47.6],
    [49.4, 45],
    [55.6, 41.6],
    [51.4, 46.6],
    [47, 50.4],
    [42, 51.8],
    [40.8, 50],
  ],
];
/** The lid of its eye, its brow and its ear. */
const features: readonly (readonly Place[])[] = [
  [
    [43.4, 20.4],
    [46, 19],
    [49, 20.6],
  ],
  [
    [43, 16.4],
    [47, 14.4],
    [51, 15.6],
  ],
  [
    [70, 33],
    [66, 28],
    [68, 21],
    [74, 20.4],
    [77, 25],
    [74, 32],
    [71, 37],
  ],
];

/** A face from the side, a shot between its teeth. */
function biting(at: At, unit: number): Item[] {
  const on = (places: readonly Place[]) => places.map((place) => at(...place));
  // Rooted in the edge of the upper or the lower jaw.
  const tooth = (x: number, [fromX, fromY, slope]: readonly [number, number, number], down: 1 | -1) => {
    const edge = (at: number) => fromY + slope * (at - fromX);
    return polygon(
      [
        at(x, edge(x)),
        at(x + 2.5, edge(x + 2.5)),
        at(x + 2.1, edge(x + 2.1) + 2.9 * down),
        at(x + 0.4, edge(x) + 2.9 * down),
      ],
      "paper",
    );
  };
  return [
    polygon(smooth(on(head), true), "paper", bold),
    polygon(on(mouth), "soft"),
    ...[44.2, 47, 49.8].map((x) => tooth(x, [43, 37.4, 0.29], 1)),
    ...[45.2, 48].map((x) => tooth(x, [44.6, 47.8, -0.57], -1)),
    ...lips.map((places) => polygon(smooth(on(places), true), "tone", thin)),
    ...features.map((places) => polyline(smooth(on(places)), bold)),
    placed(at(46, 21), [circle(point(0, 0), 1.3 * unit, { fill: "ink" })]),
    ...slitShot(at, unit, gap.closed, { x: 41, y: 42.4, size: 4.6 }),
    ...line(at, [1, 42.4], [46, 42.4]),
  ];
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
