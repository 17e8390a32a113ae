import { movedPart } from "../core/depth/setting.ts";
import type { Mm } from "../core/units.ts";
import type { GuideRow } from "../model/guide-row.ts";
import type { Plumbing, SolvedDepth, SolvedRig } from "../model/solved.ts";
import { touchingMm } from "./figures.ts";
import { type PlumbingText, plumbingText } from "./plumbing-text.ts";
import { guidedFlowText, type RunText, runText } from "./run-text.ts";
import { unbroken } from "./shot-text.ts";
import type { TableKit } from "./table-kit.ts";
import { untoldTexts } from "./untold-text.ts";
import { keyOf } from "./words.ts";

/** What is said of a rig in more than one place, worded once for page, card, sheet and drawing. */
export interface RigTexts {
  /** What a line of the depth guide tells to do: where to start, or how much deeper or shallower that is. */
  readonly advice: (row: GuideRow) => string;
  /** What it says in running water. */
  readonly run: (row: GuideRow) => RunText;
  /** For which stream and which holding back the guide is; none in still water. */
  readonly guidedFlow: (depth: SolvedDepth) => string | undefined;
  readonly plumbing: (plumbing: Plumbing) => PlumbingText;
  /** How far a hook is set from where the bed was found: deeper above 0, shallower below it. */
  readonly thenSet: (byMm: Mm) => string;
  /** `Float to hook`, or what else the line is measured from. */
  readonly measuredFrom: (rig: SolvedRig) => string;
  /** What the tip should show, and what to do where it does not. */
  readonly tip: (depth: SolvedDepth) => string;
  /** Between which states of the rig the tip cannot tell; a sentence for each two. */
  readonly untold: (depth: SolvedDepth) => readonly string[];
}

/** The texts in one language and its figures. */
export function rigTexts(kit: TableKit): RigTexts {
  const { words, figures } = kit;
  return {
    advice: ({ advice, moveMm, toMoveMm }) => {
      const ends = [Math.abs(moveMm), Math.abs(toMoveMm)];
      return words(`told.advice.${advice}`, {
        move: figures.gapRange(Math.min(...ends), Math.max(...ends)),
      });
    },
    run: (row) => runText(row, kit),
    guidedFlow: (depth) => guidedFlowText(depth, kit),
    plumbing: (plumbing) => plumbingText(plumbing, kit),
    thenSet: (byMm) => thenSetText(byMm, kit),
    measuredFrom: ({ rig }) => words(`told.measured-from.${keyOf(movedPart(rig.float))}`),
    untold: (depth) => untoldTexts(depth, kit),
    tip: ({ tipAsSetMm, tipSetBy }) => words(`told.tip-set-by.${tipSetBy}`, { tip: figures.tip(tipAsSetMm) }),
  };
}

function thenSetText(byMm: Mm, { words, figures }: TableKit): string {
  if (Math.abs(byMm) < touchingMm) return words("told.then-set.done");
  const gap = unbroken(figures.besideDepth(Math.abs(byMm)));
  return words(`told.then-set.${byMm > 0 ? "deeper" : "shallower"}`, { gap });
}
