import { entry, first, neighbours, paired, sum } from "../../core/lists.ts";
import type { SolvedShot } from "../../model/solved.ts";
import { type Point, point } from "../items.ts";
import type { Box } from "../kit.ts";
import { floatEyeRadiusMm } from "../parts/float-body.ts";
import { lineBreakHalfMm } from "../parts/line-break.ts";
import { type LineLean, type LineShape, upright } from "./current-shape.ts";
import { type DrawnStretch, type Stretch, scaleStretches } from "./line-scale.ts";

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

/** What is on the line, before it has a place on the drawing. */
export type Feature = Pick<PlacedMark, "kind" | "fromHookMm" | "shot" | "radiusMm">;

/** What may be drawn out of the scale of the line without a mark at its place, in the order that it is named in. */
export const untrueParts = ["hook length", "short gaps", "slant"] as const;
export type UntruePart = (typeof untrueParts)[number];

/** Where the line below the float and all that is on it are drawn. */
export interface LinePlaces {
  /** From the hook up to the float's eye. */
  readonly marks: readonly PlacedMark[];
  /** Middles of shortened stretches. */
  readonly breaks: readonly Point[];
  /** Empty water between hook and bed. */
  readonly clearance?: { readonly fromMm: number; readonly toMm: number; readonly broken: boolean };
  /** How far to the right of the float's eye the line is drawn, by its distance from the hook. */
  readonly lean: LineLean;
  /** Which way what lies on the bed points, from where the line meets it to the hook. */
  readonly liesTo: "left" | "right";
  readonly untrue: ReadonlySet<UntruePart>;
}

interface Frame {
  readonly box: Box;
  readonly floatAt: Point;
  readonly bedMm: number;
  readonly hookHeightMm: number;
}

/** Gap of bare line [mm] above which two marks are drawn apart. */
const apartMm = 20;
/** Between marks that touch. */
const touchingMm = 0.15;
/** What is further off than this from where the scale has it, is told [mm]. */
const seenMm = 0.1;

/** Line that is seen at least. */
export interface LeastLine {
  /** Between marks that stand apart [mm]. */
  readonly gapMm: number;
  /** Bare above the hook, for its strand to be told from the main line's [mm]. */
  readonly bareMm: number;
}

/** How close marks may stand, from where there is room to where there is little and shot are many. */
export const leastLines: readonly LeastLine[] = [
  { gapMm: 0.9, bareMm: 6.5 },
  { gapMm: 0.35, bareMm: 4 },
  { gapMm: touchingMm, bareMm: 3 },
  // Discs that overlap still show a run for what it is; its label has the count.
  { gapMm: -0.4, bareMm: 3 },
];

/**
 * How far a current may carry the line to the right: what labels leave free, but never less than one share of the width
 * nor more than another.
 */
const leanShares = { least: 0.16, most: 0.3 };
const labelsMm = 56;
/** The share of the width that a lying line may take up. */
const lyingShare = 0.42;
/** Bare line that is seen at least between a hook on the bed and where its line comes down. */
const bareLyingMm = 2;
/** Free room at the frame beside a hook on the bed. */
const edgeMm = 1.5;
/** Length of line [mm] by which its slant at the bed is judged. */
const slantOverMm = 50;
/** What must stay free left of a line that trails behind its float. */
export const leftFreeMm = 4;

/**
 * Places what is on the line, given from the hook up; undefined where there is too little room.
 *
 * @param lyingMm line on the bed, below 0 how far the hook is off it [mm]
 */
