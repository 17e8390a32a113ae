import type { GuideStep } from "../core/depth/guide-step.ts";
import type { Mm } from "../core/units.ts";

/** Lines of the depth guide that say the same, as one. */
export interface GuideRow extends GuideStep {
  /** Overdepth of the last of them and the move from there; `overdepthMm` and `moveMm` are those of the first. */
  readonly toOverdepthMm: Mm;
  readonly toMoveMm: Mm;
  /** Height of the hook at the last of them. */
  readonly toHookOffBedMm: Mm;
}
