import { paired } from "../../core/lists.ts";

/** A label before it is placed: where its middle would best be, and how much room it takes. */
export interface WantedLabel {
  readonly atMm: number;
  readonly sizeMm: number;
}

/** Labels pushed together: the sum and count of what they want, so that they stand at its mean. */
interface Pool {
  sum: number;
  count: number;
}

/**
 * Places labels along one direction, in the order given, without overlap and inside the range, so that the sum of the
 * squared moves from where they want to be is least.
 *
 * With each label's fixed offset from the first taken away, order and spacing become "never falling", so this is
 * isotonic regression, solved exactly by pooling adjacent violators; cutting the answer off at both ends of
 * the range solves the bounded problem as well.
 * Source: Barlow, Bartholomew, Bremner and Brunk 1972, Statistical Inference under Order Restrictions.
 *
 * @param labels in their order along the direction [mm]
 * @param fromMm start of the range
 * @param toMm end of the range
 * @param gapMm least room between two labels
 * @returns the middles [mm], or undefined where they do not fit at all
 */
export function placeInOrder(
  labels: readonly WantedLabel[],
  fromMm: number,
  toMm: number,
  gapMm: number,
): number[] | undefined {
  let offsetMm = 0;
  const shifted = labels.map((label, i) => {
    const before = labels[i - 1];
    if (before) offsetMm = offsetMm + (before.sizeMm + label.sizeMm) / 2 + gapMm;
    return { label, offsetMm };
  });
  const lowest = fromMm + (labels[0]?.sizeMm ?? 0) / 2;
  const highest = toMm - (labels.at(-1)?.sizeMm ?? 0) / 2 - offsetMm;
  if (lowest > highest + 1e-9) return undefined;

  const pools: Pool[] = [];
  for (const one of shifted) {
    let pool: Pool = { sum: one.label.atMm - one.offsetMm, count: 1 };
    for (
      let last = pools.at(-1);
      last && last.sum / last.count >= pool.sum / pool.count;
      last = pools.at(-1)
    ) {
      pool = { sum: last.sum + pool.sum, count: last.count + pool.count };
      pools.pop();
    }
    pools.push(pool);
  }
  const places = pools.flatMap(({ sum, count }) => Array<number>(count).fill(sum / count));
  return paired(places, shifted).map(
    ([place, one]) => Math.min(highest, Math.max(lowest, place)) + one.offsetMm,
  );
}
