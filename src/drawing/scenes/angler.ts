import { type Point, point, polyline } from "../items.ts";
import type { Item, Stroke } from "../model.ts";

interface Angler {
  /** Where the hips are. */
  readonly hips: Point;
  /** Head to foot [mm of the drawing]. */
  readonly heightMm: number;
  /** Where both hands hold the rod. */
  readonly hands: Point;
  readonly sits: boolean;
}

/** Somebody with a hat, looking to the right. */
export function angler({ hips, heightMm: h, hands, sits }: Angler): Item[] {
  const limb: Stroke = { ink: "ink", widthMm: Math.max(0.6, 0.07 * h), cap: "round" };
  const at = (x: number, y: number) => point(hips.xMm + x * h, hips.yMm + y * h);
  const shoulder = at(0.03, -0.3);
  const head = at(0.06, -0.43);
  const legs = sits ? [hips, at(0.24, -0.02), at(0.22, 0.26)] : [hips, at(0.03, 0.24), at(0.02, 0.48)];
  return [
    polyline(legs, limb),
    polyline([hips, shoulder], { ...limb, widthMm: 1.7 * limb.widthMm }),
    polyline([shoulder, hands], limb),
    { kind: "circle", cxMm: head.xMm, cyMm: head.yMm, radiusMm: 0.08 * h, fill: "ink" },
    polyline([at(-0.04, -0.47), at(0.2, -0.47)], { ...limb, widthMm: 0.8 * limb.widthMm }),
  ];
}
