/**
 * A power that comes out the same, to the last digit, on all versions of the engine that the tool runs on: how `**`
 * rounds is theirs to choose, and sums of a falling chain make hundredths of a second of it. `** 2` is exact on all.
 *
 * @param base not less than 0
 */
export function power(base: number, exponent: number): number {
  return Math.exp(exponent * Math.log(base));
}

export function cube(base: number): number {
  return base * base * base;
}
