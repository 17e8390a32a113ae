import type { GuideStep } from "../core/depth/depth-guide.ts";

/** Lines of the depth guide that say the same, as one. */
export interface GuideRow extends GuideStep {
  /** Overdepth of the last of them; `overdepthMm` is that of the first. */
  readonly toOverdepthMm: number;
  /** Whether the rig itself is set so. */
  readonly chosen: boolean;
}
