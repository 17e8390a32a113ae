import { entry, paired } from "../core/lists.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { rigTexts } from "../words/rig-texts.ts";
import { depthGuideTable, shotTable } from "../words/tables.ts";
import { untoldTexts } from "../words/untold-text.ts";
import { alternativesText } from "./sheet-alternatives.ts";
import { findDepthText } from "./sheet-find-depth.ts";
import type { SheetKit } from "./sheet-kit.ts";
import { columns, paragraph, section } from "./sheet-layout.ts";
import { setText } from "./sheet-set.ts";
import { tackleText } from "./sheet-tackle.ts";
import { tipText } from "./sheet-tip.ts";
import { waterPart } from "./sheet-water.ts";

/**
 * One rig's sums for a person at a terminal: first what all depths share and the shot for each, then everything about
 * one of them.
 */
export function sheetText(solved: SolvedRig, kit: SheetKit): string {
  const { words, figures } = kit;
  const { rig } = solved;
  const depth = depthTold(solved);
  const title = words("sheet.title", { title: rig.title, water: words(`water.${rig.water}`) });
  const shown = { depth: figures.depth(depth.depthMm) };
  return `${[
    `${title}\n${rig.purpose}`,
    tackleText(solved, kit),
    section(words("sheet.shot"), columns(shotTable(solved, kit))),
    solved.depths.length > 1 ? words("sheet.one-depth", shown) : "",
    setText(solved, depth, kit),
    tipText(solved, depth, kit),
    findDepthText(solved, depth, kit),
    section(
      words("sheet.guide", shown),
      columns(guideTable(depth, kit)),
      ...untoldTexts(depth, kit).map(paragraph),
    ),
    waterPart(solved, depth, kit),
    alternativesText(solved, depth, kit),
  ]
    .filter((part) => part !== "")
    .join("\n\n")
    .replaceAll("\u00a0", " ")}\n`;
}

/** The depth that a sheet or a drawing tells of where a rig is for several: the middle one. */
export function depthTold({ depths }: SolvedRig): SolvedDepth {
  return entry(depths, Math.floor((depths.length - 1) / 2));
}

function guideTable(depth: SolvedDepth, kit: SheetKit) {
  const { head, rows } = depthGuideTable(depth, kit);
  const advice = depth.guideRows.map((row) => rigTexts(kit).advice(row));
  return {
    head: [...head, kit.words("sheet.next")],
    rows: paired(rows, advice).map(([row, next]) => [...row, next]),
  };
}
