import { type Answer, answer, noAnswer } from "../finding.ts";
import type { Float } from "../float/float.ts";
import { isPositive, isZeroOrMore, wrongMeasure } from "../flow/hanging-rig.ts";
import { entry, first, known, last, paired } from "../lists.ts";
import type { G, Mm, S, Share } from "../units.ts";
import { chainOfRig, type SinkingRig } from "./chain-of-rig.ts";
import { type ChainShape, letFall } from "./fall.ts";

/** How the rig lands: drawn out along the surface away from the float, or dropped in a heap beside it. */
export const landings = ["straight", "heap"] as const;
export type Landing = (typeof landings)[number];

/**
 * The landings that a rig can have. A sliding float lands on its highest shot and the line above them runs through its
 * eye, so it always sinks as from a heap; what hangs below those shot may be laid out, which moves its times by no more
 * than the sums are good for.
 */
export function landingsOf({ attachment }: Pick<Float, "attachment">): readonly Landing[] {
  return attachment === "sliding" ? ["heap"] : landings;
}

/** The line at one moment, at each of the places of `SinkingLine`. */
interface LineMoment {
  readonly timeS: S;
  /** Away from where the float landed. */
  readonly xMm: readonly Mm[];
  readonly depthMm: readonly Mm[];
}

/** The line on its way down. */
export interface SinkingLine {
  /** From the surface above the float, by its eye and every shot, down to the hook at 0. */
  readonly fromHookMm: readonly Mm[];
  /** At even times from the landing, and when the bait is all but down. */
  readonly moments: readonly LineMoment[];
}

/** How a rig sinks. */
export interface Sink {
  readonly landing: Landing;
  /** Depth at which the bait ends: what hangs below the surface, or the bed. */
  readonly hangMm: Mm;
  /** Share of the hang that stands for the last tenth: the end itself is approached ever slower. */
  readonly lastShare: Share;
  /** Time for the bait to each tenth of the hang; the last is taken at `lastShare`. */
  readonly tenthsS: readonly S[];
  /** Time the bait spends in the upper, the middle and the lower third (to `lastShare`). */
  readonly thirdsS: readonly [number, number, number];
  /** The bait's way down in small steps of depth, for a curve. */
  readonly track: readonly { readonly timeS: S; readonly depthMm: Mm }[];
  readonly line: SinkingLine;
}

const lastTenthShare = 0.98;
/**
 * Pieces of line for each way of landing. The line bends the more sharply the less hangs on it, so pieces are shortest at
 * the hook. Line in a heap is drawn out along its own track: what carries shot may be longer there, but the pieces near
 * the hook are jerked straight and need to be short.
 */
const pieces: Readonly<Record<Landing, { leastMm: number; perRootG: number; mostMm: number }>> = {
  straight: { leastMm: 11, perRootG: 90, mostMm: 27 },
  heap: { leastMm: 15, perRootG: 120, mostMm: 72 },
};

/** Longest piece of line [mm] for the weight in water below it [g]. */
function longestPieceMm(weightBelowG: G, landing: Landing): number {
  const { leastMm, perRootG, mostMm } = pieces[landing];
  return Math.min(mostMm, Math.max(leastMm, perRootG * Math.sqrt(Math.max(0, weightBelowG))));
}

/**
 * Position error allowed in a step, as a share of the line's length. With these steps and pieces, half of both moves
 * every time of the rigs tried by less than 2 %.
 */
const stepErrorShare: Readonly<Record<Landing, number>> = { straight: 2e-4, heap: 0.7e-4 };

/** No stretch of line longer than this share of it is left without a place where the line is told. */
const toldShare = 1 / 16;

const longestFallS = 600;
/** Points of the track to each tenth. */
const trackPerTenth = 4;

/** Finer sums than usual, to see how far they have converged. */
export interface SinkFineness {
  /** Pieces of line and steps in time, as a share of the usual ones. */
  readonly pieceShare: Share;
  readonly stepShare: Share;
}

