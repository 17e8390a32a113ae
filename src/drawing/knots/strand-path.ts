import { entry } from "../../core/lists.ts";
import type { Coil, Doubled, KnotPoint, PathPart } from "../../model/knot-picture.ts";
import { curveThrough, directionAt, marksOf, type Place, withoutRepeats } from "../curve.ts";

/** A turn of a coil that has been made whole: the strand is back on the side that it started on. */
export interface Round {
  /** Index into the strand's points. */
  readonly point: number;
  /** Which turn of its coil, from 1. */
  readonly count: number;
  /** The way out of the coil from there, of length 1. */
  readonly out: { readonly x: number; readonly y: number };
  /** How far apart the coil's turns lie. */
  readonly pitch: number;
}

/** Control points of a strand, its turns, and from which point on it is the tag end. */
interface StrandPath {
  readonly points: readonly Place[];
  readonly rounds: readonly Round[];
  /** Index into `points`; none where no tag end is shown. */
  readonly tagFrom?: number;
}

const pointsPerTurn = 8;

/** Height of a coil's front above its axis; far more than `heightApart` in `crossings.ts`. */
const coilHeight = 2;

export function place([x, y, height = 0]: KnotPoint): Place {
  return { x, y, height };
}

/** The control points of a strand as it is written in a knot file. */
export function strandPath(parts: readonly PathPart[]): StrandPath {
  const points: Place[] = [];
  const rounds: Round[] = [];
  let tagFrom: number | undefined;
  for (const part of parts) {
    if (part === "tag") {
      tagFrom = Math.max(0, points.length - 1);
      continue;
    }
    rounds.push(...roundsIn(part, points.length));
    points.push(...partPoints(part));
  }
  return { points, rounds, ...(tagFrom !== undefined && { tagFrom }) };
}

function partPoints(part: Exclude<PathPart, "tag">): Place[] {
  if ("coil" in part) return coilPoints(part.coil);
  if ("doubled" in part) return doubledPoints(part.doubled);
  return [place(part)];
}

/** The axis of a coil, and the way across it to the side on which the coil starts, of length 1. */
function axisOf({ from, to, start }: Coil) {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy) || 1;
  // Across the axis, towards the top of the picture, or the left where the axis is upright.
  const turn = (dx > 0 || (dx === 0 && dy < 0) ? 1 : -1) * (start === "top" ? 1 : -1);
  return { dx, dy, length, across: { x: (turn * dy) / length, y: (-turn * dx) / length } };
}

/** The whole turns of a part of a path, whose points begin at this one of the strand's; of a doubled line on its way out. */
function roundsIn(part: Exclude<PathPart, "tag">, firstPoint: number): Round[] {
  if ("coil" in part) return roundsOf(part.coil, firstPoint);
  if (!("doubled" in part)) return [];
  return part.doubled.along.flatMap((one, i, along) => {
    if (!("coil" in one)) return [];
    const before = along.slice(0, i).flatMap(partPoints).length;
    // Two strands and what is between them take the room of three.
    return roundsOf(one.coil, firstPoint + before).map((round) => ({ ...round, pitch: round.pitch / 3 }));
  });
}

/** The whole turns of a coil, whose points begin at this one of the strand's. */
function roundsOf(coil: Coil, firstPoint: number): Round[] {
  const { length, across: out } = axisOf(coil);
  return Array.from({ length: Math.floor(coil.turns) }, (_, i) => ({
    point: firstPoint + (i + 1) * pointsPerTurn,
    count: i + 1,
    out,
    pitch: length / coil.turns,
  }));
}

/** A helix seen from the side: `r·cos φ` across the axis, `sin φ` above the paper. */
function coilPoints(coil: Coil): Place[] {
  const { from, turns, radius, first } = coil;
  const { dx, dy, across } = axisOf(coil);
  const front = first === "front" ? coilHeight : -coilHeight;
  const count = Math.round(turns * pointsPerTurn);
  return Array.from({ length: count + 1 }, (_, i) => {
    const phase = (2 * Math.PI * i) / pointsPerTurn;
    const out = radius * Math.cos(phase);
    return {
      x: from[0] + (dx * i) / count + across.x * out,
      y: from[1] + (dy * i) / count + across.y * out,
      height: front * Math.sin(phase),
    };
  });
}

function doubledPoints({ gap, along, loop }: Doubled): Place[] {
  const spine = withoutRepeats(along.flatMap(partPoints));
  if (spine.length < 2) return [];
  const curve = curveThrough(spine);
  const beside = (offset: number) =>
    marksOf(curve).map((s, i): Place => {
      const ahead = directionAt(curve, s);
      const at = entry(spine, i);
      return { x: at.x + ahead.y * offset, y: at.y - ahead.x * offset, height: at.height };
    });
  return [...beside(gap / 2), ...loop.map(place), ...beside(-gap / 2).reverse()];
}
