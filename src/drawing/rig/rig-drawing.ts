import { moveFloat, type RigVariant } from "../../core/float/moved-float.ts";
import { entry } from "../../core/lists.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { floatLook } from "../float/float-parts.ts";
import { point, polyline, rectangle, thinSoft } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import { leading } from "../labels/label-text.ts";
import type { Drawing, Item } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { hookAlong } from "../parts/hook.ts";
import { parts } from "../parts/parts.ts";
import { mirrored, rotated } from "../transform.ts";
import { asDrawn, lineShape, upright } from "./current-shape.ts";
import { belowBedMm, captions, footHeightMm, footWords } from "./rig-captions.ts";
import { placeRigLabels } from "./rig-label-layout.ts";
import { fewerLabels, type LabelChoice, type RigLabel, rigLabels, type SharedLabels } from "./rig-labels.ts";
import { lineBelowFloat, lineToRod } from "./rig-line.ts";
import { untrueParts } from "./rig-places.ts";
import { planRig, type RigPlan } from "./rig-plan.ts";
import { rigDescription, rigTitle } from "./rig-words.ts";

export interface RigDrawingOptions {
  /** `distances`: shot and distances only, for a small card; `full`: every part named; `none`: no words at all. */
  readonly labels: LabelChoice;
  readonly textMm: number;
  readonly variant?: RigVariant;
  /** Any neighbours, where nothing is said. */
  readonly shared?: SharedLabels;
}

/**
 * A rig made up for one depth, from the surface to the bed: distances from the hook, the lower rig larger than the
 * bare line above it, long bare line shortened. Labels never overlap; where the box is short of room the least
 * needed go first and neighbouring shot share one.
 *
 * @throws NoRoomError where the box is too small for the rig's parts or for a single label
 */
export function drawRig(
  rig: SolvedRig,
  solvedDepth: SolvedDepth,
  box: Box,
  kit: DrawingKit,
  options: RigDrawingOptions,
): Drawing {
  const variant = options.variant ?? "set";
  const depth = asDrawn(rig, moveFloat(solvedDepth, rig.rig.water, variant));
  return {
    ...box,
    title: rigTitle(rig, depth, variant, kit),
    description: rigDescription(rig, depth, kit, depth.floatToHookMm - solvedDepth.floatToHookMm),
    items: rigMarks(rig, solvedDepth, box, kit, options),
  };
}

/**
 * What `drawRig` draws, without telling it in words.
 *
 * @throws NoRoomError as `drawRig`
 */
export function rigMarks(
  rig: SolvedRig,
  solvedDepth: SolvedDepth,
  box: Box,
  kit: DrawingKit,
  options: RigDrawingOptions,
): readonly Item[] {
  const depth = asDrawn(rig, moveFloat(solvedDepth, rig.rig.water, options.variant ?? "set"));
  const plan = planOf(rig, depth, box, options, kit);
  let labels: RigLabel[] | undefined = plan && rigLabels(rig, depth, options.labels, kit);
  while (plan && labels) {
    const items = tryDraw(rig, depth, plan, kit, options, labels);
    if (items) return items;
    labels = fewerLabels(labels, rig.rig.hookLengthMm, options.shared ?? "any", kit);
  }
  throw new NoRoomError("a rig with its shot", box, { folder: "rigs", id: rig.rig.id });
}

function planOf(
  rig: SolvedRig,
  depth: SolvedDepth,
  box: Box,
  options: RigDrawingOptions,
  kit: DrawingKit,
): RigPlan | undefined {
  const { labels: choice, textMm } = options;
  const shape = lineShape(depth);
  const rowMm = textMm * leading;
  const rowsAbove = (rig.rig.water === "flowing" && choice !== "none" ? 1 : 0) + (choice === "full" ? 1 : 0);
  // A line that hangs straight down has no slant to be drawn.
  const mayBe = untrueParts.filter((part) => part !== "slant" || shape !== upright);
  // Where all of these are out of scale less is said than where one is.
  const footsMm = [mayBe, ...mayBe.map((part) => [part])].map((untrue) =>
    footHeightMm(footWords(rig, depth, untrue, kit).whole, box.widthMm, options, kit),
  );
  return planRig(rig, depth, shape, box, {
    aboveMm: rowsAbove * rowMm,
    belowMm: bedThicknessMm + belowBedMm + Math.max(...footsMm),
  });
}

/** What `drawRig` says of its drawing, without drawing it. */
export function describeRig(rig: SolvedRig, solvedDepth: SolvedDepth, kit: DrawingKit): string {
  const depth = asDrawn(rig, moveFloat(solvedDepth, rig.rig.water, "set"));
  return rigDescription(rig, depth, kit, depth.floatToHookMm - solvedDepth.floatToHookMm);
}

function tryDraw(
  rig: SolvedRig,
  depth: SolvedDepth,
  plan: RigPlan,
  kit: DrawingKit,
  { labels: choice, textMm }: RigDrawingOptions,
  labels: readonly RigLabel[],
): Item[] | undefined {
  const placed = choice === "none" ? [] : placeRigLabels(plan, labels, textMm, kit);
  if (!placed) return undefined;
  return [
    rectangle(0, plan.surfaceMm, plan.box.widthMm, plan.bedMm - plan.surfaceMm, { fill: "water" }),
    ...parts.bed.draw({ leftMm: 0, rightMm: plan.box.widthMm, yMm: plan.bedMm }),
    ...parts.waterSurface.draw({ leftMm: 0, rightMm: plan.box.widthMm, yMm: plan.surfaceMm }),
    ...lineToRod(plan),
    ...lineBelowFloat(plan),
    ...marks(plan),
    ...placed,
    ...(choice === "none" ? [] : captions(plan, rig, depth, choice, textMm, kit)),
  ];
}

function marks(plan: RigPlan): Item[] {
  const { float, floatAt } = plan;
  const items: Item[] = [
    ...parts.floatBody.draw({
      ...floatLook(float),
      at: floatAt,
      lengthScale: plan.floatLengthScale,
      widthScale: plan.floatWidthScale,
    }),
  ];
  if (plan.clearance) {
    const { fromMm, toMm } = plan.clearance;
    const x = floatAt.xMm + plan.lean(0);
    items.push(polyline([point(x, fromMm + 0.6), point(x, toMm)], { ...thinSoft, dashMm: [0.4, 0.9] }));
    if (plan.clearance.broken) items.push(...parts.lineBreak.draw({ at: point(x, (fromMm + toMm) / 2) }));
  }
  for (const mark of plan.marks) {
    if (mark.kind === "shot") items.push(...parts.shot.draw(mark));
    if (mark.kind === "loop")
      items.push(...parts.loopJoin.draw({ at: mark.at, heightMm: 2 * mark.radiusMm }));
    if (mark.kind === "hook") {
      const place = { bend: mark.at, heightMm: plan.hookHeightMm };
      const hook = parts.hook.draw(place);
      const laid =
        plan.liesTo === "left"
          ? rotated(mirrored(hook, mark.at.xMm), 90, mark.at)
          : rotated(hook, -90, mark.at);
      items.push(...(mark.lying ? laid : hookAlong(place, entry(plan.marks, 1).at)));
    }
  }
  return items;
}
