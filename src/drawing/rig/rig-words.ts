import { movedPart } from "../../core/depth/setting.ts";
import type { RigVariant } from "../../core/float/moved-float.ts";
import { first, last } from "../../core/lists.ts";
import { groupShot, type ShotGroup } from "../../core/tackle/shot-groups.ts";
import type { Mm } from "../../core/units.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { keyOf } from "../../words/words.ts";
import type { DrawingKit } from "../kit.ts";
import { asDrawn, drawnHang } from "./current-shape.ts";

/** Title of a rig's drawing. */
export function rigTitle(
  { rig }: SolvedRig,
  depth: SolvedDepth,
  variant: RigVariant,
  { words, figures }: DrawingKit,
): string {
  return words(`drawing.rig.title.${keyOf(variant)}`, {
    rig: rig.title,
    depth: figures.shortDepth(depth.depthMm),
  });
}

/**
 * The rig told from the hook up, from the same figures as the drawing.
 *
 * @param movedMm how far up the line the drawing has its float, or stop knot, from where it is set
 */
export function rigDescription(
  solved: SolvedRig,
  depth: SolvedDepth,
  kit: DrawingKit,
  movedMm: Mm = 0,
): string {
  const { rig } = solved;
  const { words, figures } = kit;
  const { floatToHookMm } = depth;
  const { overdepthMm } = asDrawn(solved, depth);
  const told = [
    ...groupShot(depth.lineShot, overdepthMm).map((group) => ({
      fromHookMm: first(group.shots).fromHookMm,
      words: spokenGroup(group, kit),
    })),
    {
      fromHookMm: rig.hookLengthMm,
      words: spokenAt(rig.hookLengthMm, words("drawing.rig.spoken-loop"), kit),
    },
  ].sort((a, b) => a.fromHookMm - b.fromHookMm);
  const float =
    depth.lockShot.length > 0
      ? words("drawing.rig.spoken-float-locked", { what: figures.lock(depth.lock) })
      : words(`drawing.rig.spoken-held.${keyOf(movedPart(rig.float))}`);
  const said = words("drawing.rig.description", {
    rig: rig.title,
    depth: [
      words("drawing.rig.spoken-depth", { depth: figures.shortDepth(depth.depthMm) }),
      ...(movedMm === 0
        ? []
        : [
            words(`drawing.rig.spoken-moved-${movedMm > 0 ? "up" : "down"}`, {
              moved: words(`told.moved.${keyOf(movedPart(rig.float))}`),
              gap: figures.shortGap(Math.abs(movedMm)),
            }),
          ]),
    ].join(" "),
    line: [...told.map((one) => one.words), spokenAt(floatToHookMm, float, kit)].join("; "),
    tip: words("drawing.rig.spoken-tip", { tip: figures.tip(depth.tipShowingMm) }),
    hook: hookPlace(overdepthMm, kit),
  });
  const hang = drawnHang(solved, depth);
  if (!hang) return rig.water === "flowing" ? `${said} ${words("drawing.rig.spoken-flow")}` : said;
  const { paceMs, heldBackShare, leadMm } = hang;
  const flow = words(`drawing.rig.spoken-${leadMm >= 0 ? "lead" : "trail"}`, {
    pace: figures.pace(paceMs),
    held:
      heldBackShare === 0
        ? words("drawing.hang.free")
        : words("drawing.hang.held", { share: figures.share(heldBackShare) }),
    gap: figures.shortGap(Math.abs(leadMm)),
  });
  return `${said} ${flow}`;
}

function spokenAt(fromHookMm: number, what: string, { words, figures }: DrawingKit): string {
  return words("drawing.rig.spoken-at", { from: figures.shortGap(fromHookMm), what });
}

function spokenGroup(group: ShotGroup, kit: DrawingKit): string {
  const { words, figures } = kit;
  const from = figures.shortGap(first(group.shots).fromHookMm);
  const to = figures.shortGap(last(group.shots).fromHookMm);
  const what = figures.shot(group.shots);
  switch (group.kind) {
    case "single":
      return words("drawing.rig.spoken-at", { from, what });
    case "together":
      return words("drawing.rig.spoken-at", { from, what: words("drawing.rig.spoken-together", { what }) });
    case "run":
      return words("drawing.rig.spoken-run", { from, to, what, gap: figures.shortGap(group.gapMm) });
    case "mixed":
      return words("drawing.rig.spoken-from-to", { from, to, what });
  }
}

function hookPlace(overdepthMm: number, { words, figures }: DrawingKit): string {
  const gap = figures.shortGap(Math.abs(overdepthMm));
  if (overdepthMm === 0) return words("drawing.rig.on-bed");
  return words(overdepthMm > 0 ? "drawing.rig.over-bed" : "drawing.rig.off-bed", { gap });
}
