import type { PlumbingStep } from "../../core/depth/plumbing.ts";
import { lengthMm } from "../../core/float/float.ts";
import { entry } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { SolvedRig } from "../../model/solved.ts";
import { wayOf } from "../../words/plumbing-text.ts";
import { arrow, bold, type Point, point, polyline, thinSoft } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { type LabelText, layLabel, paintLabel, together } from "../labels/label-text.ts";
import type { Item, Stroke } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { pinchingHand } from "./hand.ts";
import { movingFloat, placed } from "./moving.ts";

/** How long the float in the hand is. */
const heldFloatMm = 9;
export const plummetMm = 4;
const handUnitMm = 0.8;
/** Words by the hand: how far from its middle, how far beside the line, and how wide. */
const fromHandMm = 8.5;
const besideLineMm = 3;
const besideHandMm = 19;

/** Whether its stop knot is moved, and not the float. */
export const isSliding = ({ rig }: SolvedRig): boolean => rig.float.attachment === "sliding";

/** Where the line in the hand is drawn, and between which settings. */
export interface HandRoom {
  readonly lineX: number;
  readonly topMm: number;
  readonly bedMm: number;
  readonly leastMm: Mm;
  readonly mostMm: Mm;
  readonly textMm: number;
}

/** Float and what holds it there, as the setting has it in the hand. */
interface Held {
  /** Where the hand moves it. */
  readonly at: Point;
  readonly float: readonly Item[];
  /** A knot is small: it is drawn over the fingers that hold it. */
  readonly knot: readonly Item[];
}

/** A float that slides lies on the plummet, and the hand moves its stop knot; any other is moved itself, by its foot. */
function heldBy(
  solved: SolvedRig,
  { settingMm }: PlumbingStep,
  { lineX, topMm, bedMm, leastMm, mostMm }: HandRoom,
): Held {
  const { rig } = solved;
  const floatMm = lengthMm(rig.float);
  const float = (footY: number) =>
    movingFloat(rig.float, {
      top: point(lineX, footY - heldFloatMm),
      scale: heldFloatMm / floatMm,
      lengthMm: floatMm,
    });
  const share = (settingMm - leastMm) / Math.max(1, mostMm - leastMm);
  const between = (lowest: number, highest: number) => point(lineX, lowest - share * (lowest - highest));
  if (isSliding(solved)) {
    const restsY = bedMm - plummetMm - 2;
    const at = between(restsY - heldFloatMm - 4, topMm + 4);
    return { at, float: float(restsY), knot: [placed(at, parts.stopKnot.draw(upright))] };
  }
  const at = between(bedMm - 12, topMm + heldFloatMm + 4);
  return { at, float: float(at.yMm), knot: [] };
}

const upright = { at: point(0, 0), turnedDegrees: 90 };

/** The line in the hand, with the float where a try has it and where the one before had it, and how the hand moves it for the next. */
export function movedByHand(
  solved: SolvedRig,
  steps: readonly PlumbingStep[],
  at: number,
  room: HandRoom,
  kit: DrawingKit,
): Item[] {
  const { lineX, topMm, bedMm } = room;
  const step = entry(steps, at);
  const held = heldBy(solved, step, room);
  return [
    polyline([point(lineX, topMm), point(lineX, bedMm - plummetMm)], strandStrokes["main line"]),
    placed(point(lineX, bedMm), parts.plummet.draw({ at: point(0, 0), heightMm: plummetMm })),
    ...whereItWas(solved, steps, at, room),
    ...held.float,
    ...(step.moveMm === 0 ? [] : pinchingHand(held.at, handUnitMm, 1)),
    ...held.knot,
    ...(step.moveMm === 0 ? [] : wayOfHand(step, held.at, room)),
    ...paintBeside(moveLabel(solved, step, room, kit), held.at, room, kit),
  ];
}

