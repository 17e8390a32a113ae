import { entry, last } from "../../core/lists.ts";
import { cube } from "../../core/power.ts";
import { circle, type Point, point, polygon, polyline, thin } from "../items.ts";
import type { Item } from "../model.ts";
import { pathLengthMm, pointAlong } from "./path.ts";

const pieces = 40;
const buttHalfMm = 0.75;
const tipHalfMm = 0.22;
/** The grip's share of a rod's length, and how far from its end a reel sits. */
const gripShare = 0.16;
const reelShare = 0.11;

/** A rod as it is held: where its end is, where it points there, how long it is, how far its tip is bent over. */
export interface HeldRod {
  readonly butt: Point;
  /** Upwards from level [degrees]. */
  readonly degrees: number;
  readonly lengthMm: number;
  /** Between the direction of the butt and that of the tip [degrees]. */
  readonly bendDegrees?: number;
}

/**
 * The middle of a rod from butt to tip. It bends more and more towards its tip, as a tapering rod does: the angle turned
 * through grows with the cube of the way along.
 */
export function rodPath({ butt, degrees, lengthMm, bendDegrees = 0 }: HeldRod): Point[] {
  const path = [butt];
  for (let i = 0; i < pieces; i += 1) {
    const turned = degrees - bendDegrees * cube((i + 0.5) / pieces);
    const angle = (turned * Math.PI) / 180;
    const { xMm, yMm } = last(path);
    const step = lengthMm / pieces;
    path.push(point(xMm + step * Math.cos(angle), yMm - step * Math.sin(angle)));
  }
  return path;
}

/** A straight rod between two places. */
export function rod(butt: Point, tip: Point, look?: RodLook): Item[] {
  return rodAlong(
    Array.from({ length: pieces + 1 }, (_, i) =>
      point(butt.xMm + ((tip.xMm - butt.xMm) * i) / pieces, butt.yMm + ((tip.yMm - butt.yMm) * i) / pieces),
    ),
    look,
  );
}

/** What is seen of a rod besides its blank. */
interface RodLook {
  readonly reel?: boolean;
}

/** A rod along its middle: grip, a blank that gets thinner to its tip, rings under it, a reel where it has one. */
export function rodAlong(path: readonly Point[], { reel = false }: RodLook = {}): Item[] {
  const lengthMm = pathLengthMm(path);
  const under = (share: number, offMm: number) => {
    const a = pointAlong(path, Math.max(0, share - 0.02) * lengthMm);
    const b = pointAlong(path, Math.min(1, share + 0.02) * lengthMm);
    const span = Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm) || 1;
    const at = pointAlong(path, share * lengthMm);
    return point(at.xMm - ((b.yMm - a.yMm) / span) * offMm, at.yMm + ((b.xMm - a.xMm) / span) * offMm);
  };
  const grip = [0, 0.5, 1].map((part) => pointAlong(path, part * gripShare * lengthMm));
  const rings = reel ? [0.34, 0.55, 0.73, 0.87] : [];
  const ringMm = Math.max(0.4, 0.011 * lengthMm);
  return [
    ...(reel ? reelUnder(under, lengthMm) : []),
    ...rings.map((share) => circle(under(share, ringMm + 0.4), ringMm, { stroke: thin })),
    polygon(tapered(path), "ink"),
    polyline(grip, { ink: "ink", widthMm: 2.1, cap: "round" }),
  ];
}

function reelUnder(under: (share: number, offMm: number) => Point, lengthMm: number): Item[] {
  const size = Math.max(1.1, 0.032 * lengthMm);
  return [
    polyline([under(reelShare, 0), under(reelShare, 1.6 * size)], { ink: "ink", widthMm: 0.6 }),
    circle(under(reelShare, 1.9 * size), size, { fill: "paper", stroke: { ink: "ink", widthMm: 0.6 } }),
    circle(under(reelShare, 1.9 * size), 0.35 * size, { fill: "ink" }),
  ];
}

function tapered(middle: readonly Point[]): Point[] {
  const count = middle.length - 1;
  const side = (sign: 1 | -1) =>
    middle.map((at, i) => {
      const [from, to] = [entry(middle, Math.max(0, i - 1)), entry(middle, Math.min(count, i + 1))];
      const length = Math.hypot(to.xMm - from.xMm, to.yMm - from.yMm) || 1;
      const half = (sign * (buttHalfMm + ((tipHalfMm - buttHalfMm) * i) / count)) / length;
      return point(at.xMm - (to.yMm - from.yMm) * half, at.yMm + (to.xMm - from.xMm) * half);
    });
  return [...side(1), ...side(-1).reverse()];
}
