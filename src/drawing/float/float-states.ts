import { type Float, lengthMm } from "../../core/float/float.ts";
import { last } from "../../core/lists.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import type { WordKey } from "../../words/word-key.ts";
import { arrow, bold, type Point, point, polyline, rectangle, text } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import { layLabel, paintLabel, together } from "../labels/label-text.ts";
import type { Drawing, Item, PathItem } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { floatEyeRadiusMm } from "../parts/float-body.ts";
import { parts } from "../parts/parts.ts";
import { spoken } from "../spoken.ts";
import { strandStrokes } from "../strands.ts";
import { rotated, rotatedPoint } from "../transform.ts";
import { verdictMark, verdictMm } from "../verdict.ts";
import { floatLook, rubberHeightsMm } from "./float-parts.ts";
import {
  type FloatPicture,
  type FloatPose,
  flatDegrees,
  floatPictures,
  floatPose,
  stateGroups,
} from "./float-poses.ts";
import { rubberRoomMm, rubbersOn } from "./rubbers-on.ts";
import { smallHand, smallHandMm } from "./small-hand.ts";
import { curve, lineAndEnd } from "./state-line.ts";
import { type ShownTip, tipInset, tipInsetMm } from "./tip-inset.ts";

interface StateOptions {
  readonly textMm: number;
}

const marginMm = 1;
/** Height of the picture in its panel, from the frame to the bed's hatching. */
const pictureMm = 47;
const surfaceMm = 15;
/** Length that the float is drawn in. */
const floatMm = 17;
/** Between the float's picture and its tip. */
const besideMm = 2;
/** Top of a float below the surface: one that is under, and one that a plummet holds there. */
const underMm = 2.2;
const heldUnderMm = 4.5;
/** Where the line from the rod comes in: sunk, or above the water to a float held at its top. */
const rodLineMm = { sunk: 2.6, dry: -5.5 } as const;
/** From a float to where a word at its left has to end: over one that is under, short of the arrow of a bite at its right. */
const wordEndMm = { float: -2.4, "moving left": -10, under: 4, flat: 20 } as const;
/** How far above the water a word stands: over the rings round a float that is under, and over one that lies flat. */
const aboveWaterMm = { float: 1.4, under: 2.6, flat: 5 } as const;
const bedMm = pictureMm - bedThicknessMm - 0.5;
/** Words in a panel are no higher than this, nor than this share of its width, or they meet each other and what they name. */
const labelMost = { mm: 3.4, ofWidth: 1 / 12.7 } as const;

/**
 * One state of a rig's float: too much shot, a bite, set too deep …, with what it means below it. Undefined where the
 * rig has no such state.
 */
export function drawFloatState(
  picture: FloatPicture,
  solved: SolvedRig,
  depth: SolvedDepth,
  widthMm: number,
  kit: DrawingKit,
  { textMm }: StateOptions,
): Drawing | undefined {
  const pose = floatPose(picture, solved, depth, kit);
  if (!pose) return undefined;
  const { words, measure } = kit;
  const title = words(`drawing.state.${picture}.${pose.title ?? "title"}` as WordKey);
  const key = `drawing.state.${picture}.${pose.caption ?? "caption"}` as WordKey;
  const glued = Object.entries(pose.values).map(([gap, value]) => [gap, together(value)]);
  const room = widthMm - 2 * marginMm;
  const head = layLabel([{ text: title, face: "bold" }], room, textMm, measure);
  const caption = layLabel([{ text: words(key, Object.fromEntries(glued)) }], room, textMm, measure);
  const headTop = pictureMm + 1;
  const labelMm = Math.min(textMm, labelMost.mm, labelMost.ofWidth * widthMm);
  return {
    widthMm,
    heightMm: headTop + head.heightMm + caption.heightMm + 1,
    title,
    description: spoken(`${title}. ${words(key, pose.values)}`, kit),
    items: [
      ...panel(solved, depth, pose, widthMm, labelMm, kit),
      ...paintLabel(head, marginMm, headTop + head.heightMm / 2, measure),
      ...paintLabel(caption, marginMm, headTop + head.heightMm + caption.heightMm / 2, measure),
    ],
  };
}

