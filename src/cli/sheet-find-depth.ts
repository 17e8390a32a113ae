import { type FeltBed, feelForBed } from "../core/depth/plumbing.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { rigTexts } from "../words/rig-texts.ts";
import type { SheetKit } from "./sheet-kit.ts";
import { labelled, section } from "./sheet-layout.ts";

/** Finding the depth: with a plummet, and in running water with the rig itself. */
export function findDepthText(solved: SolvedRig, depth: SolvedDepth, kit: SheetKit): string {
  const { words } = kit;
  const { plummet, tries } = rigTexts(kit).plumbing(depth.plumbing);
  const lowest = depth.lineShot[0];
  const felt =
    solved.rig.water === "flowing" ? feelForBed(depth.depthMm, lowest?.fromHookMm ?? 0) : undefined;
  return section(
    words("sheet.find-depth"),
    labelled([
      [words("sheet.label.plummet"), plummet],
      ...tries.map(
        ({ set, sign, next }, at) =>
          [
            words("sheet.label.try", { number: at + 1 }),
            words("sheet.plumbing-try", { setting: set, sign, next }),
          ] as const,
      ),
      ...(felt?.ok ? [[words("sheet.label.no-plummet"), feltBed(felt.value, kit)] as const] : []),
    ]),
  );
}

function feltBed({ runs, fishFromMm, fishToMm }: FeltBed, { words, figures }: SheetKit): string {
  const found = runs.find(({ pulledDown }) => pulledDown)!;
  return words(runs[0]!.pulledDown ? "sheet.feel-up" : "sheet.feel-down", {
    first: figures.depth(runs[0]!.settingMm),
    found: figures.depth(found.settingMm),
    from: figures.depth(fishFromMm),
    to: figures.depth(fishToMm),
  });
}
