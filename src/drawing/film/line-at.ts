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