export function placeOnLine(
  features: readonly Feature[],
  lyingMm: number,
  shape: LineShape,
  { box, floatAt, bedMm, hookHeightMm }: Frame,
  least: LeastLine,
): LinePlaces | undefined {
  const eyeMm = floatAt.yMm + floatEyeRadiusMm;
  const lying = lyingMm > 0 ? features.filter((f) => f.fromHookMm < lyingMm) : [];
  const touch = touchAbove(lying, lyingMm);
  const hanging = [...(lying.length > 0 ? [touch] : []), ...features.slice(lying.length)];
  const clear = lyingMm < 0 ? [{ lengthMm: -lyingMm, leastMm: 3, leastBrokenMm: 4 }] : [];
  const stretches = stretchesBetween(hanging, shape, hookHeightMm, least);
  const scaled = scaleStretches([...clear, ...stretches], bedMm - eyeMm);
  if (!scaled) return undefined;
  const leftMm = lying.length > 0 ? hookHeightMm + bareLyingMm + edgeMm : leftFreeMm;
  const { lean, isShrunk } = drawnLean(
    shape.lean,
    hanging,
    scaled.scale,
    leanRoomMm(box),
    floatAt.xMm - leftMm,
  );

  const clearMm = clear.length > 0 ? first(scaled.drawn).drawnMm : 0;
  const { marks, breaks } = hungMarks(hanging, scaled.drawn.slice(clear.length), {
    foot: point(floatAt.xMm, bedMm - clearMm),
    lean,
    hookHeightMm,
  });

  const touchAt = point(floatAt.xMm + lean(lyingMm), bedMm);
  // A line that comes down to the bed slanting to the left goes on to the left, where there is room.
  const slantsLeft = lean(lyingMm) < lean(lyingMm + slantOverMm);
  const lay = (roomMm: number) => layRun(lying, touch, scaled.scale, hookHeightMm, least, roomMm);
  const left = slantsLeft ? lay(touchAt.xMm - edgeMm) : undefined;
  const run = left ?? lay(lyingShare * box.widthMm);
  if (!run) return undefined;
  const lyingMarks = run.map((one) => laidMark(one, touchAt, left ? -1 : 1));
  const told = [
    ...paired(scaled.drawn, [...clear, ...stretches]).map(([one, { lengthMm }], i): DrawnLine => {
      const at = i - clear.length;
      const isHook = at >= 0 && isHookLength(entry(hanging, at), entry(hanging, at + 1));
      return { ...one, lengthMm, isHook };
    }),
    ...run,
  ];
  return {
    untrue: untrueOf(told, scaled.scale, isShrunk),
    marks: [...lyingMarks, ...marks],
    breaks,
    lean,
    liesTo: left ? "left" : "right",
    ...(clear.length > 0 && {
      clearance: { fromMm: bedMm - clearMm, toMm: bedMm, broken: first(scaled.drawn).broken },
    }),
  };
}

/** Nearer to where the line comes down than this, a mark on the bed is drawn there [mm]. */
const atFootMm = 10;

/** Where the line meets the bed; what hangs keeps clear of a mark that lies just there. */
function touchAbove(lying: readonly Feature[], lyingMm: number): Feature {
  const nearest = lying.at(-1);
  const isAtFoot = nearest && lyingMm - nearest.fromHookMm < atFootMm;
  return { kind: "touch", fromHookMm: lyingMm, radiusMm: isAtFoot ? 2 * nearest.radiusMm : 0 };
}

/** A stretch of line as it is drawn and as it is. */
interface DrawnLine extends DrawnStretch {
  readonly lengthMm: number;
  readonly isHook: boolean;
}

/** What is out of scale; a stretch that is shortened has its mark in the picture. */
function untrueOf(lines: readonly DrawnLine[], scale: number, isShrunk: boolean): Set<UntruePart> {
  const off = lines.filter(
    ({ drawnMm, lengthMm, broken }) => !broken && Math.abs(drawnMm - lengthMm * scale) > seenMm,
  );
  return new Set([
    ...off.map(({ isHook }) => (isHook ? "hook length" : "short gaps")),
    ...(isShrunk ? (["slant"] as const) : []),
  ]);
}

/** What hangs, from its lowest mark up, and the middles of its shortened stretches. */
function hungMarks(
  hanging: readonly Feature[],
  drawn: readonly DrawnStretch[],
  { foot, lean, hookHeightMm }: { foot: Point; lean: LineLean; hookHeightMm: number },
): { marks: PlacedMark[]; breaks: Point[] } {
  const breaks: Point[] = [];
  let y = foot.yMm;
  const marks = hanging.map((feature, i): PlacedMark => {
    const below = drawn[i - 1];
    const lower = hanging[i - 1];
    if (below && lower) {
      if (below.broken) {
        const upMm = breakPlace(below, lower, feature, hookHeightMm);
        const share = upMm / below.drawnMm;
        const fromHookMm = lower.fromHookMm + share * (feature.fromHookMm - lower.fromHookMm);
        breaks.push(point(foot.xMm + lean(fromHookMm), y - upMm));
      }
      y -= below.drawnMm;
    }
    return { ...feature, at: point(foot.xMm + lean(feature.fromHookMm), y), lying: false };
  });
  return { marks, breaks };
}

