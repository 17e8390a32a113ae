import { liftMm, pullToSinkG } from "../core/float/tip.ts";
import { first } from "../core/lists.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import type { TextTable } from "../words/tables.ts";
import { keyOf } from "../words/words.ts";
import type { SheetKit } from "./sheet-kit.ts";
import { columns, labelled, section } from "./sheet-layout.ts";

/** What the tip shows: with the right load, with a shot more or fewer, and when a fish is there. */
export function tipText(solved: SolvedRig, depth: SolvedDepth, kit: SheetKit): string {
  const { words, figures } = kit;
  const { float, conditions } = solved.rig;
  const loadG = depth.pullG + solved.hookAndBaitPullG;
  const band = figures.tipBand(depth.tipUncertaintyMm);
  const sinkG = pullToSinkG(float, loadG, conditions);
  const lowest = depth.lineShot[0];
  return section(
    words("sheet.tip-says"),
    labelled([
      [words("sheet.label.right"), words("sheet.tip", { tip: figures.tip(depth.tipAsSetMm), band })],
      ...depth.tipStates
        .filter(({ load }) => load !== "right" && sinkG > 0)
        .map(
          ({ load, changeG, tipShowingMm }) =>
            [
              words(`sheet.label.${keyOf(load)}`),
              words("sheet.tip-off", {
                size: first(depth.shotEffects.filter(({ massG }) => massG === Math.abs(changeG))).size,
                change: figures.mass(Math.abs(changeG)),
                tip: figures.tip(tipShowingMm),
              }),
            ] as const,
        ),
      ...(sinkG > 0
        ? [[words("sheet.label.bite"), words("sheet.to-sink", { pull: figures.mass(sinkG) })] as const]
        : []),
      ...(lowest && sinkG > 0
        ? [
            [
              words("sheet.label.lift"),
              words("sheet.lift", {
                size: lowest.size,
                lift: figures.small(liftMm(float, loadG, lowest.pullG, conditions)),
                band,
              }),
            ] as const,
          ]
        : []),
    ]),
    "",
    depth.shotEffects.length > 0 ? `\n${columns(effects(depth, kit))}` : "",
  );
}

function effects({ shotEffects }: SolvedDepth, { words, figures }: SheetKit): TextTable {
  const more = (tipMm: number | null) => (tipMm === null ? words("table.under") : figures.tip(tipMm));
  const fewer = (tipMm: number | null | undefined) =>
    tipMm === undefined ? words("table.blank") : tipMm === null ? words("table.flat") : figures.tip(tipMm);
  return {
    head: [words("table.size"), words("table.one-fewer"), words("table.one-more")],
    rows: shotEffects.map(({ size, oneFewerMm, oneMoreMm }) => [size, fewer(oneFewerMm), more(oneMoreMm)]),
  };
}
