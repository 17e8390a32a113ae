import type { Mm } from "../units.ts";

/** How a float is set and how deep it stands in still water. */
interface SetFloat {
  /** Along the line [mm]. */
  readonly floatToHookMm: Mm;
  /** From the water down to where the line leaves the float [mm]. */
  readonly draughtMm: Mm;
  readonly depthMm: Mm;
}

/** Line that lies on the bed in still water [mm]: what there is more of than the water is deep below the float; none below 0. */
export const lyingMm = ({ floatToHookMm, draughtMm, depthMm }: SetFloat): Mm =>
  Math.max(0, floatToHookMm + draughtMm - depthMm);
