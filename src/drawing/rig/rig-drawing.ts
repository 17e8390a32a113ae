import { lengthMm } from "../../core/float/float.ts";
import { moveFloat, type RigVariant } from "../../core/float/moved-float.ts";
import { entry } from "../../core/lists.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { keyOf } from "../../words/words.ts";
import { floatLook } from "../float/float-parts.ts";
import { point, polyline, rectangle, text, thinSoft } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import { layLabel, leading, paintLabel, together } from "../labels/label-text.ts";
import type { Drawing, Item } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { hookAlong } from "../parts/hook.ts";
import { parts } from "../parts/parts.ts";
import { mirrored, rotated } from "../transform.ts";
import { asDrawn, drawnHang, lineShape, upright } from "./current-shape.ts";
import { placeRigLabels, rowGapMm } from "./rig-label-layout.ts";
import { fewerLabels, type LabelChoice, type RigLabel, rigLabels, type SharedLabels } from "./rig-labels.ts";
import { lineBelowFloat, lineToRod } from "./rig-line.ts";
import { type UntruePart, untrueParts } from "./rig-places.ts";
import { planRig, type RigPlan } from "./rig-plan.ts";
import { heldTexts, rigDescription, rigTitle, tipText } from "./rig-words.ts";

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
  const planned = plansOf(rig, depth, box, options, kit);
  let labels: RigLabel[] | undefined = rigLabels(rig, depth, options.labels, kit);
  while (labels) {
    const items = tryDraw(rig, depth, planned, kit, options, labels);
    if (items) return items;
    labels = fewerLabels(labels, rig.rig.hookLengthMm, options.shared ?? "any", kit);
  }
  throw new NoRoomError("a rig with its shot", box, { folder: "rigs", id: rig.rig.id });
}

/** The plan of a rig with so many rows of labels below the bed, worked out once for each number of them. */
type Planned = (rowsBelow: number) => RigPlan | undefined;

function plansOf(
  rig: SolvedRig,
  depth: SolvedDepth,
  box: Box,
  options: RigDrawingOptions,
  kit: DrawingKit,
): Planned {
  const { labels: choice, textMm } = options;
  const shape = lineShape(depth);
  const rowMm = textMm * leading;
  const rowsAbove = (rig.rig.water === "flowing" && choice !== "none" ? 1 : 0) + (choice === "full" ? 1 : 0);
  // A line that hangs straight down has no slant to be drawn.
  const mayBe = untrueParts.filter((part) => part !== "slant" || shape !== upright);
  const foot = footMm(footWords(rig, depth, mayBe, kit).whole, box.widthMm, options, kit);
  const plans = new Map<number, RigPlan | undefined>();
  return (rowsBelow) => {
    if (!plans.has(rowsBelow)) {
      const belowMm = bedThicknessMm + rowGapMm + 0.1 + (choice === "none" ? 0 : rowsBelow * rowMm) + foot;
      plans.set(
        rowsBelow,
        planRig(rig, depth, shape, box, { aboveMm: rowsAbove * rowMm, belowMm, footMm: foot }),
      );
    }
    return plans.get(rowsBelow);
  };
}

/** What `drawRig` says of its drawing, without drawing it. */
export function describeRig(rig: SolvedRig, solvedDepth: SolvedDepth, kit: DrawingKit): string {
  const depth = asDrawn(rig, moveFloat(solvedDepth, rig.rig.water, "set"));
  return rigDescription(rig, depth, kit, depth.floatToHookMm - solvedDepth.floatToHookMm);
}

function tryDraw(
  rig: SolvedRig,
  depth: SolvedDepth,
  planned: Planned,
  kit: DrawingKit,
  { labels: choice, textMm }: RigDrawingOptions,
  labels: readonly RigLabel[],
): Item[] | undefined {
  const lying = labels.filter(
    (label) => label.fromHookMm >= 0 && label.fromHookMm < depth.overdepthMm,
  ).length;
  const placed = placeWithRows(lying, (rowsBelow) => {
    const plan = planned(rowsBelow);
    const items = plan && (choice === "none" ? [] : placeRigLabels(plan, labels, textMm, kit));
    return items && { plan, items };
  });
  if (!placed) return undefined;
  const { plan } = placed;
  return [
    rectangle(0, plan.surfaceMm, plan.box.widthMm, plan.bedMm - plan.surfaceMm, { fill: "water" }),
    ...parts.bed.draw({ leftMm: 0, rightMm: plan.box.widthMm, yMm: plan.bedMm }),
    ...parts.waterSurface.draw({ leftMm: 0, rightMm: plan.box.widthMm, yMm: plan.surfaceMm }),
    ...lineToRod(plan),
    ...lineBelowFloat(plan),
    ...marks(plan),
    ...placed.items,
    ...(choice === "none" ? [] : captions(plan, rig, depth, choice, textMm, kit)),
  ];
}

