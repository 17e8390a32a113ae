import { movedPart } from "../core/depth/setting.ts";
import { isToldAsBefore } from "../core/depth/told-apart.ts";
import type { Finding } from "../core/finding.ts";
import { shotNamed } from "../core/tackle/shot-groups.ts";
import type { BaitEntry } from "../model/library.ts";
import type { LineTable, StrengthBand } from "../model/line-table.ts";
import type { GuideStep, SolvedDepth, SolvedRig } from "../model/solved.ts";
import { guidedFlowText, runText } from "./run-text.ts";
import type { TableKit } from "./table-kit.ts";
import { keyOf } from "./words.ts";

/** A table as text: what is in its head row and in the rows below. */
export interface TextTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** What the sums behind it warn of, for the author who asked for it. */
  readonly findings?: readonly Finding[];
}

/** A row a depth: where to set the float, what locks it, what hangs on the line, what the tip shows. */
export function shotTable(solved: SolvedRig, kit: TableKit): TextTable {
  const { words, figures } = kit;
  const locked = solved.depths.some(({ lockShot }) => lockShot.length > 0);
  const row = (depth: SolvedDepth): string[] => [
    figures.shortDepth(depth.depthMm),
    figures.besideDepth(figures.settingMm(depth)),
    ...(locked ? [figures.lock(depth.lock)] : []),
    figures.shotPlaces(depth.lineShot),
    figures.tip(depth.tipAsSetMm),
  ];
  return {
    head: [
      words("table.depth"),
      words(`told.measured-from.${keyOf(movedPart(solved.rig.float))}`),
      ...(locked ? [words("table.lock")] : []),
      words("table.line-shot"),
      words("table.tip"),
    ],
    rows: solved.depths.map(row),
  };
}

/** The hooks that suit each bait, by their numbers, the largest hook first. */
export function hookTable(baits: readonly Omit<BaitEntry, "notes">[], { words }: TableKit): TextTable {
  const suited = baits.flatMap(({ bait: { title }, hooks }) => (hooks ? [{ title, hooks }] : []));
  return {
    head: [words("table.bait"), words("table.hooks")],
    rows: suited.map(({ title, hooks: { largest, smallest } }) => [
      title,
      words("figures.from-to", { from: String(largest), to: String(smallest) }),
    ]),
  };
}

/** The line that each kind of fish asks for. */
export function lineTable({ rows }: LineTable, { words, figures }: TableKit): TextTable {
  const band = ({ leastG, mostG }: StrengthBand) => figures.strengthBand(leastG, mostG);
  return {
    head: [words("table.fish"), words("table.main-line"), words("table.hook-length")],
    rows: rows.map(({ fish, mainLine, hookLine }) => [capital(fish), band(mainLine), band(hookLine)]),
  };
}

const capital = (name: string) => name.charAt(0).toUpperCase() + name.slice(1);

/** What the float says from well off the bottom to laid on; in running water with where the bait runs. */
export function depthGuideTable(depth: SolvedDepth, kit: TableKit): TextTable {
  const { words, figures } = kit;
  const runs = guidedFlowText(depth, kit);
  const tip = (row: GuideStep, before: GuideStep | undefined): string => {
    const { state, tipShowingMm } = row;
    if (tipShowingMm === null) return words(state === "lies flat" ? "table.flat" : "table.under");
    const told = figures.tip(tipShowingMm);
    return before && !runs && isToldAsBefore(row, before) ? words("told.untold.cell", { tip: told }) : told;
  };
  return {
    head: [
      words("table.hook-set"),
      runs ?? words("table.state"),
      ...(runs ? [words("page.in-water.bait")] : []),
      words("table.on-the-bed"),
      words("table.tip"),
    ],
    rows: depth.guideRows.map((row, at, rows) => {
      const run = runs ? runText(row, kit) : undefined;
      return [
        run?.setting ?? figures.hookSet(row.overdepthMm, row.toOverdepthMm),
        run?.float ?? words(`state.${keyOf(row.state)}`),
        ...(run ? [run.bait] : []),
        figures.shot(shotNamed(row.shotOnBed, depth.lineShot)),
        tip(row, rows[at - 1]),
      ];
    }),
  };
}

/** A row a depth: how a whip's line is shared out, and how far from its butt the float can stand. */
export function whipTable({ rig, depths }: SolvedRig, { words, figures }: TableKit): TextTable {
  return {
    head: [
      words("table.depth"),
      words(`told.measured-from.${keyOf(movedPart(rig.float))}`),
      words("table.tip-to-water"),
      words("table.reach"),
    ],
    rows: depths.map((depth) => [
      figures.shortDepth(depth.depthMm),
      figures.besideDepth(figures.settingMm(depth)),
      ...[depth.whip!.tipToWaterMm, depth.whip!.reachMm].map((mm) => figures.shortDepth(mm)),
    ]),
  };
}
