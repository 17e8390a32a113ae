import { type Finding, noAnswer } from "../finding.ts";
import type { Float } from "../float/float.ts";
import type { Mm } from "../units.ts";

/** What is moved along the line to set the depth, and what the line to the hook is measured from. */
export type MovedPart = "float" | "stop knot";

/** A float that slides is held by its stop knot; any other is moved itself. */
export function movedPart({ attachment }: Float): MovedPart {
  return attachment === "sliding" ? "stop knot" : "float";
}

/** Where the hook is set against the bed; dead depth, the hook just on it, where nothing else is said. */
export const settings = ["dead depth", "over depth", "off bottom", "up in the water"] as const;
export type Setting = (typeof settings)[number];

/** Nobody sets a float finer than this [mm]. */
const setToMm = 10;
/** Slips of sums, which set nothing deeper [mm]. */
const slipMm = 1e-6;

/** The first setting of whole centimetres that is as deep as this or deeper [mm]. */
export const wholeSettingMm = (mm: Mm): Mm => Math.ceil((mm - slipMm) / setToMm) * setToMm || 0;

/** Sign of the overdepth that each setting means. */
const overdepthSign: Readonly<Record<Setting, number>> = {
  "dead depth": 0,
  "over depth": 1,
  "off bottom": -1,
  "up in the water": -1,
};

/**
 * Whether a setting and its overdepth say the same: dead depth 0, over depth more, off bottom and up in the water
 * less.
 *
 * @param overdepthMm line beyond the depth [mm]
 */
export function checkSetting(setting: Setting, overdepthMm: Mm): readonly Finding[] {
  if (Math.sign(overdepthMm) === overdepthSign[setting]) return [];
  return noAnswer("setting-against-overdepth", { setting }).findings;
}

/** Hook or bed farther down than this [mm], no float is fished, and a line has too many pieces for its sums. */
const deepestMm = 100_000;

/**
 * Whether the water has room for the float, and for line below it.
 *
 * @param draughtMm surface to the float's lower eye [mm]
 * @returns an error `depth-not-positive`, `depth-too-great`, `depth-below-draught` or `depth-below-setting` where it has none
 */
export function checkRoom(depthMm: Mm, overdepthMm: Mm, draughtMm: Mm, lengthMm: Mm): readonly Finding[] {
  if (!(depthMm > 0 && depthMm < Infinity)) return noAnswer("depth-not-positive").findings;
  if (Math.max(depthMm, depthMm + overdepthMm) > deepestMm)
    return noAnswer("depth-too-great", { deepestMm }).findings;
  if (depthMm <= draughtMm) return noAnswer("depth-below-draught", { depthMm, draughtMm, lengthMm }).findings;
  if (depthMm + overdepthMm > draughtMm) return [];
  const offBedMm = -overdepthMm;
  return noAnswer("depth-below-setting", { depthMm, offBedMm, draughtMm }).findings;
}
