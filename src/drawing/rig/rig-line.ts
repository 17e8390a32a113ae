import { entry, last } from "../../core/lists.ts";
import { cube } from "../../core/power.ts";
import { rubbersOn } from "../float/rubbers-on.ts";
import { curveTo, type Point, point, polyline } from "../items.ts";
import type { Item, PathStep } from "../model.ts";
import { eyeAlong } from "../parts/hook.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import type { PlacedMark } from "./rig-places.ts";
import type { RigPlan } from "./rig-plan.ts";

/** Where the line meets a mark: a hook at its eye, what lies on the bed just above it. */
function linePoint(plan: RigPlan, mark: PlacedMark): Point {
  const { at, kind, lying } = mark;
  if (kind === "hook" && !lying)
    return eyeAlong({ bend: at, heightMm: plan.hookHeightMm }, entry(plan.marks, 1).at);
  if (kind === "hook") {
    const shank = plan.liesTo === "left" ? plan.hookHeightMm : -plan.hookHeightMm;
    return point(at.xMm + shank, plan.bedMm - 0.4);
  }
  return lying || kind === "touch" ? point(at.xMm, plan.bedMm - 0.4) : at;
}

const curvePieces = 6;

/** The line through the marks, from the hook up; between hanging marks it follows the rig's lean. */
function linePoints(plan: RigPlan, marks: readonly PlacedMark[]): Point[] {
  return marks.flatMap((upper, i) => {
    const lower = marks[i - 1];
    const to = linePoint(plan, upper);
    if (!lower || lower.lying || lower.kind === "hook") return [to];
    const from = linePoint(plan, lower);
    return Array.from({ length: curvePieces }, (_, piece) => {
      const share = (piece + 1) / curvePieces;
      const fromHookMm = lower.fromHookMm + share * (upper.fromHookMm - lower.fromHookMm);
      return point(plan.floatAt.xMm + plan.lean(fromHookMm), from.yMm + share * (to.yMm - from.yMm));
    });
  });
}

/** Hook length and main line below the float, each in its strand. */
export function lineBelowFloat(plan: RigPlan): Item[] {
  const loop = plan.marks.findIndex((mark) => mark.kind === "loop");
  const hookLength = linePoints(plan, plan.marks.slice(0, loop + 1));
  const mainLine = linePoints(plan, plan.marks.slice(loop));
  return [
    polyline(hookLength, strandStrokes["hook length"]),
    polyline(mainLine, strandStrokes["main line"]),
    ...plan.breaks.flatMap((at) => parts.lineBreak.draw({ at })),
  ];
}

/** The line from the float to the rod, with what sits on it. */
export function lineToRod(plan: RigPlan): Item[] {
  switch (plan.float.attachment) {
    case "bottom":
      return fromEye(plan, false);
    case "sliding":
      return fromEye(plan, true);
    case "top and bottom":
      return alongFloat(plan);
  }
}

/** Control points of the sunk line that leaves an eye for the rod. */
function rodCurve(plan: RigPlan): [Point, Point, Point, Point] {
  const eye = last(plan.marks).at;
  const x = eye.xMm;
  const end = point(0, plan.surfaceMm + 1.5);
  return [eye, point(0.62 * x, eye.yMm), point(0.3 * x, eye.yMm - 0.2 * (eye.yMm - end.yMm)), end];
}

function curvePoint([a, b, c, d]: readonly [Point, Point, Point, Point], t: number): Point {
  const mix = (p: number, q: number, r: number, s: number) =>
    cube(1 - t) * p + 3 * (1 - t) ** 2 * t * q + 3 * (1 - t) * t ** 2 * r + cube(t) * s;
  return point(mix(a.xMm, b.xMm, c.xMm, d.xMm), mix(a.yMm, b.yMm, c.yMm, d.yMm));
}

/** The point of a curve that is this far from its start, along it. */
function curveAt(curve: readonly [Point, Point, Point, Point], alongMm: number): Point {
  const pieces = 200;
  let before = curve[0];
  let length = 0;
  for (let i = 1; i <= pieces; i += 1) {
    const here = curvePoint(curve, i / pieces);
    length += Math.hypot(here.xMm - before.xMm, here.yMm - before.yMm);
    if (length >= alongMm) return here;
    before = here;
  }
  return before;
}

/** Middle of the eye to that of the stop knot, which rests on it. */
const stopKnotAboveEyeMm = 1.8;

function fromEye(plan: RigPlan, stopKnot: boolean): Item[] {
  const curve = rodCurve(plan);
  const [a, b, c, d] = curve;
  const steps: PathStep[] = [["M", a.xMm, a.yMm], curveTo(b, c, d)];
  const items: Item[] = [{ kind: "path", steps, stroke: strandStrokes["main line"] }];
  let along = last(plan.marks).radiusMm;
  for (const radiusMm of plan.lockAboveRadiiMm) {
    along += radiusMm + 0.1;
    items.push(...parts.shot.draw({ at: curveAt(curve, along), radiusMm }));
    along += radiusMm;
  }
  if (stopKnot) {
    // As it is fished: drawn down on to the float's eye.
    const at = curveAt(curve, stopKnotAboveEyeMm);
    const next = curveAt(curve, stopKnotAboveEyeMm + 0.2);
    const turnedDegrees = (Math.atan2(at.yMm - next.yMm, at.xMm - next.xMm) * 180) / Math.PI;
    items.push(...parts.stopKnot.draw({ at, turnedDegrees }));
  }
  return items;
}

/** Up the side of a float held at both ends, and off to the rod above the water. */
function alongFloat(plan: RigPlan): Item[] {
  const { line, rubbers } = rubbersOn({
    float: plan.float,
    foot: plan.floatAt,
    lengthScale: plan.floatLengthScale,
    widthScale: plan.floatWidthScale,
  });
  const rod = point(0, Math.max(0.3, plan.surfaceMm - 3));
  return [polyline([last(plan.marks).at, ...line.toReversed(), rod], strandStrokes["main line"]), ...rubbers];
}
