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
  const offsets: number[] = [];
  for (const [i, label] of labels.entries()) {
    const before = labels[i - 1];
    offsets.push(before ? offsets[i - 1]! + (before.sizeMm + label.sizeMm) / 2 + gapMm : 0);
  }
  const lowest = fromMm + (labels[0]?.sizeMm ?? 0) / 2;
  const highest = toMm - (labels.at(-1)?.sizeMm ?? 0) / 2 - (offsets.at(-1) ?? 0);
  if (lowest > highest + 1e-9) return undefined;

  const pools: Pool[] = [];
  for (const [i, label] of labels.entries()) {
    let pool: Pool = { sum: label.atMm - offsets[i]!, count: 1 };
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
  return places.map((place, i) => Math.min(highest, Math.max(lowest, place)) + offsets[i]!);
}