/** A mark on the bed, to the right (1) or left (-1) of where its line comes down. */
function laidMark({ feature, alongMm }: LaidFeature, touchAt: Point, way: 1 | -1): PlacedMark {
  const raisedMm = Math.max(0.4, feature.kind === "shot" ? feature.radiusMm : 0);
  return { ...feature, at: point(touchAt.xMm + way * alongMm, touchAt.yMm - raisedMm), lying: true };
}

function leanRoomMm({ widthMm }: Box): number {
  return Math.min(leanShares.most * widthMm, Math.max(leanShares.least * widthMm, widthMm - labelsMm));
}

/** The line's lean to the scale of the drawing, or less where it would take the line out of its room. */
function drawnLean(
  lean: LineLean,
  hanging: readonly Feature[],
  scale: number,
  rightMm: number,
  leftMm: number,
): { lean: LineLean; isShrunk: boolean } {
  const offs = hanging.map(({ fromHookMm }) => lean(fromHookMm) * scale);
  const shrink = Math.max(1, Math.max(...offs) / rightMm, -Math.min(...offs) / leftMm);
  return { lean: (fromHookMm) => (lean(fromHookMm) * scale) / shrink, isShrunk: shrink > 1 };
}

/** Whether a stretch is bare hook length, down to the hook or to where it lies on the bed. */
function isHookLength(lower: Feature, upper: Feature): boolean {
  return lower.kind === "hook" || (lower.kind === "touch" && upper.kind === "loop");
}

function stretchesBetween(
  features: readonly Feature[],
  { upMm }: LineShape,
  hookHeightMm: number,
  { gapMm, bareMm }: LeastLine,
): Stretch[] {
  return neighbours(features).map(([lower, upper]) => {
    const lengthMm = upMm(upper.fromHookMm) - upMm(lower.fromHookMm);
    if (upper.kind === "touch" && lengthMm < atFootMm) return { lengthMm, leastMm: 0 };
    const ends = (lower.kind === "hook" ? hookHeightMm : lower.radiusMm) + upper.radiusMm;
    const apart = lengthMm > apartMm;
    if (isHookLength(lower, upper)) return { lengthMm, leastMm: ends + (apart ? bareMm : touchingMm) };
    const leastMm = ends + (apart ? gapMm : touchingMm);
    return { lengthMm, leastMm, leastBrokenMm: ends + 2 * lineBreakHalfMm + 1 };
  });
}

/** The middle of the bare line in a shortened stretch, from its lower end. */
function breakPlace(stretch: DrawnStretch, lower: Feature, upper: Feature, hookHeightMm: number): number {
  const start = lower.kind === "hook" ? hookHeightMm : lower.radiusMm;
  return (start + stretch.drawnMm - upper.radiusMm) / 2;
}

/** Something that lies on the bed, how far from where its line comes down, and the line towards there. */
interface LaidFeature extends DrawnLine {
  readonly feature: Feature;
  readonly alongMm: number;
}

/** What lies on the bed, from the hook inwards, with its distance from where the line meets the bed. */
function layRun(
  lying: readonly Feature[],
  touch: Feature,
  scale: number,
  hookHeightMm: number,
  least: LeastLine,
  roomMm: number,
): LaidFeature[] | undefined {
  if (lying.length === 0) return [];
  const between = stretchesBetween([...lying, touch], upright, hookHeightMm, least);
  const stretches = paired(between, lying).map(([stretch, lower]) =>
    lower.kind === "hook"
      ? { ...stretch, leastMm: Math.min(stretch.leastMm, hookHeightMm + bareLyingMm) }
      : stretch,
  );
  let lengths = stretches.map(({ lengthMm, leastMm }) => Math.max(leastMm, lengthMm * scale));
  if (sum(lengths) > roomMm) {
    const shrunk = scaleStretches(stretches, roomMm);
    if (!shrunk) return undefined;
    lengths = shrunk.drawn.map(({ drawnMm }) => drawnMm);
  }
  return lying.map((feature, i) => ({
    feature,
    alongMm: sum(lengths.slice(i)),
    drawnMm: entry(lengths, i),
    lengthMm: entry(stretches, i).lengthMm,
    broken: false,
    isHook: feature.kind === "hook",
  }));
}
