import type { CircleItem, Face, Ink, Item, PathItem, PathStep, Stroke, TextItem } from "./model.ts";

export interface Point {
  readonly xMm: number;
  readonly yMm: number;
}

/** No stroke is thinner: it would drop out on a laminated card. */
export const thinMm = 0.35;
export const boldMm = 0.6;

export const thin: Stroke = { ink: "ink", widthMm: thinMm };
export const thinSoft: Stroke = { ink: "soft", widthMm: thinMm };
export const bold: Stroke = { ink: "ink", widthMm: boldMm };
/** What moves, or is to be seen first. */
export const accent: Stroke = { ink: "accent", widthMm: 0.9 };

export function point(xMm: number, yMm: number): Point {
  return { xMm, yMm };
}

/** The place a share of the way from one to another; 0 at the first, 1 at the second. */
export function partWay(a: Point, b: Point, share: number): Point {
  return point(a.xMm + (b.xMm - a.xMm) * share, a.yMm + (b.yMm - a.yMm) * share);
}

/** A step of a path: on along a curve that sets out towards `a` and comes from `b`, to `end`. */
export function curveTo(a: Point, b: Point, end: Point): PathStep {
  return ["C", a.xMm, a.yMm, b.xMm, b.yMm, end.xMm, end.yMm];
}

/** A line that sets out from a point. */
export function pathFrom(from: Point, steps: readonly PathStep[], stroke: Stroke): PathItem {
  return { kind: "path", steps: [["M", from.xMm, from.yMm], ...steps], stroke };
}

/** Straight lines through the points. */
export function polyline(points: readonly Point[], stroke: Stroke): PathItem {
  return { kind: "path", steps: straight(points), stroke };
}

/** A filled outline of straight lines. */
export function polygon(points: readonly Point[], fill: Ink, stroke?: Stroke): PathItem {
  return { kind: "path", steps: [...straight(points), ["Z"]], fill, ...(stroke && { stroke }) };
}

function straight(points: readonly Point[]): PathStep[] {
  return points.map(({ xMm, yMm }, i) => [i === 0 ? "M" : "L", xMm, yMm] as const);
}

export function rectangle(
  xMm: number,
  yMm: number,
  widthMm: number,
  heightMm: number,
  paint: { fill?: Ink; stroke?: Stroke },
): PathItem {
  const right = xMm + widthMm;
  const bottom = yMm + heightMm;
  const corners = [point(xMm, yMm), point(right, yMm), point(right, bottom), point(xMm, bottom)];
  return { kind: "path", steps: [...straight(corners), ["Z"]], ...paint };
}

export function circle(at: Point, radiusMm: number, paint: { fill?: Ink; stroke?: Stroke }): CircleItem {
  return { kind: "circle", cxMm: at.xMm, cyMm: at.yMm, radiusMm, ...paint };
}

export function text(
  at: Point,
  words: string,
  sizeMm: number,
  look: { face?: Face; ink?: Ink; anchor?: TextItem["anchor"] } = {},
): TextItem {
  const { face = "regular", ink = "ink", anchor = "start" } = look;
  return { kind: "text", xMm: at.xMm, yMm: at.yMm, text: words, sizeMm, face, ink, anchor };
}

/** How far the control points of a curve lie from the ends of the quarter of a circle that it stands for, in radii. */
const quarter = 0.5523;

/** The outline of an ellipse by its middle and half its width and height [mm]. */
export function ellipse({ xMm: x, yMm: y }: Point, halfWideMm: number, halfHighMm: number): PathStep[] {
  const [rx, ry, kx, ky] = [halfWideMm, halfHighMm, quarter * halfWideMm, quarter * halfHighMm];
  return [
    ["M", x, y - ry],
    ["C", x + kx, y - ry, x + rx, y - ky, x + rx, y],
    ["C", x + rx, y + ky, x + kx, y + ry, x, y + ry],
    ["C", x - kx, y + ry, x - rx, y + ky, x - rx, y],
    ["C", x - rx, y - ky, x - kx, y - ry, x, y - ry],
    ["Z"],
  ];
}

/** An arrow head at `tip`, pointing along `from` → `tip`. */
export function arrowHead(from: Point, tip: Point, lengthMm: number, ink: Ink): PathItem {
  const angle = Math.atan2(tip.yMm - from.yMm, tip.xMm - from.xMm);
  const corner = (turn: number) =>
    point(tip.xMm - lengthMm * Math.cos(angle + turn), tip.yMm - lengthMm * Math.sin(angle + turn));
  return polygon([tip, corner(0.42), corner(-0.42)], ink);
}

/** A straight arrow. */
export function arrow(from: Point, tip: Point, stroke: Stroke, headMm = 4 * stroke.widthMm): Item[] {
  const length = Math.hypot(tip.xMm - from.xMm, tip.yMm - from.yMm) || 1;
  const back = Math.min(headMm * 0.8, length) / length;
  const end = point(tip.xMm - (tip.xMm - from.xMm) * back, tip.yMm - (tip.yMm - from.yMm) * back);
  return [polyline([from, end], stroke), arrowHead(from, tip, headMm, stroke.ink)];
}