/** Below the bed each label has at least a row; broken into lines they need a few more. */
function placeWithRows<T>(labels: number, place: (rows: number) => T | undefined): T | undefined {
  for (let rows = labels; rows <= 3 * labels; rows += 1) {
    const placed = place(rows);
    if (placed) return placed;
  }
  return undefined;
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

/**
 * What the row below the bed says: how deep it is, how far over that a hook is set in still water, or that a line in running
 * water is longer than the depth, as it slants; and what is not to scale.
 */
function footWords(
  { rig: { water } }: SolvedRig,
  depth: SolvedDepth,
  untrue: Iterable<UntruePart>,
  { words, figures }: DrawingKit,
): { bed: string; set: string; whole: string } {
  const bed = words("drawing.rig.bed", { depth: figures.shortDepth(depth.depthMm) });
  const { overdepthMm } = depth;
  const over = water === "still" && overdepthMm > 0;
  const set = over
    ? words("drawing.rig.bed-set", {
        bed,
        place: words("figures.over-depth", { gap: figures.besideDepth(overdepthMm) }),
      })
    : bed;
  const slants = lineShape(depth) !== upright;
  const parts = [
    words("drawing.rig.not-to-scale.always"),
    ...[...untrue].map((part) => words(`drawing.rig.not-to-scale.${keyOf(part)}`)),
  ].join(", ");
  const told = slants ? words("drawing.rig.bed-slant", { bed: together(bed) }) : set;
  return { bed, set, whole: words("drawing.rig.not-to-scale.bed", { bed: told, parts }) };
}

/** Room for the words below the bed: all that may be out of scale is named where there is room for words. */
function footMm(
  whole: string,
  widthMm: number,
  { labels, textMm }: RigDrawingOptions,
  { measure }: DrawingKit,
): number {
  if (labels === "none") return 0;
  if (labels === "distances") return leading * textMm;
  return layLabel([{ text: whole }], widthMm - 1, textMm, measure).heightMm;
}

function footItems(
  { box, untrue }: RigPlan,
  rig: SolvedRig,
  depth: SolvedDepth,
  choice: LabelChoice,
  textMm: number,
  kit: DrawingKit,
): Item[] {
  const { words, measure } = kit;
  const named = untrueParts.filter((part) => untrue.has(part));
  const { bed, set, whole } = footWords(rig, depth, named, kit);
  if (choice === "full") {
    const label = layLabel([{ text: whole, ink: "soft" }], box.widthMm - 1, textMm, measure);
    return paintLabel(label, 0.5, box.heightMm - label.heightMm / 2, measure);
  }
  const baseMm = box.heightMm - 0.28 * textMm;
  const all = words("drawing.rig.not-to-scale.all");
  const hasRoom = (...said: readonly string[]) =>
    said.reduce((mm, one) => mm + textMm + measure(one, textMm, "regular"), 1 - textMm) <= box.widthMm;
  const told = hasRoom(set, all) || (hasRoom(set) && !hasRoom(bed, all)) ? set : bed;
  return [
    text(point(0.5, baseMm), told, textMm, { ink: "soft" }),
    ...(hasRoom(told, all)
      ? [text(point(box.widthMm - 0.5, baseMm), all, textMm, { ink: "soft", anchor: "end" as const })]
      : []),
  ];
}

/** What stands above the surface and below the bed. */
function captions(
  plan: RigPlan,
  rig: SolvedRig,
  depth: SolvedDepth,
  choice: LabelChoice,
  textMm: number,
  kit: DrawingKit,
): Item[] {
  const rowMm = textMm * leading;
  const items = footItems(plan, rig, depth, choice, textMm, kit);
  const flowing = rig.rig.water === "flowing";
  if (flowing) items.push(...flowRow(plan, depth, textMm, kit));
  if (choice === "full") {
    const tip = tipText(rig, depth, "drawing.rig.tip", kit);
    const baseline = (flowing ? rowMm : 0) + 0.85 * textMm;
    const left = plan.floatAt.xMm + 5;
    const tipTop = plan.floatAt.yMm - lengthMm(plan.float) * plan.floatLengthScale;
    const leader = [point(left - 0.6, baseline - 0.3 * textMm), point(plan.floatAt.xMm + 0.8, tipTop - 0.3)];
    items.push(polyline(leader, thinSoft), text(point(left, baseline), tip, textMm, { ink: "soft" }));
  }
  return items;
}

/** Where the stream runs, and how the float goes in it, in as many words as there is room for. */
function flowRow({ box, floatAt }: RigPlan, depth: SolvedDepth, textMm: number, kit: DrawingKit): Item[] {
  const { words, measure } = kit;
  const flow = words("drawing.drift.flow");
  const hang = drawnHang(depth);
  const arrowMm = { gap: 1.2, length: 9 };
  const widthMm = (said: string) => measure(said, textMm, "regular");
  const flowMm = widthMm(flow) + arrowMm.gap + arrowMm.length;
  const besideMm = (said: string) => textMm + widthMm(said);
  const held = (hang ? heldTexts(hang, kit) : []).find((said) => flowMm + besideMm(said) + 1 <= box.widthMm);
  const left = Math.min(floatAt.xMm + 5, box.widthMm - 0.5 - flowMm - (held ? besideMm(held) : 0));
  const baseMm = 0.85 * textMm;
  return [
    text(point(left, baseMm), flow, textMm, { ink: "soft" }),
    ...parts.flowArrow.draw({
      from: point(left + widthMm(flow) + arrowMm.gap, 0.55 * textMm),
      lengthMm: arrowMm.length,
    }),
    ...(held ? [text(point(left + flowMm + textMm, baseMm), held, textMm, { ink: "soft" })] : []),
  ];
}
