import { type Finding, warning } from "../finding.ts";
import type { Float } from "../float/float.ts";
import type { Mm } from "../units.ts";

/** What catches the fish: a rod whose reel gives and takes line, or a whip with its line tied to the tip. */
const outfits = ["rod and reel", "whip"] as const;
export type Outfit = (typeof outfits)[number];

/**
 * How much shorter than the whip its line is [mm], so that hook and fish swing to the hand when the whip stands up.
 * Common practice, no source.
 */
const handMm = 300;

/** Line that must stay between whip tip and water, or the tip pulls at the float [mm]. Common practice, no source. */
const tipToWaterLeastMm = 500;

/** A whip's line made up for one depth. */
export interface WhipLine {
  /** From the tip of the whip to the bend of the hook [mm]; the same at every depth. */
  readonly lineMm: Mm;
  /** Of that, what is left between tip and water [mm]. */
  readonly tipToWaterMm: Mm;
  /** The furthest that the float can stand from the butt, whip and line in one straight line over the water [mm]. */
  readonly reachMm: Mm;
}

/** Line from the tip of a whip to the hook, so that a fish comes to hand [mm]; never below 0. */
export function whipLineMm(whipMm: Mm): number {
  return Math.max(0, whipMm - handMm);
}

/**
 * A whip's line for one depth. No reel gives more: each centimetre that the float is set deeper comes off what is
 * left above the water.
 *
 * @param hookDepthMm surface to hook along the line, the depth and the overdepth together [mm]
 */
export function whipLine(whipMm: Mm, hookDepthMm: Mm): WhipLine {
  const lineMm = whipLineMm(whipMm);
  const tipToWaterMm = lineMm - hookDepthMm;
  return { lineMm, tipToWaterMm, reachMm: whipMm + tipToWaterMm };
}

/** The deepest that a whip can set its hook [mm], along the line from the surface; never below 0. */
export function whipDepthLimitMm(whipMm: Mm): number {
  return Math.max(0, whipLineMm(whipMm) - tipToWaterLeastMm);
}

/** Whether a whip can fish a float so: it needs a float that is fixed on the line, and line enough above the water. */
export function checkWhip({ attachment }: Float, hookDepthMm: Mm, whipMm: Mm): readonly Finding[] {
  const limitMm = whipDepthLimitMm(whipMm);
  return [
    ...(attachment === "sliding" ? [warning("whip-sliding-float")] : []),
    ...(hookDepthMm > limitMm ? [warning("whip-too-short", { hookDepthMm, limitMm, whipMm })] : []),
  ];
}