/**
 * How long a rig's bait takes to sink, from rest at the surface with the float lying beside.
 *
 * Drag of each shot as a lone ball, of the line across and along itself, of the bait by its measured fall or as a
 * ball; a float that slides is dragged towards the rig. Left out: wind, waves, shelter of shot close together, the
 * stiffness of the line and the splash.
 *
 * @returns times [s]; an error `rig-measure` where a measure is no positive number, `sink-never` where the bait does not
 * get down within ten minutes (it floats, or nothing pulls it down)
 */
export function sinkOfRig(rig: SinkingRig, landing: Landing, fineness?: SinkFineness): Answer<Sink> {
  const wrong = wrongSinkMeasure(rig);
  if (wrong !== undefined) return noAnswer("rig-measure", { measure: wrong });
  const hangMm = Math.min(rig.draughtMm + rig.floatToHookMm, rig.depthMm);
  const tenths = Array.from({ length: 10 }, (_, i) => hangMm * (i < 9 ? (i + 1) / 10 : lastTenthShare));
  const track = Array.from(
    { length: 10 * trackPerTenth },
    (_, i) => (hangMm * lastTenthShare * (i + 1)) / (10 * trackPerTenth),
  );
  const marks = [...tenths, ...track, hangMm / 3, (2 * hangMm) / 3].sort((a, b) => a - b);
  const { chain, fromHookMm } = chainOfRig(
    rig,
    (weightBelowG) => longestPieceMm(weightBelowG, landing) * (fineness?.pieceShare ?? 1),
  );
  const { passes, moments } = letFall(chain, marks, longestFallS, {
    drawnOut: landing === "straight" ? 1 : 0,
    // The error of a step goes with its square.
    stepErrorShare: stepErrorShare[landing] * (fineness?.stepShare ?? 1) ** 2,
  });
  if (passes.length < marks.length) return noAnswer("sink-never");
  const passOf = new Map(paired(marks, passes));
  const at = (depthMm: Mm) => known(passOf, depthMm);
  const third = at(hangMm / 3).timeS;
  const twoThirds = at((2 * hangMm) / 3).timeS;
  const lastS = at(last(tenths)).timeS;
  return answer({
    landing,
    hangMm,
    lastShare: lastTenthShare,
    tenthsS: tenths.map((depth) => at(depth).timeS),
    thirdsS: [third, twoThirds - third, lastS - twoThirds],
    track: [{ timeS: 0, depthMm: 0 }, ...track.map((depthMm) => ({ timeS: at(depthMm).timeS, depthMm }))],
    line: toldLine(rig, fromHookMm, [...moments.filter(({ timeS }) => timeS < lastS), at(last(tenths))]),
  });
}

/** The line at its ends, at all that sits on it, and often enough between for its curve. */
function toldLine(rig: SinkingRig, fromHookMm: readonly Mm[], shapes: readonly ChainShape[]): SinkingLine {
  const kept = new Set([rig.floatToHookMm, rig.hookLengthMm, 0, ...rig.shot.map((one) => one.fromHookMm)]);
  const longestMm = toldShare * first(fromHookMm);
  let lastKept = Number.POSITIVE_INFINITY;
  const told = fromHookMm.flatMap((from, at) => {
    const next = fromHookMm[at + 1] ?? from;
    if (!kept.has(from) && lastKept - next <= longestMm) return [];
    lastKept = from;
    return [at];
  });
  const those = (values: readonly Mm[]) => told.map((at) => entry(values, at));
  return {
    fromHookMm: those(fromHookMm),
    moments: shapes.map(({ timeS, xMm, yMm }) => ({ timeS, xMm: those(xMm), depthMm: those(yMm) })),
  };
}

function wrongSinkMeasure(rig: SinkingRig): string | undefined {
  if (rig.float !== "held") {
    if (!isPositive(rig.float.massG)) return "floatMassG";
    if (!isZeroOrMore(rig.float.dragAreaCm2)) return "floatDragAreaCm2";
  }
  return wrongMeasure(rig);
}
