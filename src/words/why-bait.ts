import type { Mm } from "../core/units.ts";
import type { TableKit } from "./table-kit.ts";

/** Less ahead or behind than is printed [mm]. */
const levelMm = 5;

/**
 * Why a bait hangs ahead of its float in a stream, or behind it, in a few words; none where it hangs below it.
 *
 * @param leadMm how far ahead of the float, below 0 behind it
 */
export function whyBait(leadMm: Mm, { words }: TableKit): string | undefined {
  if (Math.abs(leadMm) < levelMm) return undefined;
  return words(leadMm > 0 ? "told.why-bait.ahead" : "told.why-bait.behind");
}
