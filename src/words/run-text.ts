import type { GuideRow } from "../model/guide-row.ts";
import type { SolvedDepth } from "../model/solved.ts";
import type { TableKit } from "./table-kit.ts";
import { keyOf } from "./words.ts";

/** What a line of a running water's guide says: how the line is set, what the float does, and where the bait runs. */
export interface RunText {
  readonly setting: string;
  readonly float: string;
  readonly bait: string;
}

export function runText(row: GuideRow, { words, figures }: TableKit): RunText {
  const { hookOffBedMm, toHookOffBedMm } = row;
  const height = figures.gapRange(hookOffBedMm, toHookOffBedMm);
  return {
    setting: figures.lineSet(row.overdepthMm, row.toOverdepthMm),
    float: words(`told.run.${keyOf(row.state)}`),
    bait: hookOffBedMm > 0 ? words("told.run.off", { height }) : words("told.run.on"),
  };
}

/** For which stream and which holding back a guide is; nothing in still water. */
export function guidedFlowText(
  { guidedFlow }: SolvedDepth,
  { words, figures }: TableKit,
): string | undefined {
  if (!guidedFlow) return undefined;
  const { heldBackShare, paceMs } = guidedFlow;
  return words("told.run.for", { share: figures.share(heldBackShare), pace: figures.pace(paceMs) });
}
