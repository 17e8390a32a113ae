import { movedPart } from "../../core/depth/setting.ts";
import type { RigVariant } from "../../core/float/moved-float.ts";
import type { Mm } from "../../core/units.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { keyOf } from "../../words/words.ts";
import type { DrawingKit } from "../kit.ts";
import { spoken } from "../spoken.ts";
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
  const { overdepthMm } = asDrawn(solved, depth);
  const from = figures.besideDepth(figures.settingMm(depth));
  const float =
    depth.lockShot.length > 0
      ? words("drawing.rig.spoken-float-locked", { from, what: figures.lock(depth.lock) })
      : words(`drawing.rig.spoken-held.${keyOf(movedPart(rig.float))}`, { from });
  const line = depth.lineShot.length > 0 ? [figures.shotPlaces(depth.lineShot), float] : [float];
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
    line: line.join("; "),
    tip: words("drawing.rig.spoken-tip", { tip: figures.tip(depth.tipShowingMm) }),
    hook: hookPlace(overdepthMm, kit),
  });
  const hang = drawnHang(depth);
  const heard = spoken(said, kit);
  if (!hang) return rig.water === "flowing" ? `${heard} ${words("drawing.rig.spoken-flow")}` : heard;
  const { paceMs, heldBackShare, leadMm } = hang;
  const flow = words(`drawing.rig.spoken-${leadMm >= 0 ? "lead" : "trail"}`, {
    pace: figures.pace(paceMs),
    held:
      heldBackShare === 0
        ? words("drawing.hang.free")
        : words("drawing.hang.held", { share: figures.share(heldBackShare) }),
    gap: figures.shortGap(Math.abs(leadMm)),
  });
  return `${heard} ${flow}`;
}

function hookPlace(overdepthMm: number, { words, figures }: DrawingKit): string {
  const gap = figures.shortGap(Math.abs(overdepthMm));
  if (overdepthMm === 0) return words("drawing.rig.on-bed");
  return words(overdepthMm > 0 ? "drawing.rig.over-bed" : "drawing.rig.off-bed", { gap });
}