/** What it moves, which way and how far. */
function moveLabel(
  solved: SolvedRig,
  step: PlumbingStep,
  { textMm }: HandRoom,
  { words, figures, measure }: DrawingKit,
): LabelText {
  const moved = isSliding(solved) ? "knot" : "float";
  const gap = together(figures.shortGap(Math.abs(step.moveMm)));
  const said =
    step.moveMm === 0
      ? words(`drawing.film.plumbing.by-hand.${moved}.stays`)
      : words(`drawing.film.plumbing.by-hand.${moved}.${wayOf(step)}`, { gap });
  return layLabel([{ text: said, face: "bold" }], besideHandMm, textMm, measure);
}

/** Whether a float is seen where it was before a try, clear of the hand; a knot is too small for it. */
export function isLeftBehind(
  solved: SolvedRig,
  steps: readonly PlumbingStep[],
  at: number,
  room: HandRoom,
): boolean {
  const yOf = (place: number) => heldBy(solved, entry(steps, place), room).at.yMm;
  return at > 0 && !isSliding(solved) && Math.abs(yOf(at) - yOf(at - 1)) > clearOfHandMm;
}

/** The float where it was, in dashes. As a part of its own for every try it stands, where a film moves what is drawn again. */
function whereItWas(solved: SolvedRig, steps: readonly PlumbingStep[], at: number, room: HandRoom): Item[] {
  if (!isLeftBehind(solved, steps, at, room)) return [];
  const outline = heldBy(solved, entry(steps, at - 1), room).float.flatMap((item): Item[] =>
    item.kind === "path" ? [{ kind: "path", steps: item.steps, stroke: dashes }] : [],
  );
  return [placed(point(0, 0), outline)];
}

const dashes: Stroke = { ...thinSoft, dashMm: [0.8, 0.6] };
const clearOfHandMm = 5;

/** An arrow the way that the hand goes. */
function wayOfHand({ moveMm }: PlumbingStep, at: Point, { lineX }: HandRoom): Item[] {
  const up = moveMm > 0 ? -1 : 1;
  const [arrowX, middle] = [lineX - 4, at.yMm - heldFloatMm / 2];
  const stroke: Stroke = { ...bold, ink: "accent" };
  return arrow(point(arrowX, middle - 3.5 * up), point(arrowX, middle + 3.5 * up), stroke, 2.4);
}

/** Words beside the line, above the hand where there is room and else below it. */
function paintBeside(label: LabelText, at: Point, room: HandRoom, { measure }: DrawingKit): Item[] {
  const fromMm = fromHandMm + label.heightMm / 2;
  const y = at.yMm + (wordsAreAbove(at, room) ? -fromMm : fromMm);
  return paintLabel(label, room.lineX + besideLineMm, y, measure);
}

/** Whether there is room for it there. */
const wordsAreAbove = (at: Point, { topMm }: HandRoom) => at.yMm - topMm > 18;

/** How the hand moves on from a try to those that are left out: as far again, or each time half as far; below hand and figure. */
export function goesOnByHand(
  solved: SolvedRig,
  steps: readonly PlumbingStep[],
  at: number,
  room: HandRoom,
  kit: DrawingKit,
): Item[] {
  const { words, measure } = kit;
  const step = entry(steps, at);
  const hand = heldBy(solved, step, room).at;
  const movedMm = (place: number) => Math.abs(entry(steps, place).moveMm);
  const said = words(`drawing.film.plumbing.goes-on.${movedMm(at + 1) < movedMm(at) ? "half" : "same"}`);
  const { textMm } = room;
  const label = layLabel([{ text: said }], besideHandMm, textMm, measure);
  const belowMm = wordsAreAbove(hand, room) ? 0 : moveLabel(solved, step, room, kit).heightMm;
  const topMm = hand.yMm + fromHandMm + belowMm;
  return paintLabel(label, room.lineX + besideLineMm, topMm + label.heightMm / 2, measure);
}
