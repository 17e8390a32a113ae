import { lengthMm } from "../../core/float/float.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import type { WordKey } from "../../words/word-key.ts";
import { arrow, bold, type Point, point, polyline, rectangle, text } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import { layLabel, paintLabel, together } from "../labels/label-text.ts";
import type { Drawing, Item, PathStep } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { floatEyeRadiusMm } from "../parts/float-body.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { mirrored, rotated, rotatedPoint } from "../transform.ts";
import { floatLook } from "./float-parts.ts";
import { type FloatPicture, type FloatPose, floatPictures, floatPose } from "./float-poses.ts";

interface StateOptions {
  readonly textMm: number;
}

const marginMm = 1;
const hookMm = 2.8;
const plummetMm = 4;
/** Height of the picture in its panel, from the frame to the bed's hatching. */
const pictureMm = 46;
const surfaceMm = 11;
const bedMm = pictureMm - bedThicknessMm - 0.5;

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
  const title = words(`drawing.state.${picture}.title`);
  const key = `drawing.state.${picture}.${pose.caption ?? "caption"}` as WordKey;
  const glued = Object.entries(pose.values).map(([gap, value]) => [gap, together(value)]);
  const room = widthMm - 2 * marginMm;
  const head = layLabel([{ text: title, face: "bold" }], room, textMm, measure);
  const caption = layLabel([{ text: words(key, Object.fromEntries(glued)) }], room, textMm, measure);
  const headTop = pictureMm + 1;
  return {
    widthMm,
    heightMm: headTop + head.heightMm + caption.heightMm + 1,
    title,
    description: `${title}. ${words(key, pose.values)}`,
    items: [
      ...panel(solved, depth, pose, widthMm, textMm, kit),
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
  const panels = (options.pictures ?? floatPictures).flatMap(
    (picture) => drawFloatState(picture, solved, depth, widthMm, kit, options) ?? [],
  );
  const items: Item[] = [];
  let top = 0;
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
    description: panels.map(({ description }) => description).join(" "),
    items,
  };
}

function panel(
  solved: SolvedRig,
  depth: SolvedDepth,
  pose: FloatPose,
  widthMm: number,
  textMm: number,
  { words, measure }: DrawingKit,
): Item[] {
  const { float } = solved.rig;
  const scale = Math.min(0.5, 19 / lengthMm(float));
  const widest = Math.max(...float.profile.map((p) => p.diameterMm));
  const flatMm = lengthMm(float) * scale * Math.sin((pose.leanDegrees * Math.PI) / 180);
  const water = point(widthMm * (0.5 - pose.baitAside / 2) + flatMm / 2, surfaceMm);
  const tipTop = pose.tipMm === null ? surfaceMm + 2.2 : surfaceMm - pose.tipMm * scale;
  const foot = point(water.xMm, tipTop + lengthMm(float) * scale);
  const body = parts.floatBody.draw({
    ...floatLook(float),
    at: foot,
    lengthScale: scale,
    widthScale: Math.max(scale, 2 / widest),
  });
  const eyeMm = float.attachment === "top and bottom" ? 0 : floatEyeRadiusMm;
  const eye = rotatedPoint(point(foot.xMm, foot.yMm + eyeMm), pose.leanDegrees, water);
  const items: Item[] = [
    rectangle(0, surfaceMm, widthMm, bedMm - surfaceMm, { fill: "water" }),
    ...parts.bed.draw({ leftMm: 0, rightMm: widthMm, yMm: bedMm }),
    ...parts.waterSurface.draw({ leftMm: 0, rightMm: widthMm, yMm: surfaceMm }),
    ...lineAndEnd(pose, depth, eye, widthMm),
    ...rotated(body, pose.leanDegrees, water),
  ];
  if (pose.tipMm === null) items.push(...parts.ripples.draw({ at: water }));
  if (pose.moving) items.push(...movement(pose.moving, water));
  if (pose.drift) {
    const said = words(`drawing.drift.${pose.drift}`);
    const right = 2 + measure(said, textMm, "regular");
    items.push(
      text(point(2, surfaceMm - 4.5), said, textMm, { ink: "soft" }),
      ...parts.flowArrow.draw({ from: point(right + 1, surfaceMm - 5.5), lengthMm: 7 }),
    );
  }
  return items;
}

