import { type Point, partWay, point, polyline } from "../items.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";

const hookMm = 2.4;
const shotRadiusMm = 0.7;

/** The end of a rig as a scene shows it: a straight stretch of line with two shot, and the hook below its end. */
export function rigEnd(from: Point, to: Point): Item[] {
  return [
    polyline([from, to], strandStrokes["main line"]),
    ...[0.35, 0.7].flatMap((share) =>
      parts.shot.draw({ at: partWay(from, to, share), radiusMm: shotRadiusMm }),
    ),
    ...parts.hook.draw({ bend: point(to.xMm, to.yMm + hookMm), heightMm: hookMm }),
  ];
}
