import { entry, first, last } from "../core/lists.ts";
import type { PathStep } from "./model.ts";

/** A place on a strand: across the paper and above it, both in millimetres (height in any unit). */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly height: number;
}

type Cubic = readonly [Place, Place, Place, Place];

/** A place on a curve with its distance from the start along the curve. */
export interface Sample extends Place {
  readonly s: number;
}

/** A smooth curve through control points, measured along its length. */
export interface Curve {
  readonly cubics: readonly Cubic[];
  readonly samples: readonly Sample[];
  readonly length: number;
  readonly closed: boolean;
}

const samplesPerCubic = 16;

const mix = (a: Place, b: Place, t: number): Place => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
  height: a.height + (b.height - a.height) * t,
});

const apart = (a: Place, b: Place) => Math.hypot(b.x - a.x, b.y - a.y);

/** The points without those that stand where the one before them does. */
export function withoutRepeats(points: readonly Place[]): Place[] {
  return points.filter((p, i) => i === 0 || apart(p, entry(points, i - 1)) > 1e-9);
}

/** Weighted sum of places. */
function blend(terms: readonly (readonly [number, Place])[]): Place {
  const sum = (of: (place: Place) => number) => terms.reduce((total, [w, p]) => total + w * of(p), 0);
  return { x: sum((p) => p.x), y: sum((p) => p.y), height: sum((p) => p.height) };
}

/**
 * The centripetal Catmull-Rom curve through the points, which has neither cusps nor loops between them, as cubic
 * Bézier pieces. Coincident neighbours count once; fewer than two points give a curve without length.
 *
 * Source: Yuksel, Schaefer and Keyser 2011, Parameterization and applications of Catmull-Rom curves,
 * Computer-Aided Design 43:747 (from memory).
 */
export function curveThrough(given: readonly Place[], closed = false): Curve {
  const points = withoutRepeats(given);
  const count = points.length;
  const pieces = closed ? count : Math.max(0, count - 1);
  const at = (i: number): Place => {
    if (closed) return entry(points, (i + count) % count);
    if (i < 0) return mix(entry(points, 1), first(points), 2);
    return i < count ? entry(points, i) : mix(entry(points, count - 2), last(points), 2);
  };
  const cubics = Array.from({ length: pieces }, (_, i): Cubic => {
    const [p0, p1, p2, p3] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    const [d1, d2, d3] = [apart(p0, p1), apart(p1, p2), apart(p2, p3)].map(Math.sqrt) as [
      number,
      number,
      number,
    ];
    const out = 3 * d1 * (d1 + d2);
    const back = 3 * d3 * (d3 + d2);
    return [
      p1,
      blend([
        [(d1 * d1) / out, p2],
        [(-d2 * d2) / out, p0],
        [(2 * d1 * d1 + 3 * d1 * d2 + d2 * d2) / out, p1],
      ]),
      blend([
        [(d3 * d3) / back, p1],
        [(-d2 * d2) / back, p3],
        [(2 * d3 * d3 + 3 * d3 * d2 + d2 * d2) / back, p2],
      ]),
      p2,
    ];
  });
  return measured(cubics, closed);
}

/** Distances along the curve of its control points. */
export function marksOf({ cubics, samples }: Curve): number[] {
  return [0, ...cubics.map((_, i) => entry(samples, (i + 1) * samplesPerCubic).s)];
}

function measured(cubics: readonly Cubic[], closed: boolean): Curve {
  const samples: Sample[] = cubics.length > 0 ? [{ ...first(cubics)[0], s: 0 }] : [];
  for (const cubic of cubics) {
    for (let i = 1; i <= samplesPerCubic; i++) {
      const place = onCubic(cubic, i / samplesPerCubic);
      const before = last(samples);
      const { x, y, height } = place;
      samples.push({ x, y, height, s: before.s + apart(before, place) });
    }
  }
  return { cubics, samples, length: samples[samples.length - 1]?.s ?? 0, closed };
}

/** The place where `split` would part a cubic, by the same sums. */
function onCubic([a, b, c, d]: Cubic, t: number): Place {
  return {
    x: between(a.x, b.x, c.x, d.x, t),
    y: between(a.y, b.y, c.y, d.y, t),
    height: between(a.height, b.height, c.height, d.height, t),
  };
}

function between(a: number, b: number, c: number, d: number, t: number): number {
  const ab = a + (b - a) * t;
  const bc = b + (c - b) * t;
  const cd = c + (d - c) * t;
  const abc = ab + (bc - ab) * t;
  const bcd = bc + (cd - bc) * t;
  return abc + (bcd - abc) * t;
}

/** De Casteljau: the two parts of a cubic either side of `t`. */
function split([a, b, c, d]: Cubic, t: number): [Cubic, Cubic] {
  const [ab, bc, cd] = [mix(a, b, t), mix(b, c, t), mix(c, d, t)];
  const [abc, bcd] = [mix(ab, bc, t), mix(bc, cd, t)];
  const middle = mix(abc, bcd, t);
  return [
    [a, ab, abc, middle],
    [middle, bcd, cd, d],
  ];
}

/** Which cubic a distance along the curve falls on, and where on it (0 to 1). */
function find(curve: Curve, s: number): { piece: number; t: number } {
  const { samples } = curve;
  let low = 0;
  let high = samples.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (entry(samples, middle).s <= s) low = middle;
    else high = middle;
  }
  const lowS = entry(samples, low).s;
  const span = entry(samples, high).s - lowS;
  const share = span > 0 ? Math.min(1, Math.max(0, (s - lowS) / span)) : 0;
  const along = (low + share) / samplesPerCubic;
  const piece = Math.min(curve.cubics.length - 1, Math.floor(along));
  return { piece, t: along - piece };
}

/** The place a distance along the curve. */
export function placeAt(curve: Curve, s: number): Place {
  const { piece, t } = find(curve, s);
  return onCubic(entry(curve.cubics, piece), t);
}

/** Unit vector along the curve. */
export function directionAt(curve: Curve, s: number): { x: number; y: number } {
  const step = Math.min(curve.length / 1000, 0.05);
  const a = placeAt(curve, Math.max(0, s - step));
  const b = placeAt(curve, Math.min(curve.length, s + step));
  const length = apart(a, b) || 1;
  return { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
}

/** The outline commands for the curve from one distance along it to another. */
export function slice(curve: Curve, from: number, to: number): PathStep[] {
  const start = find(curve, Math.max(0, from));
  const end = find(curve, Math.min(curve.length, to));
  const steps: PathStep[] = [];
  for (let piece = start.piece; piece <= end.piece; piece++) {
    let cubic = entry(curve.cubics, piece);
    let t = end.t;
    if (piece === start.piece) {
      cubic = split(cubic, start.t)[1];
      if (piece === end.piece) t = start.t < 1 ? (end.t - start.t) / (1 - start.t) : 0;
    }
    if (piece === end.piece) cubic = split(cubic, t)[0];
    if (steps.length === 0) steps.push(["M", cubic[0].x, cubic[0].y]);
    steps.push(["C", cubic[1].x, cubic[1].y, cubic[2].x, cubic[2].y, cubic[3].x, cubic[3].y]);
  }
  return steps;
}

/** The whole curve; a closed one is closed. */
export function wholePath(curve: Curve): PathStep[] {
  const steps = slice(curve, 0, curve.length);
  return curve.closed ? [...steps, ["Z"]] : steps;
}
