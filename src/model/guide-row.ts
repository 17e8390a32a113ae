import type { GuideStep } from "../core/depth/guide-step.ts";

/** Lines of the depth guide that say the same, as one. */
export interface GuideRow extends GuideStep {
  /** Overdepth of the last of them and the move from there; `overdepthMm` and `moveMm` are those of the first. */
  readonly toOverdepthMm: number;
  readonly toMoveMm: number;
}
