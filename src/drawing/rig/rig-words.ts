import { lyingMm } from "../../core/depth/lying.ts";
import { movedPart } from "../../core/depth/setting.ts";
import type { RigVariant } from "../../core/float/moved-float.ts";
import { entry, first } from "../../core/lists.ts";
import { shotNamed } from "../../core/tackle/shot-groups.ts";
import type { Mm } from "../../core/units.ts";
import type { WaterKind } from "../../core/water/water.ts";
import type { FlowFigure } from "../../model/in-water.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { untoldOther } from "../../words/untold-text.ts";
import { keyOf } from "../../words/words.ts";
import type { DrawingKit } from "../kit.ts";
import { together } from "../labels/label-text.ts";
import { spoken } from "../spoken.ts";
import { asDrawn, drawnHang } from "./current-shape.ts";

/** Title of a rig's drawing: where its float was moved, with how far off the bed or over depth that sets the hook. */
export function rigTitle(
  { rig }: SolvedRig,
  depth: SolvedDepth,
  variant: RigVariant,
  { words, figures }: DrawingKit,
): string {
  const told = { rig: rig.title, depth: figures.shortDepth(depth.depthMm) };
  return variant === "set"
    ? words("drawing.rig.title.set", told)
    : words("drawing.rig.title.moved", {
        ...told,
        place: figures.hookSet(depth.overdepthMm, depth.overdepthMm),
      });
}

/**
 * How much of the tip shows, and what for: every shot hangs, the bait lies on the bed, or in still water shot do as well,
 * which are off the float there, or hold it down while their line is still tight. In so many words, and beside a drawing in
 * fewer.
 */
export function tipTexts(
  { rig }: SolvedRig,
  depth: SolvedDepth,
  told: "drawing.rig.tip" | "drawing.rig.spoken-tip",
  { words, figures }: DrawingKit,
): readonly [whole: string, ...brief: string[]] {
  const { depthGuide, overdepthMm, tipShowingMm, lineShot } = depth;
  const tip = figures.tip(tipShowingMm);
  const onBed = depthGuide.find((step) => step.overdepthMm === overdepthMm)?.shotOnBed ?? [];
  const shot = shotNamed(onBed, lineShot);
  const alone = words(told, { tip });
  const texts = (state: TipState, because = {}): readonly [string, ...string[]] => {
    const whole = words(`${told}-${state}`, { tip, ...because });
    return told === "drawing.rig.tip"
      ? [whole, words(`${told}-${state}-brief`, { tip, ...because }), alone]
      : [whole];
  };
  if (overdepthMm <= 0) return texts("hangs");
  if (rig.water === "flowing") return [alone];
  if (shot.length === 0) return texts("bait");
  // As long as no more line lies there than up to the highest of these, the line from it to the float is tight.
  const isTight = lyingMm(depth) <= entry(lineShot, onBed.length - 1).fromHookMm + asTightMm;
  return texts(isTight ? "held" : "lifted", { shot: figures.shot(shot) });
}

/** With what else on the bed the tip shows the same, of a rig set over depth; none where the tip tells. */
export function tipOther(depth: SolvedDepth, kit: DrawingKit): string | undefined {
  const { depthGuide, overdepthMm } = depth;
  const step = overdepthMm > 0 && depthGuide.find((one) => one.overdepthMm === overdepthMm);
  return step ? untoldOther(step, depth, kit) : undefined;
}

/** Line that hangs slack between shot on the bed and float, and is no more than a rounding [mm]. */
const asTightMm = 0.1;

/** For what a tip shows as it does. */
type TipState = "hangs" | "bait" | "lifted" | "held";

/** How the float goes in the stream that the rig is drawn in: in the words of pages and cards. */
function heldText({ heldBackShare }: FlowFigure, { words, figures }: DrawingKit): string {
  if (heldBackShare === 0) return words("drawing.rig.free");
  return words("drawing.rig.held-back-brief", { share: together(figures.share(heldBackShare)) });
}

/** The same beside a drawing, with what slows it where there is room for that, and in fewer words. */
export function heldTexts(hang: FlowFigure, kit: DrawingKit): readonly [whole: string, ...brief: string[]] {
  const { words, figures } = kit;
  const held = heldText(hang, kit);
  if (hang.heldBackShare === 0) return [held, words("drawing.rig.run-free-briefest")];
  const briefest = words("drawing.rig.held-back-briefest", {
    share: together(figures.share(hang.heldBackShare)),
  });
  return [words("drawing.rig.held-back", { held }), held, briefest];
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
  const other = tipOther(depth, kit);
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
    tip: [
      first(tipTexts(solved, depth, "drawing.rig.spoken-tip", kit)),
      ...(other === undefined ? [] : [words("told.untold.spoken", { other })]),
    ].join(" "),
    hook: hookPlace(rig.water, overdepthMm, kit),
  });
  const hang = drawnHang(depth);
  const heard = spoken(said, kit);
  if (!hang) return rig.water === "flowing" ? `${heard} ${words("drawing.rig.spoken-flow")}` : heard;
  const { paceMs, leadMm } = hang;
  const flow = words(`drawing.rig.spoken-${leadMm >= 0 ? "lead" : "trail"}`, {
    pace: figures.pace(paceMs),
    held: heldText(hang, kit),
    gap: figures.shortGap(Math.abs(leadMm)),
  });
  return `${heard} ${flow}`;
}

/** Where the hook is; in still water so far over depth as it is set, in running water with so much line on the bed as is drawn. */
function hookPlace(water: WaterKind, overdepthMm: number, { words, figures }: DrawingKit): string {
  const gap = figures.shortGap(Math.abs(overdepthMm));
  if (overdepthMm === 0) return words("drawing.rig.on-bed");
  if (overdepthMm < 0) return words("drawing.rig.off-bed", { gap });
  return words(water === "still" ? "drawing.rig.set-over" : "drawing.rig.over-bed", { gap });
}
