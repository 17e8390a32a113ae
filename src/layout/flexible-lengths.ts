import { sum } from "../core/lists.ts";

/** A box along a row or column. */
interface FlexItem {
  /** Its share of what is left; none: it keeps its length. */
  readonly grow: number | undefined;
  /** Its length before anything is shared out [mm]. */
  readonly startMm: number;
  readonly leastMm: number;
}

/**
 * Lengths of boxes that share out what the others leave.
 * Source: CSS Flexible Box Layout Module Level 1, section 9.7, where boxes only grow.
 */
export function flexibleLengths(items: readonly FlexItem[], roomMm: number): number[] {
  const lengths = items.map(({ leastMm }) => leastMm);
  let growing = items.flatMap(({ grow = 0 }, at) => (grow > 0 ? [at] : []));
  if (sum(lengths) >= roomMm) return lengths;
  while (growing.length > 0) {
    const shares = sum(growing.map((at) => items[at]?.grow ?? 0));
    const kept = sum(lengths.map((one, at) => (growing.includes(at) ? 0 : one)));
    const started = growing.reduce((sum, at) => sum + (items[at]?.startMm ?? 0), 0);
    const freeMm = (roomMm - kept - started) * Math.min(1, shares);
    const grown = growing.map((at) => {
      const { grow = 0, startMm = 0, leastMm = 0 } = items[at] ?? {};
      return { at, leastMm, lengthMm: startMm + (freeMm * grow) / shares };
    });
    const short = grown.filter(({ lengthMm, leastMm }) => lengthMm < leastMm);
    if (short.length === 0) {
      for (const { at, lengthMm } of grown) lengths[at] = lengthMm;
      return lengths;
    }
    growing = growing.filter((one) => !short.some(({ at }) => at === one));
  }
  return lengths;
}
