import type { Float } from "../../core/float/float.ts";
import { diameterAtMm } from "../../core/float/profile.ts";
import { type Point, point } from "../items.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { rubberHeightsMm } from "./float-parts.ts";

/** How far the line stands off the float's side, and a rubber beyond its sides. */
const lineOffMm = 0.6;
const rubberOffMm = 1;
/** From a rubber's middle to the float's foot or tip, so that either shows beyond it. */
export const rubberRoomMm = 1.7;

/** A float as it is drawn: where its foot is, and drawn length per length and width per diameter. */
interface DrawnFloat {
  readonly float: Float;
  readonly foot: Point;
  readonly lengthScale: number;
  readonly widthScale: number;
}

/** The rubbers of a float that is held at both ends, and the line that runs down its left side through them. */
export function rubbersOn({ float, foot, lengthScale, widthScale }: DrawnFloat): {
  /** From the upper rubber to the lower one. */
  readonly line: readonly Point[];
  readonly rubbers: readonly Item[];
} {
  const halfMm = (atMm: number) => (diameterAtMm(float.profile, atMm) * widthScale) / 2;
  const [lower, upper] = rubberHeightsMm(float, rubberRoomMm / lengthScale);
  const yMm = (atMm: number) => foot.yMm - atMm * lengthScale;
  const between = float.profile.map((p) => p.atMm).filter((atMm) => atMm > lower && atMm < upper);
  return {
    line: [upper, ...between.reverse(), lower].map((atMm) =>
      point(foot.xMm - halfMm(atMm) - lineOffMm, yMm(atMm)),
    ),
    rubbers: [upper, lower].flatMap((atMm) =>
      parts.rubber.draw({ at: point(foot.xMm, yMm(atMm)), widthMm: 2 * (halfMm(atMm) + rubberOffMm) }),
    ),
  };
}
