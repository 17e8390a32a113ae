import type { GuideStep } from "../core/depth/depth-guide.ts";
import type { GuideRow } from "../model/guide-row.ts";

/** Settings closer than this are the same to anybody who moves a float by hand [mm]. */
const sameSettingMm = 5;
/** The tip is read to 5 mm on a card; nothing finer tells two lines apart. */
const tipStepMm = 5;

/**
 * The depth guide as a reader needs it: neighbouring lines with the same state, advice, tip and resting shot become one,
 * and so do all those in which the float is dragged under; the rig's own setting keeps a line to itself.
 */
export function guideRows(steps: readonly GuideStep[], settingMm: number): readonly GuideRow[] {
  const rows: GuideRow[] = [];
  for (const step of steps) {
    const chosen = Math.abs(step.overdepthMm - settingMm) < sameSettingMm;
    const last = rows.at(-1);
    if (last && saysTheSame(last, step) && last.chosen === chosen) {
      rows[rows.length - 1] = { ...last, toOverdepthMm: step.overdepthMm };
    } else {
      rows.push({ ...step, toOverdepthMm: step.overdepthMm, chosen });
    }
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
