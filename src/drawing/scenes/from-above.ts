import { entry, first, last } from "../../core/lists.ts";
import {
  bold,
  circle,
  curveTo,
  type Point,
  pathFrom,
  point,
  polygon,
  polyline,
  rectangle,
  thin,
  thinSoft,
} from "../items.ts";
import type { Box } from "../kit.ts";
import type { Item, PathStep } from "../model.ts";
import { smooth } from "../smooth.ts";
import { rotated } from "../transform.ts";
import { between, heightAt } from "./ground.ts";

/** Where grass stands on a bank: so far apart, and so far behind its edge by turns [mm]. */
const grassMm = { apart: 9, behind: [2.6, 5.2, 3.6] } as const;

/** A bank from above, from its edge to the foot of the picture, with grass on it but for a stretch where somebody sits. */
export function bankFromAbove(
  edge: readonly Point[],
  { heightMm }: Box,
  [bareFromMm, bareToMm]: readonly [number, number],
): Item[] {
  const { apart, behind } = grassMm;
  const [from, to] = [first(edge).xMm, last(edge).xMm];
  const tufts: Item[] = [];
  for (let x = from + apart / 2, i = 0; x < to; x += apart, i += 1) {
    const y = heightAt(edge, x) + entry(behind, i % behind.length);
    if ((x < bareFromMm || x > bareToMm) && y < heightMm - 0.5) tufts.push(...tuft(point(x, y)));
  }
  return [
    polygon([...edge, point(to, heightMm), point(from, heightMm)], "paper"),
    ...tufts,
    polyline(between(edge, from, to), bold),
  ];
}

const tuft = ({ xMm, yMm }: Point): Item[] =>
  [-0.8, 0, 0.8].map((lean) =>
    polyline([point(xMm + 0.3 * lean, yMm), point(xMm + lean, yMm - (lean === 0 ? 1.5 : 1.1))], thinSoft),
  );

/** Somebody who sits on the bank, from straight above, facing the water: seat, legs, shoulders, arms to the rod, a cap. */
export function anglerFromAbove({ xMm, yMm }: Point, unit: number): Item[] {
  const p = (x: number, y: number) => point(xMm + x * unit, yMm + y * unit);
  const limb = (...places: readonly Point[]): Item =>
    polyline(places, { ink: "ink", widthMm: 0.9 * unit, cap: "round" });
  const corner = p(-3, 0.4);
  return [
    rectangle(corner.xMm, corner.yMm, 6 * unit, 3 * unit, { fill: "paper", stroke: thin }),
    limb(p(-1.3, 0.4), p(-1.6, -2.6)),
    limb(p(1.3, 0.4), p(1.6, -2.6)),
    polygon(
      smooth([p(-3.4, 0.5), p(-1.6, -0.6), p(1.6, -0.6), p(3.4, 0.5), p(2, 1.7), p(-2, 1.7)], true),
      "soft",
      bold,
    ),
    limb(p(-3, 0.4), p(-2.9, -1.8), p(0.3, -4)),
    limb(p(3, 0.4), p(3.1, -1.2), p(0.7, -3)),
    circle(p(0, 0.5), 1.4 * unit, { fill: "paper", stroke: bold }),
    pathFrom(p(-1.3, 0), [curveTo(p(-1.1, -2.2), p(1.1, -2.2), p(1.3, 0))], bold),
  ];
}

/** A fish from straight above, its nose turned clockwise from the left. */
export function fishFromAbove(nose: Point, lengthMm: number, degrees = 0): Item[] {
  const p = (x: number, y: number) => point(nose.xMm + x * lengthMm, nose.yMm + y * lengthMm);
  const body = smooth(
    [
      p(0, 0),
      p(0.2, -0.11),
      p(0.48, -0.09),
      p(0.76, -0.015),
      p(1, 0.07),
      p(0.76, 0.03),
      p(0.46, 0.12),
      p(0.18, 0.11),
    ],
    true,
  );
  const fin = (side: 1 | -1) =>
    polygon([p(0.26, 0.08 * side), p(0.42, 0.21 * side), p(0.38, 0.08 * side)], "accent");
  return rotated([fin(1), fin(-1), polygon(body, "paper", { ...thin, ink: "accent" })], degrees, nose);
}

/** A crown of leaves from above: bumps round its edge, and some of the leaves on top. */
export function crownFromAbove(middle: Point, radiusMm: number): Item[] {
  const bumps = 9;
  const at = (share: number, turn: number) =>
    point(middle.xMm + share * radiusMm * Math.cos(turn), middle.yMm + share * radiusMm * Math.sin(turn));
  const bump = (i: number): PathStep => {
    const [from, to] = [(2 * Math.PI * i) / bumps, (2 * Math.PI * (i + 1)) / bumps];
    return curveTo(at(1.3, from + 0.12), at(1.3, to - 0.12), at(0.88, to));
  };
  const start = at(0.88, 0);
  const edge: PathStep[] = [
    ["M", start.xMm, start.yMm],
    ...Array.from({ length: bumps }, (_, i) => bump(i)),
    ["Z"],
  ];
  const leaf = (share: number, turn: number) => {
    const to = at(share, turn);
    const [left, right] = [point(to.xMm - 0.2 * radiusMm, to.yMm), point(to.xMm + 0.2 * radiusMm, to.yMm)];
    const lift = 0.3 * radiusMm;
    return pathFrom(
      left,
      [curveTo(point(left.xMm, left.yMm - lift), point(right.xMm, right.yMm - lift), right)],
      thinSoft,
    );
  };
  return [
    { kind: "path", steps: edge, fill: "paper", stroke: thin },
    ...[-2.4, -0.9, 0.6, 2.2].map((turn) => leaf(0.5, turn)),
    leaf(0.02, 0),
  ];
}
