import { keyOf } from "../../words/words.ts";
import { arrow, circle, type Point, point, polygon, polyline, thin } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item, Stroke } from "../model.ts";
import { strandStrokes } from "../strands.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { pinchingHand } from "./hand.ts";
import { placed } from "./moving.ts";

const steps = ["open", "lay", "close", "never teeth", "try"] as const;
type Step = (typeof steps)[number];

/** All in hundredths of the picture's width. */
const height = 62;
const radius = 11;
const middle = { x: 40, y: 31 };
/** A tenth of the hand. */
const handPart = 4.2;
const lineRadius = 1.6;

/** A shot pinched on, seen along the line and larger than it is: its slit open, the line in it, closed, and tried. */
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
  open: (at, unit) => [...held(at, unit, 1), ...slitShot(at, unit, 4.4), lineEnd(at(12, middle.y), unit)],
  lay: (at, unit) => [
    ...held(at, unit, 1),
    ...slitShot(at, unit, 4.4),
    lineEnd(at(middle.x - 1, middle.y), unit),
    ...arrow(at(10, middle.y + 8), at(22, middle.y + 8), accent, 2.6),
  ],
  close: (at, unit) => [
    ...held(at, unit, 0),
    ...slitShot(at, unit, 1),
    lineEnd(at(middle.x - 1, middle.y), unit),
    ...arrow(at(20, 3), at(26, 14), accent, 2.6),
    ...arrow(at(20, 59), at(26, 48), accent, 2.6),
  ],
  "never teeth": (at, unit) => [
    ...[-1, 1].flatMap((side) =>
      [-2, -1, 0, 1, 2].map((place) => {
        const [x, rim] = [middle.x + 9.4 * place, middle.y + side * (radius + 14)];
        const edge = middle.y + side * (radius + 1 + 0.8 * Math.abs(place));
        return polygon([at(x - 4.4, rim), at(x - 4, edge), at(x + 4, edge), at(x + 4.4, rim)], "paper", thin);
      }),
    ),
    ...slitShot(at, unit, 1),
    polyline([at(12, 6), at(68, 56)], { ink: "accent", widthMm: 1.4 }),
    polyline([at(68, 6), at(12, 56)], { ink: "accent", widthMm: 1.4 }),
  ],
  try: (at, unit) => [
    polyline([at(2, middle.y), at(98, middle.y)], strandStrokes["main line"]),
    placed(at(middle.x - 10, middle.y), [
      circle(point(0, 0), 0.7 * radius * unit, { fill: "ink" }),
      polyline([point(-0.7 * radius * unit, 0), point(0.7 * radius * unit, 0)], {
        ink: "paper",
        widthMm: 0.5,
      }),
    ]),
    ...pinchingHand(at(middle.x, middle.y), handPart * unit, 2.4 * unit),
    ...arrow(at(20, 14), at(6, 14), accent, 2.6),
    ...drop(at(34, 10), unit),
  ],
};

/** The shot between the tips of forefinger and thumb. */
const held = (at: At, unit: number, open: number): Item[] =>
  pinchingHand(at(middle.x, middle.y), handPart * unit, 2 * (radius + open) * unit);

/** A shot seen along the line, its slit to the left. */
function slitShot(at: At, unit: number, gap: number): Item[] {
  const rim = middle.x - Math.sqrt(radius * radius - gap * gap);
  const { x, y } = middle;
  return [
    placed(at(x, y), [circle(point(0, 0), radius * unit, { fill: "ink" })]),
    polygon([at(rim, y - gap), at(x, y - 0.8), at(x, y + 0.8), at(rim, y + gap)], "paper"),
  ];
}

/** The line, cut across. */
function lineEnd(place: Point, unit: number): Item {
  return placed(place, [
    circle(point(0, 0), lineRadius * unit, { fill: "accent", stroke: { ...thin, ink: "paper" } }),
  ]);
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
