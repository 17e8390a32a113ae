import {
  arrow,
  arrowHead,
  bold,
  circle,
  type Point,
  partWay,
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

/** How far it is from one place to another. */
export function span(from: Point, to: Point): Item[] {
  const middle = partWay(from, to, 0.5);
  return [from, to].flatMap((end) => move(middle, end));
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
export function flow(): Item[] {
  return [14, 18].flatMap((y) => arrow(point(1.5, y), point(7.5, y), thinSoft, 1.8));
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
export function clock(share: number): Item[] {
  const at = point(30.5, 4.3);
  const out = (mm: number, turn: number) =>
    point(at.xMm + mm * Math.sin(2 * Math.PI * turn), at.yMm - mm * Math.cos(2 * Math.PI * turn));
  const turns = Math.ceil(36 * share);
  const gone = Array.from({ length: turns + 1 }, (_, i) => out(3.7, share * (i / turns)));
  return [
    circle(at, 2.9, { fill: "paper", stroke: fine }),
    ...[0, 0.25, 0.5, 0.75].map((turn) => polyline([out(2.2, turn), out(2.9, turn)], fine)),
    polyline([out(2.1, share), at, out(1.3, hourHand)], { ...fine, widthMm: 0.5 }),
    polyline(gone, { ink: "accent", widthMm: 0.8 }),
  ];
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
