import type { GuideStep } from "../core/depth/guide-step.ts";
import { tipStepMm } from "../core/float/tip.ts";
import type { GuideRow } from "../model/guide-row.ts";

/**
 * The depth guide as a reader needs it: neighbouring lines with the same state, advice, tip and resting shot become one,
 * and so do all those in which the float is dragged under; the line to start at stands by itself.
 */
export function guideRows(steps: readonly GuideStep[]): readonly GuideRow[] {
  const rows: GuideRow[] = [];
  for (const step of steps) {
    const last = rows.at(-1);
    const { overdepthMm, moveMm, hookOffBedMm } = step;
    const to = { toOverdepthMm: overdepthMm, toMoveMm: moveMm, toHookOffBedMm: hookOffBedMm };
    if (last && saysTheSame(last, step)) rows[rows.length - 1] = { ...last, ...to };
    else rows.push({ ...step, ...to });
  }
  return rows;
}

function saysTheSame(a: GuideStep, b: GuideStep): boolean {
  if (a.state !== b.state || a.advice !== b.advice) return false;
  if (a.state === "drags under") return true;
  return readTip(a) === readTip(b) && a.shotOnBed.join() === b.shotOnBed.join();
}

const readTip = ({ tipShowingMm }: GuideStep) =>
  tipShowingMm === null ? null : Math.round(tipShowingMm / tipStepMm);
