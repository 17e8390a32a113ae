/**
 * A row of the band: the diagonal and the five entries left of it. The first rows are padding (ones on the diagonal),
 * so that no row needs to ask whether it has five before it.
 */
export const bandWidth = 6;
export const padding = 5;

/**
 * Index of a node's speed along x in the system; along y it is the next, the tension above it the one after. The top
 * moves along x only.
 */
export const column = (node: number) => padding + (node === 0 ? 0 : 3 * node - 2);

/**
 * Solves a symmetric banded system in place by `L·D·Lᵀ` without exchanging rows.
 *
 * @param band row i holds `A[i][i − k]` at `6i + k`; destroyed
 * @param right the right-hand side, replaced by the solution
 * @param rows padding included
 */
export function solveBanded(band: Float64Array, right: Float64Array, rows: number): void {
  for (let i = 0; i < padding; i++) {
    band[bandWidth * i] = 1;
    right[i] = 0;
  }
  for (let i = padding; i < rows; i++) {
    const at = bandWidth * i;
    const before1 = at - 6;
    const before2 = at - 12;
    const before3 = at - 18;
    const g5 = band[at + 5]!;
    const g4 = band[at + 4]! - g5 * band[at - 23]!;
    const g3 = band[at + 3]! - g5 * band[before3 + 2]! - g4 * band[before3 + 1]!;
    const g2 = band[at + 2]! - g5 * band[before2 + 3]! - g4 * band[before2 + 2]! - g3 * band[before2 + 1]!;
    const g1 =
      band[at + 1]! -
      g5 * band[before1 + 4]! -
      g4 * band[before1 + 3]! -
      g3 * band[before1 + 2]! -
      g2 * band[before1 + 1]!;
    // The diagonal holds 1/D once its row is done.
    const l1 = g1 * band[before1]!;
    const l2 = g2 * band[before2]!;
    const l3 = g3 * band[before3]!;
    const l4 = g4 * band[at - 24]!;
    const l5 = g5 * band[at - 30]!;
    band[at] = 1 / (band[at]! - g1 * l1 - g2 * l2 - g3 * l3 - g4 * l4 - g5 * l5);
    band[at + 1] = l1;
    band[at + 2] = l2;
    band[at + 3] = l3;
    band[at + 4] = l4;
    band[at + 5] = l5;
    right[i]! -=
      l1 * right[i - 1]! + l2 * right[i - 2]! + l3 * right[i - 3]! + l4 * right[i - 4]! + l5 * right[i - 5]!;
  }
  for (let i = padding; i < rows; i++) right[i]! *= band[bandWidth * i]!;
  for (let i = rows - 1; i >= padding; i--) {
    const at = bandWidth * i;
    const value = right[i]!;
    right[i - 1]! -= band[at + 1]! * value;
    right[i - 2]! -= band[at + 2]! * value;
    right[i - 3]! -= band[at + 3]! * value;
    right[i - 4]! -= band[at + 4]! * value;
    right[i - 5]! -= band[at + 5]! * value;
  }
}
