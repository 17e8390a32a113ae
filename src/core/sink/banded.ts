/** Entries kept left of the diagonal, and the width of a row of the band with the diagonal itself. */
const reach = 5;
export const bandWidth = reach + 1;

/**
 * Solves a symmetric banded system in place by `L·D·Lᵀ` without exchanging rows.
 *
 * @param band row i holds `A[i][i − k]` at `bandWidth · i + k`; destroyed
 * @param right the right-hand side, replaced by the solution
 */
export function solveBanded(band: Float64Array, right: Float64Array, size: number): void {
  for (let i = 0; i < size; i++) {
    const row = bandWidth * i;
    const first = i < reach ? 0 : i - reach;
    for (let j = first; j < i; j++) {
      const other = bandWidth * j;
      let sum = band[row + i - j]!;
      for (let k = j - reach > first ? j - reach : first; k < j; k++) {
        sum -= band[row + i - k]! * band[other + j - k]!;
      }
      band[row + i - j] = sum;
    }
    let pivot = band[row]!;
    let value = right[i]!;
    for (let j = first; j < i; j++) {
      const below = band[row + i - j]!;
      const scaled = below / band[bandWidth * j]!;
      pivot -= below * scaled;
      band[row + i - j] = scaled;
      value -= scaled * right[j]!;
    }
    band[row] = pivot;
    right[i] = value;
  }
  for (let i = size - 1; i >= 0; i--) {
    let value = right[i]! / band[bandWidth * i]!;
    const last = i + reach < size ? i + reach : size - 1;
    for (let j = i + 1; j <= last; j++) value -= band[bandWidth * j + j - i]! * right[j]!;
    right[i] = value;
  }
}