/** Every state that a rig's float has, in panels side by side. */
export function drawFloatStates(
  solved: SolvedRig,
  depth: SolvedDepth,
  box: Pick<Box, "widthMm">,
  kit: DrawingKit,
  options: StateOptions & { readonly panelMm: number; readonly pictures?: readonly FloatPicture[] },
): Drawing {
  const gapMm = 3;
  const columns = Math.max(1, Math.floor((box.widthMm + gapMm) / (options.panelMm + gapMm)));
  const widthMm = (box.widthMm - (columns - 1) * gapMm) / columns;
  const shown = options.pictures ?? floatPictures;
  // What is said of the load, of the depth and of bites: each in rows of its own.
  const groups = [stateGroups.load, stateGroups.depth, stateGroups.bites].map((group) =>
    group.flatMap((picture) =>
      shown.includes(picture) ? (drawFloatState(picture, solved, depth, widthMm, kit, options) ?? []) : [],
    ),
  );
  const items: Item[] = [];
  let top = 0;
  for (const panels of groups)
    for (let first = 0; first < panels.length; first += columns) {
      const row = panels.slice(first, first + columns);
      for (const [i, one] of row.entries())
        items.push({ kind: "group", xMm: i * (widthMm + gapMm), yMm: top, items: one.items });
      top += Math.max(...row.map((one) => one.heightMm)) + gapMm;
    }
  return {
    widthMm: box.widthMm,
    heightMm: top - gapMm,
    title: kit.words("drawing.state.sheet", { rig: solved.rig.title }),
    description: groups.flatMap((panels) => panels.map(({ description }) => description)).join(" "),
    items,
  };
}

function panel(
  solved: SolvedRig,
  depth: SolvedDepth,
  pose: FloatPose,
  panelMm: number,
  textMm: number,
  kit: DrawingKit,
): Item[] {
  const { words, measure } = kit;
  const { float } = solved.rig;
  const insetMm = tipInsetMm(textMm, kit);
  const widthMm = panelMm - insetMm - besideMm;
  const scale = Math.min(0.5, floatMm / lengthMm(float));
  const flatMm = lengthMm(float) * scale * Math.sin((pose.leanDegrees * Math.PI) / 180);
  const water = point(widthMm * (0.5 - pose.baitAside / 2) + flatMm / 2, surfaceMm);
  const sunkMm = pose.line === "plummet standing" ? heldUnderMm : underMm;
  const tipTop = pose.tipMm === null ? surfaceMm + sunkMm : Math.max(1, surfaceMm - pose.tipMm * scale);
  const foot = point(water.xMm, tipTop + lengthMm(float) * scale);
  const eyeMm = float.attachment === "top and bottom" ? 0 : floatEyeRadiusMm;
  const turned = (at: Point) => rotatedPoint(at, pose.leanDegrees, water);
  const eye = turned(point(foot.xMm, foot.yMm + eyeMm));
  const rubbers = float.attachment === "top and bottom" ? rubberHeightsMm(float, rubberRoomMm / scale) : [];
  const held = rubbers.length > 0 ? turned(point(foot.xMm, foot.yMm - last(rubbers) * scale)) : eye;
  const items: Item[] = [
    rectangle(0, surfaceMm, widthMm, bedMm - surfaceMm, { fill: "water" }),
    ...parts.bed.draw({ leftMm: 0, rightMm: widthMm, yMm: bedMm }),
    ...parts.waterSurface.draw({ leftMm: 0, rightMm: widthMm, yMm: surfaceMm }),
    lineFromRod(held, rubbers.length > 0 ? "dry" : "sunk"),
    ...rodLabel(pose, { held, water, isLineDry: rubbers.length > 0, widthMm, textMm }, kit),
    ...lineAndEnd(pose, depth, { eye, bedMm, widthMm }),
    ...rotated(standingFloat(float, foot, scale), pose.leanDegrees, water),
  ];
  if (pose.tipMm === null) items.push(...parts.ripples.draw({ at: water }));
  if (pose.moving) items.push(...movement(pose.moving, water, rubbers.length > 0));
  if (pose.toMove)
    items.push(...toMove(pose.toMove, pose.leanDegrees === flatDegrees ? eye : water, widthMm));
  // Below the row that says where the water goes.
  const markTop = 0.4 + (pose.drift ? textMm : 0);
  items.push(...verdictMark(pose.verdict, point(widthMm - verdictMm - 0.4, markTop + verdictMm)));
  if (pose.drift) {
    const said = words(`drawing.drift.${pose.drift}`);
    const right = measure(said, textMm, "regular");
    items.push(
      text(point(0.5, 0.8 * textMm), said, textMm, { ink: "soft" }),
      ...parts.flowArrow.draw({ from: point(right + 1.5, 0.5 * textMm), lengthMm: 7 }),
    );
  }
  if (pose.leanDegrees !== flatDegrees) {
    const room = {
      leftMm: panelMm - insetMm,
      bottomMm: bedMm,
      textMm,
      tips: tipsOf(solved, depth, kit),
    };
    items.push(...tipInset(float, pose, room, kit));
  }
  return items;
}

