import type { PlumbingStep } from "../../core/depth/plumbing.ts";
import { lengthMm } from "../../core/float/float.ts";
import { entry } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { SolvedRig } from "../../model/solved.ts";
import { arrow, bold, type Point, point, polyline, text } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { layLabel, leading, paintLabel } from "../labels/label-text.ts";
import type { Item } from "../model.ts";
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

/** The line in the hand, with the float where the setting has it, and how the hand moves it for the next try. */
export function movedByHand(
  solved: SolvedRig,
  step: PlumbingStep,
  room: HandRoom,
  { figures }: DrawingKit,
): Item[] {
  const { lineX, topMm, bedMm, textMm } = room;
  const { moveMm } = step;
  const { at, float, knot } = heldBy(solved, step, room);
  const up = moveMm > 0 ? -1 : 1;
  const arrowX = lineX - 4;
  const middle = at.yMm - heldFloatMm / 2;
  return [
    polyline([point(lineX, topMm), point(lineX, bedMm - plummetMm)], strandStrokes["main line"]),
    placed(point(lineX, bedMm), parts.plummet.draw({ at: point(0, 0), heightMm: plummetMm })),
    ...float,
    ...(moveMm === 0 ? [] : pinchingHand(at, handUnitMm, 1)),
    ...knot,
    ...(moveMm === 0
      ? []
      : [
          ...arrow(
            point(arrowX, middle - 3.5 * up),
            point(arrowX, middle + 3.5 * up),
            { ...bold, ink: "accent" },
            2.4,
          ),
          text(byHand(at, room), `${moveMm > 0 ? "+" : "−"}${figures.shortGap(Math.abs(moveMm))}`, textMm, {
            face: "bold",
          }),
        ]),
  ];
}

/** Where the figure of a move stands beside the line, above the hand where there is room and else below it. */
function byHand(at: Point, room: HandRoom): Point {
  const { lineX, textMm } = room;
  const offMm = figureIsAbove(at, room) ? -fromHandMm : fromHandMm + textMm;
  return point(lineX + besideLineMm, at.yMm + offMm);
}

/** Whether there is room for it there. */
const figureIsAbove = (at: Point, { topMm }: HandRoom) => at.yMm - topMm > 18;

/** How the hand moves on from a try to those that are left out: as far again, or each time half as far; below hand and figure. */
export function goesOnByHand(
  solved: SolvedRig,
  steps: readonly PlumbingStep[],
  at: number,
  room: HandRoom,
  { words, measure }: DrawingKit,
): Item[] {
  const hand = heldBy(solved, entry(steps, at), room).at;
  const movedMm = (place: number) => Math.abs(entry(steps, place).moveMm);
  const said = words(`drawing.film.plumbing.goes-on.${movedMm(at + 1) < movedMm(at) ? "half" : "same"}`);
  const { textMm } = room;
  const label = layLabel([{ text: said }], besideHandMm, textMm, measure);
  const topMm = hand.yMm + fromHandMm + (figureIsAbove(hand, room) ? 0 : leading * textMm);
  return paintLabel(label, room.lineX + besideLineMm, topMm + label.heightMm / 2, measure);
}
