import { firstGuessMm } from "../core/depth/plumbing.ts";
import {
  type FeltBed,
  feelForBed,
  feelStepMm,
  firstDip,
  raiseFurtherMm,
  raiseStepMm,
} from "../core/flow/feel-for-bed.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { rigTexts } from "../words/rig-texts.ts";
import type { SheetKit } from "./sheet-kit.ts";
import { labelled, section } from "./sheet-layout.ts";

/** Finding the depth: with a plummet, and in running water with the rig itself. */
export function findDepthText(solved: SolvedRig, depth: SolvedDepth, kit: SheetKit): string {
  const { words } = kit;
  const { plumbing, thenSet } = rigTexts(kit);
  const { plummet, tries } = plumbing(depth.plumbing);
  const dips = solved.rig.water === "flowing" ? firstDip(depth.depthGuide) : undefined;
  const felt = dips ? feelForBed(depth.depthMm + dips.overdepthMm, firstGuessMm) : undefined;
  return section(
    words("sheet.find-depth"),
    labelled([
      [words("sheet.label.plummet"), plummet],
      ...tries.map(
        ({ set, says, next }, at) =>
          [
            words("sheet.label.try", { number: at + 1 }),
            words("sheet.plumbing-try", { setting: set, says, next }),
          ] as const,
      ),
      ...(dips && felt?.ok
        ? [
            [
              words("sheet.label.no-plummet"),
              `${feltBed(felt.value, kit)} ${thenSet(-raiseFurtherMm(Math.abs(dips.moveMm)))}`,
            ] as const,
          ]
        : []),
    ]),
  );
}

function feltBed({ runs, foundMm, cleanMm }: FeltBed, { words, figures }: SheetKit): string {
  return words(runs[0]!.dips ? "sheet.feel-up" : "sheet.feel-down", {
    first: figures.depth(runs[0]!.settingMm),
    step: figures.shortGap(feelStepMm),
    found: figures.depth(foundMm),
    raise: figures.shortGap(raiseStepMm),
    clean: figures.depth(cleanMm),
  });
}
