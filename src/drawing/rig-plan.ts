import { type Float, lengthMm } from "../core/float.ts";
import type { SolvedDepth, SolvedRig, SolvedShot } from "../solve/solved.ts";
import { type Point, point } from "./items.ts";
import type { Box } from "./kit.ts";
import { type DrawnStretch, scaleStretches } from "./line-scale.ts";
import { floatEyeRadiusMm } from "./parts/float-body.ts";
import { lineBreakHalfMm } from "./parts/line-break.ts";
import { leastShotRadiusMm } from "./parts/shot.ts";

/** Something on the line below the float, with its place on the drawing. */
export interface PlacedMark {
  readonly kind: "hook" | "shot" | "loop" | "touch" | "eye";
  readonly fromHookMm: number;
  readonly at: Point;
  readonly radiusMm: number;
  /** On the bed rather than hanging. */
  readonly lying: boolean;
  readonly shot?: SolvedShot;
}

/** Where everything of a rig stands on the drawing; marks and labels are painted from it. */
export interface RigPlan {
  readonly box: Box;
  readonly float: Float;
  readonly surfaceMm: number;
  readonly bedMm: number;
  /** The float's lower end. */
  readonly floatAt: Point;
  readonly floatLengthScale: number;
  readonly floatWidthScale: number;
  readonly hookHeightMm: number;
  /** From the hook up to the float's eye. */
  readonly marks: readonly PlacedMark[];
  /** Lock shot on the line that leaves the float towards the rod, from the eye on. */
  readonly lockAboveRadiiMm: readonly number[];
  /** Middles of shortened stretches. */
  readonly breaks: readonly Point[];
  /** Empty water between hook and bed. */
  readonly clearance?: { readonly fromMm: number; readonly toMm: number; readonly broken: boolean };
}

/** Rows of text that the plan leaves free above the surface and below the bed. */
export interface PlanRoom {
  readonly aboveMm: number;
  readonly belowMm: number;
}

type Feature = Pick<PlacedMark, "kind" | "fromHookMm" | "shot"> & { readonly radiusMm: number };

/** Largest share of the height that a float takes up. */
const floatShare = 0.27;
/** A float is drawn at least this wide at its widest, thinner ones being exaggerated. */
const leastFloatWidthMm = 2.4;
/** Gap of bare line [mm] above which two marks are drawn apart. */
const apartMm = 20;
const loopHalfMm = 1.5;
/** Bare line above the hook: enough for its strand to be told from the main line's. */
const leastBareMm = 5;

/** Places a rig made up for one depth; undefined where the box is too small for it. */
export function planRig(
  { rig }: SolvedRig,
  depth: SolvedDepth,
  box: Box,
  room: PlanRoom,
): RigPlan | undefined {
  const { float } = rig;
  const height = box.heightMm - room.aboveMm - room.belowMm;
  const floatLengthScale = Math.min(1, (floatShare * height) / lengthMm(float));
  const widest = Math.max(...float.profile.map((p) => p.diameterMm));
  const floatWidthScale = Math.max(floatLengthScale, leastFloatWidthMm / widest);
  const surfaceMm = room.aboveMm + Math.max(1, depth.tipShowingMm * floatLengthScale + 0.6);
  const bedMm = box.heightMm - room.belowMm;
  const x = Math.min(16, Math.max(float.attachment === "top and bottom" ? 7 : 9, 0.17 * box.widthMm));
  const floatAt = point(x, surfaceMm + depth.draughtMm * floatLengthScale);
  const hookHeightMm = Math.min(5, Math.max(2.8, 0.045 * box.heightMm));

  const { below, above } = lockSides(depth);
  for (let shotScale = Math.min(1, Math.max(0.45, box.heightMm / 150)); shotScale > 0.2; shotScale *= 0.85) {
    const features = lineFeatures(rig.hookLengthMm, depth, below, shotScale);
    const placed = placeFeatures(features, depth.overdepthMm, floatAt, bedMm, hookHeightMm, box);
    if (!placed) continue;
    return {
      box,
      float,
      surfaceMm,
      bedMm,
      floatAt,
      floatLengthScale,
      floatWidthScale,
      hookHeightMm,
      lockAboveRadiiMm: above.map((shot) => shotRadiusMm(shot, shotScale)),
      ...placed,
    };
  }
  return undefined;
}

function shotRadiusMm(shot: SolvedShot, scale: number): number {
  return Math.max(leastShotRadiusMm, (shot.diameterMm / 2) * scale);
}

/** Lock shot below and above the eye: in turn, heaviest first, so that the halves weigh about the same. */
function lockSides(depth: SolvedDepth) {
  const lock = depth.shot.filter((s) => s.role === "lock").sort((a, b) => b.massG - a.massG);
  const sides = { below: [] as SolvedShot[], above: [] as SolvedShot[] };
  let belowG = 0;
  let aboveG = 0;
  for (const shot of lock) {
    if (belowG <= aboveG) {
      sides.below.push(shot);
      belowG += shot.massG;
    } else {
      sides.above.push(shot);
      aboveG += shot.massG;
    }
  }
  return sides;
}