/** The tips of a rig's states, so that all are to one scale; a float that stands far too high goes beyond it. */
function tipsOf(solved: SolvedRig, depth: SolvedDepth, kit: DrawingKit): readonly ShownTip[] {
  return floatPictures.flatMap((picture) => {
    const pose = picture === "too-deep" ? undefined : floatPose(picture, solved, depth, kit);
    return pose && pose.leanDegrees !== flatDegrees ? pose : [];
  });
}

function standingFloat(float: Float, foot: Point, scale: number): Item[] {
  const widest = Math.max(...float.profile.map((p) => p.diameterMm));
  const drawn = { float, foot, lengthScale: scale, widthScale: Math.max(scale, 2 / widest) };
  const body = parts.floatBody.draw({ ...floatLook(float), ...drawn, at: foot });
  if (float.attachment !== "top and bottom") return [...body];
  const { line, rubbers } = rubbersOn(drawn);
  return [...body, polyline([...line, foot], strandStrokes["main line"]), ...rubbers];
}

/** The line between rod and float, which comes in at the left. */
function lineFromRod(held: Point, way: keyof typeof rodLineMm): PathItem {
  const { from, towards } = rodLineEnd(held, way);
  return { kind: "path", steps: curve(from, towards, held), stroke: strandStrokes["main line"] };
}

/** Where that line comes in, and where it is drawn towards. */
const rodLineEnd = (held: Point, way: keyof typeof rodLineMm) => ({
  from: point(0, surfaceMm + rodLineMm[way]),
  towards: point(Math.max(0, held.xMm - 4), held.yMm - (way === "dry" ? 1 : 2)),
});

/**
 * Says at the left where the line leads: above a dry line; below a sunk one, or where that leaves no room above the water,
 * clear of the float and what is round it.
 */
function rodLabel(
  { tipMm, leanDegrees, moving }: FloatPose,
  {
    held,
    water,
    isLineDry,
    widthMm,
    textMm,
  }: {
    readonly held: Point;
    readonly water: Point;
    readonly isLineDry: boolean;
    readonly widthMm: number;
    readonly textMm: number;
  },
  { words, measure }: DrawingKit,
): Item[] {
  const label = { text: words("drawing.state.rod"), ink: "soft" } as const;
  const saidMm = 0.5 + measure(label.text, textMm, "regular");
  const { from, towards } = rodLineEnd(held, "sunk");
  if (!isLineDry && saidMm <= towards.xMm) {
    // The line runs between the way straight to the float and the one to the place that it is drawn towards.
    const fall = Math.max(...[held, towards].map(({ xMm, yMm }) => (yMm - from.yMm) / xMm));
    const lineMm = from.yMm + saidMm * fall;
    return [text(point(0.5, lineMm + textMm), label.text, textMm, { ink: label.ink })];
  }
  const state = leanDegrees === flatDegrees ? "flat" : tipMm === null ? "under" : "float";
  const endMm = water.xMm + wordEndMm[state === "float" && moving === "left" ? "moving left" : state];
  const roomMm = isLineDry ? widthMm : Math.min(widthMm, endMm);
  const said = layLabel([label], roomMm, textMm, measure, "whole");
  const footMm = isLineDry ? surfaceMm + rodLineMm.dry - 1 : surfaceMm - aboveWaterMm[state];
  return paintLabel(said, 0.5, footMm + 0.25 * textMm - said.heightMm / 2, measure);
}

/** An arrow below the water, beside the float, for the way that a hand has to move it along its line; the hand stands at it where the water has room for it. */
function toMove(way: NonNullable<FloatPose["toMove"]>, { xMm, yMm }: Point, widthMm: number): Item[] {
  const [high, low] = [point(xMm + 5.5, yMm + 4), point(xMm + 5.5, yMm + 14)];
  const [from, to] = way === "down" ? [high, low] : [low, high];
  const hand = point(high.xMm + 1, (high.yMm + low.yMm) / 2);
  return [
    ...arrow(from, to, { ink: "accent", widthMm: 0.9 }, 3),
    ...(hand.xMm + smallHandMm <= widthMm ? smallHand(hand) : []),
  ];
}

/** An arrow beside the float for where it is going. */
function movement(moving: NonNullable<FloatPose["moving"]>, { xMm, yMm }: Point, isLineDry: boolean): Item[] {
  const stroke = { ...bold, ink: "accent" } as const;
  if (moving === "left") {
    // Clear of the line from the rod.
    const y = isLineDry ? yMm + 3.5 : yMm - 3.5;
    return arrow(point(xMm - 4, y), point(xMm - 9.5, y), stroke, 2.6);
  }
  const [from, to] = moving === "down" ? [yMm - 8, yMm - 1] : [yMm + 0.5, yMm - 7];
  return arrow(point(xMm + 5.5, from), point(xMm + 5.5, to), stroke, 2.6);
}