/** An arrow beside the float for where it is going. */
function movement(moving: NonNullable<FloatPose["moving"]>, { xMm, yMm }: Point): Item[] {
  const stroke = { ...bold, ink: "accent" } as const;
  if (moving === "right") return arrow(point(xMm + 4, yMm - 3.5), point(xMm + 12, yMm - 3.5), stroke, 2.6);
  const [from, to] = moving === "down" ? [yMm - 8, yMm - 1] : [yMm + 0.5, yMm - 7];
  return arrow(point(xMm + 6.5, from), point(xMm + 6.5, to), stroke, 2.6);
}

/** The line below the float, with what is at its end and the lowest shot. */
function lineAndEnd(pose: FloatPose, depth: SolvedDepth, eye: Point, widthMm: number): Item[] {
  const stroke = strandStrokes["main line"];
  const baitX = widthMm * (0.5 + pose.baitAside / 2);
  const lowest = depth.lineShot[0];
  const radiusMm = lowest ? Math.min(1.2, Math.max(0.7, lowest.diameterMm * 0.3)) : 0;
  const shotAt = (at: Point) => (lowest ? parts.shot.draw({ at, radiusMm }) : []);
  switch (pose.line) {
    case "hanging": {
      const bend = point(baitX, bedMm - 0.3);
      const top = point(baitX, bend.yMm - hookMm);
      const shot = between(top, eye, 0.25);
      return [polyline([eye, top], stroke), ...shotAt(shot), ...parts.hook.draw({ bend, heightMm: hookMm })];
    }
    case "lifted": {
      const bend = point(baitX + 4, bedMm - 3.5);
      const hookTop = point(bend.xMm, bend.yMm - hookMm);
      const shot = point(baitX + 1.2, bedMm - 7.5);
      const slack = curve(eye, point(eye.xMm - 2.5, (eye.yMm + shot.yMm) / 2), shot);
      return [
        { kind: "path", steps: slack, stroke },
        polyline([shot, hookTop], stroke),
        ...shotAt(shot),
        ...parts.hook.draw({ bend, heightMm: hookMm }),
      ];
    }
    case "on the bed": {
      const touch = point(between(point(eye.xMm, 0), point(baitX, 0), 0.5).xMm, bedMm - 0.4);
      const bend = point(baitX, bedMm - 0.3);
      const hookTop = point(baitX + hookMm, bedMm - 0.4);
      return [
        polyline([eye, touch, hookTop], stroke),
        ...shotAt(point(touch.xMm - 0.4, bedMm - radiusMm)),
        ...rotated(mirrored(parts.hook.draw({ bend, heightMm: hookMm }), bend.xMm), 90, bend),
      ];
    }
    case "plummet hanging":
    case "plummet standing": {
      const foot = point(baitX, bedMm - (pose.line === "plummet hanging" ? 5 : 0.3));
      return [
        polyline([eye, point(baitX, foot.yMm - plummetMm)], stroke),
        ...parts.plummet.draw({ at: foot, heightMm: plummetMm }),
      ];
    }
    case "plummet slack": {
      const foot = point(baitX, bedMm - 0.3);
      const top = point(baitX, foot.yMm - plummetMm);
      const slack = curve(eye, point(eye.xMm - 3, bedMm - 3), top);
      return [
        { kind: "path", steps: slack, stroke },
        ...parts.plummet.draw({ at: foot, heightMm: plummetMm }),
      ];
    }
  }
}

function between(a: Point, b: Point, share: number): Point {
  return point(a.xMm + (b.xMm - a.xMm) * share, a.yMm + (b.yMm - a.yMm) * share);
}

/** A slack line from one point to another, drawn towards a third. */
function curve(from: Point, towards: Point, to: Point): PathStep[] {
  const a = between(from, towards, 2 / 3);
  const b = between(to, towards, 2 / 3);
  return [
    ["M", from.xMm, from.yMm],
    ["C", a.xMm, a.yMm, b.xMm, b.yMm, to.xMm, to.yMm],
  ];
}
