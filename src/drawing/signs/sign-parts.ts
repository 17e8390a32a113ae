import {
  arrow,
  arrowHead,
  bold,
  circle,
  type Point,
  point,
  polygon,
  polyline,
  rectangle,
  thin,
  thinSoft,
} from "../items.ts";
import type { Item, PathStep, Stroke } from "../model.ts";
import { smooth } from "../smooth.ts";

/** A small picture of a sign: so wide and high, the water's surface a third of the way down [mm]. */
export const signBox = { widthMm: 36, heightMm: 24 };
export const surfaceMm = 9;
export const bedMm = 22.5;
export const fine: Stroke = { ink: "ink", widthMm: 0.4 };
const strong: Stroke = { ink: "accent", widthMm: 0.7 };
const headMm = 2.6;
/** Half of a bar that ends a distance. */
const barMm = 1.2;
/** Where a clock's short hand stands, of its round: clear of the long one at every time that is shown. */
const hourHand = 2 / 3;
/** What was there before, or flew there: the one thing that dashes mean in these pictures. */
export const dashed: Stroke = { ...thinSoft, dashMm: [1, 0.8] };

export function water(): Item[] {
  const { widthMm, heightMm } = signBox;
  const wave = Array.from({ length: 13 }, (_, i) => point(i * 3, surfaceMm + (i % 2 === 0 ? 0 : 0.3)));
  return [rectangle(0, surfaceMm, widthMm, heightMm - surfaceMm, { fill: "water" }), polyline(wave, thin)];
}

export const bed = (): Item => polyline([point(0, bedMm), point(signBox.widthMm, bedMm)], bold);

export const move = (from: Point, to: Point): Item[] => arrow(from, to, strong, headMm);

/** A movement along a curve, the last step of which ends at its head. */
export function moveAlong(from: Point, steps: readonly PathStep[], end: Point, towards: Point): Item[] {
  return [
    { kind: "path", steps: [["M", from.xMm, from.yMm], ...steps], stroke: strong },
    arrowHead(end, towards, headMm, strong.ink),
  ];
}

/** How far it is from one height to another: a line between bars, as only what moves has an arrow. */
export function span(from: Point, to: Point): Item[] {
  return [
    polyline([from, to], strong),
    ...[from, to].map((end) =>
      polyline([point(end.xMm - barMm, end.yMm), point(end.xMm + barMm, end.yMm)], strong),
    ),
  ];
}

/** Straight down, as far as a bar that stops it; dashed how much further it should go. */
export function stopped(x: number, fromMm: number, barAtMm: number, shouldMm: number): Item[] {
  return [
    ...move(point(x, fromMm), point(x, barAtMm - 0.4)),
    polyline([point(x - 2 * barMm, barAtMm), point(x + 2 * barMm, barAtMm)], { ...strong, ink: "ink" }),
    polyline([point(x, barAtMm + 0.6), point(x, shouldMm)], dashed),
    arrowHead(point(x, shouldMm - 1), point(x, shouldMm), 1.8, dashed.ink),
  ];
}

/** Between two frames, what is seen first and what is seen then. */
export const framesApart = (x: number): Item[] => [
  rectangle(x - 0.7, 0, 1.4, signBox.heightMm, { fill: "paper" }),
  polyline([point(x, 0), point(x, signBox.heightMm)], thinSoft),
];

/** Not the same. */
export function unlike({ xMm: x, yMm: y }: Point): Item[] {
  return [
    ...[-1.2, 1.2].map((aside) => polyline([point(x - 2, y + aside), point(x + 2, y + aside)], strong)),
    polyline([point(x - 1.2, y + 3), point(x + 1.2, y - 3)], strong),
  ];
}

/** Not so. */
export const crossed = ({ xMm: x, yMm: y }: Point, halfMm = 1.7): Item[] =>
  ([1, -1] as const).map((way) =>
    polyline([point(x - halfMm, y - halfMm * way), point(x + halfMm, y + halfMm * way)], {
      ink: "accent",
      widthMm: 0.6,
    }),
  );

/** Wind over the water, blowing to the right: streaks that curl at their ends. */
export function wind(): Item[] {
  return (
    [
      [4, 1, 11, -1],
      [5.4, 3, 13, 1],
    ] as const
  ).map(([y, from, to, way]) => ({
    kind: "path",
    steps: [
      ["M", from, y],
      ["L", to, y],
      ["C", to + 2.6, y, to + 2.6, y + 2.4 * way, to + 0.6, y + 2.4 * way],
      ["C", to - 0.6, y + 2.4 * way, to - 0.6, y + 1 * way, to + 0.4, y + 0.9 * way],
    ],
    stroke: { ink: "soft", widthMm: 0.5 },
  }));
}

