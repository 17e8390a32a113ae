/**
 * Where a function crosses 0 between two places at which its signs differ: false position with halving of the stale
 * end (the Illinois rule), and the middle where that dawdles.
 *
 * @param atLow the function's values at the ends, where they are known already
 * @returns the place to within `within`; the end nearer 0 where the signs do not differ
 */
export function root(
  f: (x: number) => number,
  low: number,
  high: number,
  within: number,
  atLow = f(low),
  atHigh = f(high),
): number {
  let a = low;
  let b = high;
  let fa = atLow;
  let fb = atHigh;
  if (fa === 0) return a;
  if (fa * fb > 0) return Math.abs(fa) < Math.abs(fb) ? a : b;
  let side = 0;
  for (let i = 0; i < 100 && Math.abs(b - a) > within; i++) {
    const x = i % 4 === 3 ? (a + b) / 2 : (a * fb - b * fa) / (fb - fa);
    const fx = f(x);
    if (fx === 0) return x;
    if (fx * fb > 0) {
      b = x;
      fb = fx;
      if (side === -1) fa /= 2;
      side = -1;
    } else {
      a = x;
      fa = fx;
      if (side === 1) fb /= 2;
      side = 1;
    }
    if (Math.abs(fx) < 1e-12) return x;
  }
  return (a + b) / 2;
}
