import type { RigVariant } from "../../core/float/moved-float.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import type { DrawingKit } from "../kit.ts";
import { together } from "../labels/label-text.ts";
import { drawnHang } from "./current-shape.ts";
import { countSizes, type GroupedShot, groupShot, type ShotGroup } from "./shot-groups.ts";

/** Shot counted by size, as labels have them: `2 × BB + No 8`; a count and its size stay on one line. */
export function shotLabel(shots: readonly GroupedShot[], { words }: DrawingKit): string {
  return countSizes(shots)
    .map(({ count, size }) => (count === 1 ? size : words("drawing.shot.several", { count, size })))
    .map(together)
    .join(`${together(" ")}${words("drawing.shot.and").trim()} `);
}

/** The same to be read out: `one AAA, 2 BB and one No 8`. */
export function spokenShot(shots: readonly GroupedShot[], { words }: DrawingKit): string {
  const told = countSizes(shots).map(({ count, size }) =>
    words(count === 1 ? "drawing.shot.spokenOne" : "drawing.shot.spokenSeveral", { count, size }),
  );
  const allButLast = told.slice(0, -1).join(words("drawing.shot.spokenComma"));
  return [allButLast, ...told.slice(-1)].filter(Boolean).join(words("drawing.shot.spokenAnd"));
}

/** Title of a rig's drawing. */
export function rigTitle(
  { rig }: SolvedRig,
  depth: SolvedDepth,
  variant: RigVariant,
  { words, figures }: DrawingKit,
): string {
  return words(`drawing.rig.title.${variant.replaceAll(" ", "-")}`, {
    rig: rig.title,
    depth: figures.shortDepth(depth.depthMm),
  });
}

/** The rig told from the hook up, from the same figures as the drawing. */
export function rigDescription(solved: SolvedRig, depth: SolvedDepth, kit: DrawingKit): string {
  const { rig } = solved;
  const { words, figures } = kit;
  const { floatToHookMm, overdepthMm } = depth;
  const lock = depth.lockShot;
  const told = [
    ...groupShot(depth.lineShot, overdepthMm).map((group) => ({
      fromHookMm: group.shots[0]!.fromHookMm,
      words: spokenGroup(group, kit),
    })),
    {
      fromHookMm: rig.hookLengthMm,
      words: spokenAt(rig.hookLengthMm, words("drawing.rig.spokenLoop"), kit),
    },
  ].sort((a, b) => a.fromHookMm - b.fromHookMm);
  const float =
    lock.length > 0
      ? words("drawing.rig.spokenFloatLocked", { what: spokenShot(lock, kit) })
      : words("drawing.rig.spokenFloat");
  const said = words("drawing.rig.description", {
    rig: rig.title,
    depth: figures.shortDepth(depth.depthMm),
    line: [...told.map((one) => one.words), spokenAt(floatToHookMm, float, kit)].join("; "),
    tip: words("drawing.rig.spokenTip", { tip: figures.tip(depth.tipShowingMm) }),
    hook: hookPlace(overdepthMm, kit),
  });
  const hang = drawnHang(solved, depth);
  if (!hang) return rig.water === "flowing" ? `${said} ${words("drawing.rig.spokenFlow")}` : said;
  return `${said} ${words(hang.leadMm >= 0 ? "drawing.rig.spokenLead" : "drawing.rig.spokenTrail")}`;
}

function spokenAt(fromHookMm: number, what: string, { words, figures }: DrawingKit): string {
  return words("drawing.rig.spokenAt", { from: figures.shortGap(fromHookMm), what });
}

function spokenGroup(group: ShotGroup, kit: DrawingKit): string {
  const { words, figures } = kit;
  const from = figures.shortGap(group.shots[0]!.fromHookMm);
  const to = figures.shortGap(group.shots.at(-1)!.fromHookMm);
  const what = spokenShot(group.shots, kit);
  switch (group.kind) {
    case "single":
      return words("drawing.rig.spokenAt", { from, what });
    case "together":
      return words("drawing.rig.spokenAt", { from, what: words("drawing.rig.spokenTogether", { what }) });
    case "run":
      return words("drawing.rig.spokenRun", { from, to, what, gap: figures.shortGap(group.gapMm) });
    case "mixed":
      return words("drawing.rig.spokenFromTo", { from, to, what });
  }
}

function hookPlace(overdepthMm: number, { words, figures }: DrawingKit): string {
  const gap = figures.shortGap(Math.abs(overdepthMm));
  if (overdepthMm === 0) return words("drawing.rig.onBed");
  return words(overdepthMm > 0 ? "drawing.rig.overBed" : "drawing.rig.offBed", { gap });
}