/** Running water, to the right. */
export function flow(fromMm = 1.5): Item[] {
  return [14, 18].flatMap((y) => arrow(point(fromMm, y), point(fromMm + 6, y), thinSoft, 1.8));
}

/** A J-shaped hook, its bend at the place. */
export function hook(at: Point, sizeMm = 5): Item[] {
  const { xMm: x, yMm: y } = at;
  const r = sizeMm * 0.32;
  return [
    {
      kind: "path",
      steps: [
        ["M", x, y - sizeMm],
        ["L", x, y - r],
        ["C", x, y + r * 0.4, x + 2 * r, y + r * 0.4, x + 2 * r, y - r],
        ["L", x + 2 * r, y - r * 1.6],
        ["L", x + 1.4 * r, y - r * 0.9],
      ],
      stroke: bold,
    },
  ];
}

export const shot = (at: Point, radiusMm = 1.1): Item => circle(at, radiusMm, { fill: "ink" });

/** Two ends of a line that parted, and a cross between them. */
export function parted(x: number, y: number): Item[] {
  return [
    polyline([point(x, y - 1.5), point(x - 0.9, y - 2.1)], fine),
    polyline([point(x, y + 1.5), point(x + 0.9, y + 2.1)], fine),
    ...crossed(point(x, y), 1.1),
  ];
}

export const line = (points: readonly (readonly [number, number])[]): Item =>
  polyline(
    points.map(([x, y]) => point(x, y)),
    fine,
  );

/** A clock with its hands, and round it so much of its round as has gone by. */
export function clock(share: number, at: Point = point(30.5, 4.3), radiusMm = 2.9): Item[] {
  const out = (radii: number, turn: number) =>
    point(
      at.xMm + radii * radiusMm * Math.sin(2 * Math.PI * turn),
      at.yMm - radii * radiusMm * Math.cos(2 * Math.PI * turn),
    );
  const turns = Math.ceil(36 * share);
  const gone = Array.from({ length: turns + 1 }, (_, i) => out(1 + 0.8 / radiusMm, share * (i / turns)));
  return [
    circle(at, radiusMm, { fill: "paper", stroke: fine }),
    ...[0, 0.25, 0.5, 0.75].map((turn) => polyline([out(0.76, turn), out(1, turn)], fine)),
    polyline([out(0.72, share), at, out(0.45, hourHand)], { ...fine, widthMm: 0.5 }),
    polyline(gone, { ink: "accent", widthMm: 0.8 }),
  ];
}

/** A bubble that lies on the water. */
export function bubble(x: number, stroke: Stroke = fine): Item {
  const r = 1.3;
  const round = 0.5523 * r;
  return {
    kind: "path",
    steps: [
      ["M", x - r, surfaceMm],
      ["C", x - r, surfaceMm - round, x - round, surfaceMm - r, x, surfaceMm - r],
      ["C", x + round, surfaceMm - r, x + r, surfaceMm - round, x + r, surfaceMm],
      ["Z"],
    ],
    fill: "paper",
    stroke,
  };
}

/** Weed that stands on the bed. */
export function weed(x: number, heightMm: number): Item[] {
  return [-2, 0, 2].map((aside) => ({
    kind: "path",
    steps: [
      ["M", x + aside / 2, bedMm],
      [
        "C",
        x + aside - 1.5,
        bedMm - heightMm / 3,
        x + aside + 1.5,
        bedMm - (2 * heightMm) / 3,
        x + aside,
        bedMm - heightMm,
      ],
    ],
    stroke: { ink: "soft", widthMm: 0.6 },
  }));
}

/** A maggot, its blunt end up and its length to the right of straight down; full, or an empty skin, or where one was. */
export function maggot(top: Point, look: "full" | "empty" | "gone"): Item[] {
  const halfMm =
    look === "empty" ? [0.8, 0.5, 0.6, 0.5, 0.55, 0.4, 0.2] : [0.9, 1.4, 1.5, 1.4, 1.1, 0.7, 0.2];
  const swayMm = look === "empty" ? 0.45 : 0;
  const at = (i: number, across: number) =>
    point(top.xMm + 0.35 * i + swayMm * Math.sin(1.6 * i) + across, top.yMm + 1.3 * i - 0.3 * across);
  const side = (way: 1 | -1) => halfMm.map((half, i) => at(i, way * half));
  const outline = smooth([...side(1), ...side(-1).reverse()], true);
  if (look === "gone") return [polygon(outline, "paper", dashed)];
  return [
    polygon(outline, "paper", fine),
    ...[1, 2, 3, 4, 5].map((i) =>
      polyline([at(i, -(halfMm[i] ?? 0)), at(i + 0.25, 0), at(i, halfMm[i] ?? 0)], thinSoft),
    ),
  ];
}
