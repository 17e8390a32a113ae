import { type FeltBed, feelForBed, type PlumbingStep } from "../core/depth/plumbing.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import type { SheetKit } from "./sheet-kit.ts";
import { labelled, section } from "./sheet-layout.ts";

/** Finding the depth: with a plummet, and in running water with the rig itself. */
export function findDepthText(solved: SolvedRig, depth: SolvedDepth, kit: SheetKit): string {
  const { words } = kit;
  const lowest = depth.lineShot[0];
  const felt =
    solved.rig.water === "flowing" ? feelForBed(depth.depthMm, lowest?.fromHookMm ?? 0) : undefined;
  return section(
    words("sheet.find-depth"),
    labelled([
      [words("sheet.label.plummet"), plummet(depth, kit)],
      ...depth.plumbing.steps.map(
        (step, at) => [words("sheet.label.try", { number: at + 1 }), plumbingTry(step, kit)] as const,
      ),
      ...(felt?.ok ? [[words("sheet.label.no-plummet"), feltBed(felt.value, kit)] as const] : []),
    ]),
  );
}

function plummet({ plumbing, lockShare }: SolvedDepth, { words, figures }: SheetKit): string {
  const needed = words(lockShare > 0 ? "sheet.plummet-locked" : "sheet.plummet", {
    mass: figures.mass(plumbing.plummetNeededG),
  });
  if (!plumbing.plummet) return needed;
  const { massG, metal } = plumbing.plummet;
  const use = words("sheet.plummet-in-box", { mass: figures.mass(massG), metal: words(`metal.${metal}`) });
  return `${needed} ${use}`;
}

function plumbingTry({ settingMm, sign, moveMm }: PlumbingStep, { words, figures }: SheetKit): string {
  const values = { setting: figures.depth(settingMm), move: figures.gap(Math.abs(moveMm)) };
  return words(`sheet.plumbing.${sign}`, values);
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
