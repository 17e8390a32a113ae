import { type Float, lengthMm } from "../../core/float/float.ts";
import { last } from "../../core/lists.ts";
import type { HoldBackMax } from "../../model/in-water.ts";
import { closeLook } from "../float/float-parts.ts";
import { rubbersOn } from "../float/rubbers-on.ts";
import { type Point, point, polyline } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { layLabel, paintLabel } from "../labels/label-text.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { rotated, rotatedPoint } from "../transform.ts";
import { verdictMark } from "../verdict.ts";
import { waterCut } from "./moving.ts";

/** How much a float is drawn high that is shown for how it is fixed, and how wide at least. */
const floatMm = 17;
const leastWideMm = 3.4;
const verdictReachMm = 2.4;
const gapMm = 3;
/** From the top of a picture to the water, from there to the foot of either float, and on to the foot of the picture. */
const airMm = 4;
const deepMm = 15.2;
const belowMm = 3.6;

interface FixedRoom {
  readonly topMm: number;
  readonly widthMm: number;
  readonly textMm: number;
  /** How a float that dives is laid over. */
  readonly divingDegrees: number;
}

/**
 * A float that is slowed, close up: fixed at its foot alone, where it goes under, and at top and bottom; below each how much slowing it
 * stands.
 */
export function twoFixings(
  float: Float,
  { said, holds }: { readonly said: string; readonly holds: HoldBackMax },
  { topMm, widthMm, textMm, divingDegrees }: FixedRoom,
  kit: DrawingKit,
): { readonly heightMm: number; readonly items: readonly Item[] } {
  const { words, figures, measure } = kit;
  const columnMm = (widthMm - gapMm) / 2;
  const surfaceMm = topMm + airMm;
  const footMm = surfaceMm + deepMm + belowMm;
  const footTold = words("drawing.film.current.foot-most", { share: figures.share(holds.bottomOnlyShare) });
  const labelTopMm = footMm + 0.3 * textMm;
  const ways = [
    { leftMm: 0, isUnder: true, told: footTold },
    { leftMm: columnMm + gapMm, isUnder: false, told: said },
  ].map(({ told, ...way }) => ({
    ...way,
    label: layLabel([{ text: told }], columnMm - 0.5, textMm, measure),
  }));
  const items = ways.flatMap(({ leftMm, isUnder, label }) => {
    return [
      ...waterCut({ leftMm, rightMm: leftMm + columnMm, surfaceMm, footMm }),
      ...closeFloat(
        float,
        { leftMm, middleMm: leftMm + 0.55 * columnMm, surfaceMm },
        isUnder ? divingDegrees : undefined,
      ),
      ...verdictMark(
        isUnder ? "wrong" : "right",
        point(leftMm + columnMm - verdictReachMm - 0.4, footMm - verdictReachMm - 0.6),
        verdictReachMm,
      ),
      ...paintLabel(label, leftMm + 0.3, labelTopMm + label.heightMm / 2, measure),
    ];
  });
  return { heightMm: labelTopMm + Math.max(...ways.map(({ label }) => label.heightMm)) - topMm, items };
}

/** A float with what holds it on the line, which leads to the rod at the left and down to the shot. */
function closeFloat(
  float: Float,
  {
    leftMm,
    middleMm,
    surfaceMm,
  }: { readonly leftMm: number; readonly middleMm: number; readonly surfaceMm: number },
  divingDegrees: number | undefined,
): Item[] {
  const lengthScale = floatMm / lengthMm(float);
  const widest = Math.max(...float.profile.map(({ diameterMm }) => diameterMm));
  const widthScale = Math.max(lengthScale, leastWideMm / widest);
  const isUnder = divingDegrees !== undefined;
  const foot = point(middleMm, surfaceMm + deepMm);
  const upright = parts.floatBody.draw({
    ...closeLook(float),
    eye: false,
    at: foot,
    lengthScale,
    widthScale,
  });
  const { line, rubbers } = rubbersOn({ float, foot, lengthScale, widthScale });
  const main = strandStrokes["main line"];
  const rod = point(leftMm, surfaceMm - 2.5);
  const down = point(middleMm + (isUnder ? 3 : 0.5), foot.yMm + 3);
  if (!isUnder)
    return [...upright, polyline([rod, ...line, point(foot.xMm, foot.yMm + 0.4), down], main), ...rubbers];
  const turn = (at: Point) => rotatedPoint(at, divingDegrees, foot);
  // Each rubber is two sleeves; the lower one comes last.
  const lower = rubbers.slice(rubbers.length / 2);
  return [
    ...rotated(upright, divingDegrees, foot),
    polyline([rod, turn(last(line)), foot, down], main),
    ...rotated(lower, divingDegrees, foot),
  ];
}
