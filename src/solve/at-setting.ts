import type { GuideStep, SolvedDepth } from "./solved.ts";

/**
 * The depth guide's line for the rig's own setting. With shot on the bed, as in a lift rig or one that is laid on, the
 * float stands otherwise than with everything hanging.
 */
export function stepAtSetting({ depthGuide, overdepthMm }: SolvedDepth): GuideStep | undefined {
  const offMm = (step: GuideStep) => Math.abs(step.overdepthMm - overdepthMm);
  return depthGuide.reduce<GuideStep | undefined>(
    (best, step) => (best && offMm(best) <= offMm(step) ? best : step),
    undefined,
  );
}

/**
 * Tip showing at the rig's setting.
 *
 * @returns tip [mm]; null where the float is taken under or lies flat there
 */
export function tipAtSettingMm(depth: SolvedDepth): number | null {
  const step = stepAtSetting(depth);
  return step ? step.tipShowingMm : depth.tipShowingMm;
}
