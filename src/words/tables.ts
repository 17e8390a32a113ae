import type { LineTable, StrengthBand } from "../model/library.ts";
import type { GuideStep, SolvedDepth, SolvedRig, SolvedShot } from "../model/solved.ts";
import type { Figures } from "./figures.ts";
import type { Words } from "./words.ts";

/** A table as text: what is in its head row and in the rows below. */
export interface TextTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface TableKit {
  readonly words: Words;
  readonly figures: Figures;
}

/** `3 × No 8 + No 10`, in the order of the shot given. */
export function shotList(shot: readonly Pick<SolvedShot, "size">[], words: Words): string {
  const counts = new Map<string, number>();
  for (const { size } of shot) counts.set(size, (counts.get(size) ?? 0) + 1);
  const parts = [...counts].map(([size, count]) =>
    count === 1 ? size : words("table.count-of-size", { count, size }),
  );
  return parts.length === 0 ? words("table.none") : parts.join(" + ");
}

/** Shot on the line one group after another, from the hook up: `No 10 at 30 cm, 3 × No 8 at 60, 85 and 110 cm`. */
export function placesList(shot: readonly SolvedShot[], { words, figures }: TableKit): string {
  const groups: { size: string; at: number[] }[] = [];
  for (const { size, fromHookMm } of shot) {
    const last = groups[groups.length - 1];
    if (last?.size === size) last.at.push(fromHookMm);
    else groups.push({ size, at: [fromHookMm] });
  }
  const parts = groups.map(({ size, at }) => {
    const from = figures.shortGap(at[0]!);
    if (at.length === 1) return words("table.shot-at", { size, at: from });
    return words("table.shot-between", {
      count: at.length,
      size,
      from,
      to: figures.shortGap(at[at.length - 1]!),
    });
  });
  return parts.length === 0 ? words("table.none") : parts.join("; ");
}

/** A row a depth: where to set the float, what locks it, what hangs on the line, what the tip shows. */
export function shotTable(solved: SolvedRig, kit: TableKit): TextTable {
  const { words, figures } = kit;
  const locked = solved.depths.some(({ lockShot }) => lockShot.length > 0);
  const row = (depth: SolvedDepth): string[] => [
    figures.shortDepth(depth.depthMm),
    figures.shortDepth(depth.floatToHookMm),
    ...(locked ? [shotList(depth.lockShot, words)] : []),
    placesList(depth.lineShot, kit),
    figures.tip(depth.tipAsSetMm),
  ];
  return {
    head: [
      words("table.depth"),
      words("table.float-to-hook"),
      ...(locked ? [words("table.lock")] : []),
      words("table.line-shot"),
      words("table.tip"),
    ],
    rows: solved.depths.map(row),
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

/** What the float says from well off the bottom to laid on. */
export function depthGuideTable(depth: SolvedDepth, { words, figures }: TableKit): TextTable {
  const tip = ({ state, tipShowingMm }: GuideStep): string => {
    if (tipShowingMm !== null) return figures.tip(tipShowingMm);
    return words(state === "lies flat" ? "table.flat" : "table.under");
  };
  return {
    head: [words("table.hook-set"), words("table.state"), words("table.on-the-bed"), words("table.tip")],
    rows: depth.guideRows.map((step) => [
      figures.hookSet(step.overdepthMm, step.toOverdepthMm),
      words(`state.${step.state}`),
      step.shotOnBed.length === 0 ? words("table.none") : step.shotOnBed.join(", "),
      tip(step),
    ]),
  };
}
