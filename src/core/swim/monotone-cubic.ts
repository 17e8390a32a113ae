import { entry, first, neighbours } from "../lists.ts";

interface Knot {
  readonly x: number;
  readonly y: number;
}

/** A piecewise cubic through points: what it needs besides them is its slope at each. */
export interface Cubic {
  readonly knots: readonly Knot[];
  readonly slopes: readonly number[];
}

/**
 * The monotone piecewise cubic through points: between two of them it neither rises above the higher nor falls below the
 * lower, and it turns round at points alone.
 *
 * Source: F. N. Fritsch & R. E. Carlson, "Monotone piecewise cubic interpolation", SIAM J. Numer. Anal. 17 (1980),
 * 238–246, with three-point differences to begin with and the circle of radius 3 as region. Where points turn round,
 * which theirs do not, the slope is nothing.
 *
 * @param knots two or more, their `x` rising
 */
export function monotoneCubic(knots: readonly Knot[]): Cubic {
  const secants = neighbours(knots).map(([a, b]) => (b.y - a.y) / (b.x - a.x));
  const slopes = knots.map((_, i) => {
    const [before, after] = [
      secants[i - 1] ?? first(secants),
      secants[i] ?? entry(secants, secants.length - 1),
    ];
    return before * after <= 0 ? 0 : (before + after) / 2;
  });
  for (const [i, secant] of secants.entries()) {
    const [a, b] = [entry(slopes, i), entry(slopes, i + 1)];
    const size = secant === 0 ? 0 : Math.sqrt(a * a + b * b) / Math.abs(secant);
    if (size <= 3) continue;
    slopes[i] = (3 * a) / size;
    slopes[i + 1] = (3 * b) / size;
  }
  return { knots, slopes };
}

/** Height of a piecewise cubic at a place between its first point and its last. */
export function heightOf({ knots, slopes }: Cubic, x: number): number {
  const after = knots.findIndex((knot, at) => at > 0 && knot.x >= x);
  const at = after < 0 ? knots.length - 1 : after;
  const [a, b] = [entry(knots, at - 1), entry(knots, at)];
  if (x === a.x) return a.y;
  if (x === b.x) return b.y;
  const step = b.x - a.x;
  const t = (x - a.x) / step;
  const rest = 1 - t;
  const byHeight = rest * rest * (1 + 2 * t) * a.y + t * t * (3 - 2 * t) * b.y;
  return byHeight + step * t * rest * (rest * entry(slopes, at - 1) - t * entry(slopes, at));
}
