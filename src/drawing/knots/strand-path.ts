import { entry } from "../../core/lists.ts";
import type { Coil, Doubled, KnotPoint, PathPart } from "../../model/knot-picture.ts";
import { curveThrough, directionAt, marksOf, type Place, withoutRepeats } from "../curve.ts";

/** Control points of a strand, and from which of them on it is the tag end. */
interface StrandPath {
  readonly points: readonly Place[];
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
  let tagFrom: number | undefined;
  for (const part of parts) {
    if (part === "tag") tagFrom = Math.max(0, points.length - 1);
    else points.push(...partPoints(part));
  }
  return tagFrom === undefined ? { points } : { points, tagFrom };
}

function partPoints(part: Exclude<PathPart, "tag">): Place[] {
  if ("coil" in part) return coilPoints(part.coil);
  if ("doubled" in part) return doubledPoints(part.doubled);
  return [place(part)];
}

/** A helix seen from the side: `r·cos φ` across the axis, `sin φ` above the paper. */
function coilPoints({ from, to, turns, radius, start, first }: Coil): Place[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy) || 1;
  // Across the axis, towards the top of the picture, or the left where the axis is upright.
  const turn = dx > 0 || (dx === 0 && dy < 0) ? 1 : -1;
  const across = { x: (turn * dy) / length, y: (-turn * dx) / length };
  const side = start === "top" ? radius : -radius;
  const front = first === "front" ? coilHeight : -coilHeight;
  const count = Math.round(turns * pointsPerTurn);
  return Array.from({ length: count + 1 }, (_, i) => {
    const phase = (2 * Math.PI * i) / pointsPerTurn;
    const out = side * Math.cos(phase);
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