/** Everything on the line below the float, from the hook up. */
function lineFeatures(
  hookLengthMm: number,
  depth: SolvedDepth,
  lockBelow: readonly SolvedShot[],
  shotScale: number,
): Feature[] {
  const shotFeature = (shot: SolvedShot, fromHookMm: number): Feature => ({
    kind: "shot",
    fromHookMm,
    shot,
    radiusMm: shotRadiusMm(shot, shotScale),
  });
  const line: Feature[] = [
    { kind: "loop", fromHookMm: hookLengthMm, radiusMm: loopHalfMm },
    ...depth.shot.filter((s) => s.role !== "lock").map((s) => shotFeature(s, s.fromHookMm)),
  ];
  return [
    { kind: "hook", fromHookMm: 0, radiusMm: 0 },
    ...line.sort((a, b) => a.fromHookMm - b.fromHookMm),
    ...[...lockBelow].reverse().map((s) => shotFeature(s, depth.floatToHookMm)),
    { kind: "eye", fromHookMm: depth.floatToHookMm, radiusMm: floatEyeRadiusMm },
  ];
}

/** Room that two neighbours need from middle to middle. */
function leastApartMm(lower: Feature, upper: Feature, hookHeightMm: number): number {
  const ends = (lower.kind === "hook" ? hookHeightMm : lower.radiusMm) + upper.radiusMm;
  const long = upper.fromHookMm - lower.fromHookMm > apartMm;
  if (lower.kind === "hook" && long) return ends + leastBareMm;
  return ends + (long ? 0.9 : 0.15);
}

function stretchesBetween(features: readonly Feature[], hookHeightMm: number) {
  return features.slice(1).map((upper, i) => {
    const lower = features[i]!;
    return {
      lengthMm: upper.fromHookMm - lower.fromHookMm,
      leastMm: leastApartMm(lower, upper, hookHeightMm),
    };
  });
}

function placeFeatures(
  features: readonly Feature[],
  overdepthMm: number,
  floatAt: Point,
  bedMm: number,
  hookHeightMm: number,
  box: Box,
): Pick<RigPlan, "marks" | "breaks" | "clearance"> | undefined {
  const eyeMm = floatAt.yMm + floatEyeRadiusMm;
  const touch: Feature = { kind: "touch", fromHookMm: overdepthMm, radiusMm: 0 };
  const lying = overdepthMm > 0 ? features.filter((f) => f.fromHookMm < overdepthMm) : [];
  const hanging = [...(lying.length > 0 ? [touch] : []), ...features.slice(lying.length)];
  const clear = overdepthMm < 0 ? [{ lengthMm: -overdepthMm, leastMm: 3 }] : [];
  const stretches = [...clear, ...stretchesBetween(hanging, hookHeightMm)];
  const scaled = scaleStretches(stretches, bedMm - eyeMm);
  if (!scaled) return undefined;

  const breaks: Point[] = [];
  const marks: PlacedMark[] = [];
  const drawn = clear.length > 0 ? scaled.drawn.slice(1) : scaled.drawn;
  let y = bedMm - (clear.length > 0 ? scaled.drawn[0]!.drawnMm : 0);
  const hookMm = y;
  for (const [i, feature] of hanging.entries()) {
    const below = drawn[i - 1];
    if (below) {
      if (below.broken) breaks.push(point(floatAt.xMm, y - breakPlace(below, hanging[i - 1]!, hookHeightMm)));
      y -= below.drawnMm;
    }
    marks.push({ ...feature, at: point(floatAt.xMm, y), lying: false });
  }

  const run = layRun(lying, touch, scaled.scale, hookHeightMm, 0.42 * box.widthMm);
  if (!run) return undefined;
  const lyingMarks = run.map(({ feature, alongMm }) => ({
    ...feature,
    at: point(floatAt.xMm + alongMm, bedMm - Math.max(0.4, feature.kind === "shot" ? feature.radiusMm : 0)),
    lying: true,
  }));
  const clearance = clear[0] && { fromMm: hookMm, toMm: bedMm, broken: scaled.drawn[0]!.broken };
  return { marks: [...lyingMarks, ...marks], breaks, ...(clearance && { clearance }) };
}

/** The middle of the bare line in a shortened stretch, from its lower end. */
function breakPlace(stretch: DrawnStretch, lower: Feature, hookHeightMm: number): number {
  const start = lower.kind === "hook" ? hookHeightMm : lower.radiusMm;
  return Math.max((stretch.drawnMm + start) / 2, start + lineBreakHalfMm);
}

/** What lies on the bed, from the hook inwards, with its distance from where the line meets the bed. */
function layRun(
  lying: readonly Feature[],
  touch: Feature,
  scale: number,
  hookHeightMm: number,
  roomMm: number,
): { feature: Feature; alongMm: number }[] | undefined {
  if (lying.length === 0) return [];
  const stretches = stretchesBetween([...lying, touch], hookHeightMm);
  let lengths = stretches.map(({ lengthMm, leastMm }) => Math.max(leastMm, lengthMm * scale));
  if (lengths.reduce((a, b) => a + b, 0) > roomMm) {
    const shrunk = scaleStretches(stretches, roomMm);
    if (!shrunk) return undefined;
    lengths = shrunk.drawn.map(({ drawnMm }) => drawnMm);
  }
  return lying.map((feature, i) => ({
    feature,
    alongMm: lengths.slice(i).reduce((a, b) => a + b, 0),
  }));
}
