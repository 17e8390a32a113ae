import { arrow, bold, circle, type Point, point, polyline, rectangle, thin, thinSoft } from "../items.ts";
import type { Item, PathItem, Stroke } from "../model.ts";

/** A small picture of a sign: so wide and high, the water's surface a third of the way down [mm]. */
export const signBox = { widthMm: 36, heightMm: 24 };
export const surfaceMm = 9;
export const bedMm = 22.5;
/** Length of the float in a small picture. */
const floatMm = 11;
const halfWidthMm = 0.9;
const fine: Stroke = { ink: "ink", widthMm: 0.4 };
export const dashed: Stroke = { ...thinSoft, dashMm: [1, 0.8] };

export function water(): Item[] {
  const { widthMm, heightMm } = signBox;
  const wave = Array.from({ length: 13 }, (_, i) => point(i * 3, surfaceMm + (i % 2 === 0 ? 0 : 0.3)));
  return [rectangle(0, surfaceMm, widthMm, heightMm - surfaceMm, { fill: "water" }), polyline(wave, thin)];
}

export const bed = (): Item => polyline([point(0, bedMm), point(signBox.widthMm, bedMm)], bold);

interface Float {
  readonly xMm: number;
  /** Tip above the water, as a share of the float; below 0 it is under. */
  readonly tip: number;
  /** To the right from upright [degrees]. */
  readonly lean?: number;
  /** Where it was before: drawn with dashes. */
  readonly before?: boolean;
}

/** A float, its tip bright, with the line below it. */
export function float({ xMm, tip, lean = 0, before = false }: Float, hangMm = 5): Item[] {
  const turn = (lean * Math.PI) / 180;
  const topMm = surfaceMm - tip * floatMm * Math.cos(turn);
  const top = point(xMm + tip * floatMm * Math.sin(turn), topMm);
  const along = (mm: number, aside: number) =>
    point(
      top.xMm - mm * Math.sin(turn) + aside * Math.cos(turn),
      top.yMm + mm * Math.cos(turn) + aside * Math.sin(turn),
    );
  const outline = (from: number, to: number, half: number): PathItem["steps"] => {
    const [a, b, c, d] = [along(from, -half), along(from, half), along(to, half), along(to, -half)] as const;
    return [["M", a.xMm, a.yMm], ["L", b.xMm, b.yMm], ["L", c.xMm, c.yMm], ["L", d.xMm, d.yMm], ["Z"]];
  };
  const foot = along(floatMm, 0);
  if (before) return [{ kind: "path", steps: outline(0, floatMm, halfWidthMm * 0.7), stroke: dashed }];
  return [
    polyline([foot, point(foot.xMm, foot.yMm + hangMm)], fine),
    { kind: "path", steps: outline(0, floatMm, halfWidthMm), fill: "paper", stroke: fine },
    { kind: "path", steps: outline(0, 3, halfWidthMm), fill: "accent" },
  ];
}

export const move = (from: Point, to: Point): Item[] => arrow(from, to, { ink: "accent", widthMm: 0.7 }, 2.6);

/** Wind over the water, blowing to the right. */
export function wind(): Item[] {
  return [2, 4.5].flatMap((y) => arrow(point(3, y), point(11, y), thinSoft, 1.8));
}

/** Running water, to the right. */
export function flow(): Item[] {
  return [14, 18].flatMap((y) => arrow(point(2, y), point(8, y), thinSoft, 1.8));
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
    ...[-1, 1].map((way) =>
      polyline([point(x - 1.1, y - 1.1 * way), point(x + 1.1, y + 1.1 * way)], {
        ink: "accent",
        widthMm: 0.6,
      }),
    ),
  ];
}

export const line = (points: readonly (readonly [number, number])[]): Item =>
  polyline(
    points.map(([x, y]) => point(x, y)),
    fine,
  );

/** A clock, its hand so far round. */
export function clock(at: Point, share: number): Item[] {
  const angle = 2 * Math.PI * share - Math.PI / 2;
  const hand = point(at.xMm + 2.2 * Math.cos(angle), at.yMm + 2.2 * Math.sin(angle));
  return [
    circle(at, 3, { fill: "paper", stroke: fine }),
    polyline([at, point(at.xMm, at.yMm - 2.2)], fine),
    polyline([at, hand], { ink: "accent", widthMm: 0.6 }),
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

/** Rings on the water around a place. */
export function rings(x: number): Item[] {
  return [3, 5.5].map((half) =>
    polyline([point(x - half, surfaceMm + 0.8), point(x + half, surfaceMm + 0.8)], thinSoft),
  );
}
