import type { DrawingKit } from "../drawing/kit.ts";
import type { SolvedDepth, SolvedRig } from "../solve/solved.ts";
import { depthGuideTable, placesList, shotList, type TextTable } from "../solve/tables.ts";

/** One rig's sums as text for a person at a terminal. */
export function sheetText(solved: SolvedRig, kit: DrawingKit): string {
  const { words, figures } = kit;
  const { rig, floatPullG } = solved;
  const head = [
    words("sheet.title", { title: rig.title, water: words(`water.${rig.water}`) }),
    rig.purpose,
    "",
    words("sheet.float", {
      float: rig.float.title,
      capacity: figures.mass(rig.float.capacityG),
      metal: words(`metal.${rig.float.capacityMetal}`),
      basis: words(`capacity-basis.${rig.float.capacityBasis}`),
      pull: figures.mass(floatPullG),
    }),
    words("sheet.line", {
      main: figures.strength(rig.mainLine.strengthG),
      hookLine: figures.strength(rig.hookLine.strengthG),
      length: figures.gap(rig.hookLengthMm),
      hook: rig.hook.size,
      bait: rig.bait.title,
    }),
    words("sheet.scale", { scale: rig.scaleTitle, temperature: figures.temperature(rig.conditions.tempC) }),
  ];
  return `${[head.join("\n"), ...solved.depths.map((depth) => depthText(depth, kit))].join("\n\n")}\n`;
}

function depthText(depth: SolvedDepth, kit: DrawingKit): string {
  const { words, figures } = kit;
  const lock = depth.shot.filter(({ role }) => role === "lock");
  const line = depth.shot.filter(({ role }) => role !== "lock");
  const lines = [
    words("sheet.depth", {
      depth: figures.depth(depth.depthMm),
      floatToHook: figures.depth(depth.floatToHookMm),
      draught: figures.gap(depth.draughtMm),
    }),
    ...(lock.length > 0
      ? [words("sheet.lock", { shot: shotList(lock, words), share: figures.share(depth.lockShare) })]
      : []),
    words("sheet.on-the-line", { shot: placesList(line, kit) }),
    words("sheet.load", {
      mass: figures.mass(depth.massG),
      pull: figures.mass(depth.pullG),
      spare: figures.mass(depth.sparePullG),
      metals: metalList(depth, kit),
    }),
    words("sheet.tip", {
      tip: `${depth.tipShowingMm.toFixed(0)} mm`,
      band: `${depth.tipUncertaintyMm.toFixed(0)} mm`,
    }),
  ];
  const effects: TextTable = {
    head: [words("table.size"), words("table.one-fewer"), words("table.one-more")],
    rows: depth.shotEffects.map(({ size, oneFewerMm, oneMoreMm }) => [
      size,
      oneFewerMm === null ? words("table.under") : `${oneFewerMm.toFixed(0)} mm`,
      oneMoreMm === null ? words("table.under") : `${oneMoreMm.toFixed(0)} mm`,
    ]),
  };
  return [
    lines.join("\n"),
    columns(effects),
    words("sheet.guide"),
    columns(depthGuideTable(depth, kit)),
  ].join("\n\n");
}

function metalList(depth: SolvedDepth, { words }: DrawingKit): string {
  return [...new Set(depth.shot.map(({ metal }) => words(`metal.${metal}`)))].join(", ");
}

/** A table in columns as wide as their longest entry. */
function columns({ head, rows }: TextTable): string {
  const widths = head.map((title, at) => Math.max(title.length, ...rows.map((row) => row[at]!.length)));
  const row = (cells: readonly string[]) =>
    `  ${cells.map((cell, at) => cell.padEnd(widths[at]!)).join("  ")}`.trimEnd();
  return [row(head), row(widths.map((width) => "─".repeat(width))), ...rows.map(row)].join("\n");
}
