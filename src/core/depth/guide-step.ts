import type { Mm } from "../units.ts";
/** What a float says. */
export const floatStates = ["hangs", "rests on the bed", "drags under", "lies flat"] as const;
export type FloatState = (typeof floatStates)[number];

/** What to do next; each names a sentence in `content/words` under `told.advice.`. */
const guideAdvices = ["start-here", "go-deeper", "go-shallower"] as const;
type GuideAdvice = (typeof guideAdvices)[number];

/** What a float says with the hook set so far beyond the depth. */
export interface GuideReading {
  readonly state: FloatState;
  /** Sizes that touch the bed, from the hook up. */
  readonly shotOnBed: readonly string[];
  /** Null where the float is taken under or lies flat. */
  readonly tipShowingMm: Mm | null;
}

/** One line of the depth guide: the hook set this much beyond the depth, and what the float then says. */
export interface GuideStep extends GuideReading {
  readonly overdepthMm: Mm;
  /** Float's lower eye to the hook, along the line. */
  readonly floatToHookMm: Mm;
  /** Height of the hook; 0 where its bait is on the bed [mm]. */
  readonly hookOffBedMm: Mm;
  readonly advice: GuideAdvice;
  /** From here to the line that says to start there: deeper above 0, shallower below it [mm]. */
  readonly moveMm: Mm;
}
