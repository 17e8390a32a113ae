import { first, last } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import { circle, type Point, point, polyline, text, thin } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item } from "../model.ts";
import { placed, shotRadiusMm } from "./moving.ts";

/** A shot that is spoken of, where it is drawn. */
interface Told {
  readonly at: Point;
  readonly diameterMm: Mm;
}

const stroke = { ink: "accent", widthMm: 0.5 } as const;
const clearMm = 0.9;
const keyMm = 1.2;
/** From a ring round many to how many they are. */
const leaderMm = 2;

const ringMm = ({ diameterMm }: Told) => shotRadiusMm(diameterMm) + clearMm;

/** A ring round a shot. */
export function ringRound(told: Told): Item {
  return placed(told.at, [circle(point(0, 0), ringMm(told), { stroke })]);
}

/** What a ring stands for, behind one, in a row of words from a place. */
export function ringKey({ xMm, yMm }: Point, said: string, textMm: Mm): Item[] {
  return [
    circle(point(xMm + keyMm + 0.3, yMm - 0.35 * textMm), keyMm, { stroke }),
    text(point(xMm + 2 * keyMm + 1.3, yMm), said, textMm),
  ];
}

/**
 * Rings round shot that lie side by side, in their order from one end: one round all that are too close for rings of their
 * own, with how many they are, in words that begin no further left than a place.
 */
export function ringsRound(
  shot: readonly Told[],
  { leastX, textMm }: { readonly leastX: Mm; readonly textMm: Mm },
  { words, figures }: DrawingKit,
): Item[] {
  return together(shot).flatMap((group) => {
    const [from, to] = [first(group), last(group)];
    if (group.length === 1) return [ringRound(from)];
    const radiusMm = Math.max(...group.map(ringMm));
    const [left, right] = [from.at.xMm, to.at.xMm].sort((a, b) => a - b) as [Mm, Mm];
    const topY = from.at.yMm - radiusMm;
    const wordsX = Math.max(leastX, left - radiusMm);
    // On the ring, and below the first of its words.
    const leaderX = Math.min(right, Math.max(left, wordsX + 0.3 * textMm));
    const said = words("drawing.film.depth.count", { count: figures.number(group.length, 0) });
    return [
      longRing(point(left, from.at.yMm), point(right, from.at.yMm), radiusMm),
      polyline([point(leaderX, topY), point(leaderX, topY - leaderMm)], thin),
      text(point(wordsX, topY - leaderMm - 0.4 * textMm), said, textMm),
    ];
  });
}

/** Neighbours whose rings would run into one another. */
function together(shot: readonly Told[]): Told[][] {
  const groups: Told[][] = [];
  for (const one of shot) {
    const group = groups.at(-1);
    const before = group?.at(-1);
    const isClose = before && Math.abs(one.at.xMm - before.at.xMm) < ringMm(one) + ringMm(before);
    if (group && isClose) group.push(one);
    else groups.push([one]);
  }
  return groups;
}

/** How far the handles of a curve stand off that goes a quarter round, of its radius. */
const quarter = 0.5523;

/** A level line with round ends, so far from two places all the way. */
function longRing(left: Point, right: Point, radiusMm: Mm): Item {
  const [y, off] = [left.yMm, quarter * radiusMm];
  const end = (x: Mm, side: 1 | -1) =>
    [
      ["C", x + side * off, y - side * radiusMm, x + side * radiusMm, y - side * off, x + side * radiusMm, y],
      ["C", x + side * radiusMm, y + side * off, x + side * off, y + side * radiusMm, x, y + side * radiusMm],
    ] as const;
  return {
    kind: "path",
    steps: [
      ["M", left.xMm, y - radiusMm],
      ["L", right.xMm, y - radiusMm],
      ...end(right.xMm, 1),
      ["L", left.xMm, y + radiusMm],
      ...end(left.xMm, -1),
      ["Z"],
    ],
    stroke,
  };
}
