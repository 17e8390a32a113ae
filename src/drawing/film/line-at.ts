import { entry, last } from "../../core/lists.ts";
import type { SinkingLine } from "../../core/sink/sink-of-rig.ts";
import type { Mm, S } from "../../core/units.ts";
import { type Point, point } from "../items.ts";

/** A place along a line and where it is: aside of the landing, and below the surface. */
interface PlacedOnLine {
  readonly fromHookMm: Mm;
  readonly place: Point;
}

/** The line at a time: at a moment of the sums as they have it, else on the straight way to the next; at rest after the last. */
export function lineAt({ fromHookMm, moments }: SinkingLine, timeS: S): readonly PlacedOnLine[] {
  const found = moments.findIndex((one) => one.timeS >= timeS - 1e-9);
  const b = found < 0 ? last(moments) : entry(moments, found);
  const a = found <= 0 ? b : entry(moments, found - 1);
  const share = found <= 0 ? 0 : (timeS - a.timeS) / (b.timeS - a.timeS);
  const between = (from: readonly Mm[], to: readonly Mm[], i: number) =>
    entry(from, i) + share * (entry(to, i) - entry(from, i));
  return fromHookMm.map((from, i) => ({
    fromHookMm: from,
    place: point(between(a.xMm, b.xMm, i), between(a.depthMm, b.depthMm, i)),
  }));
}

/** A piece of line, bowed aside: towards two places, to its end. */
type Bowed = readonly [towards: Point, from: Point, to: Point];

/**
 * A line whose places lie closer than it is long, as in a heap: between places so far apart along it, and between shot, what is
 * slack bows aside, to either side in turn. Where it is tight it is straight.
 */
export function laidDown(
  line: readonly PlacedOnLine[],
  pieceMm: Mm,
  shotMm: readonly Mm[],
): readonly Bowed[] {
  const held = line.filter(
    ({ fromHookMm }, i) =>
      i === 0 ||
      i === line.length - 1 ||
      shotMm.some((one) => Math.abs(one - fromHookMm) < 1e-6) ||
      Math.floor(fromHookMm / pieceMm) !== Math.floor(entry(line, i - 1).fromHookMm / pieceMm),
  );
  return held.slice(1).map((next, i) => {
    const one = entry(held, i);
    const { xMm, yMm } = one.place;
    const [dx, dy] = [next.place.xMm - xMm, next.place.yMm - yMm];
    const lengthMm = one.fromHookMm - next.fromHookMm;
    // As far aside as if it were of two straight halves.
    const asideMm = Math.sqrt(Math.max(0, lengthMm ** 2 - dx ** 2 - dy ** 2)) / 2;
    const middleX = xMm + dx / 2 + (i % 2 === 0 ? asideMm : -asideMm);
    const middleY = yMm + dy / 2;
    return [point(middleX, middleY - asideMm / 2), point(middleX, middleY + asideMm / 2), next.place];
  });
}
