/**
 * A row of a symmetric band: its entry on the diagonal and the five left of it, nearest first, and its right-hand side.
 * The entries right of the diagonal are those of later rows.
 */
export interface BandRow {
  /** The unknown stays as it is: the row and its column count as struck out. */
  held: boolean;
  diagonal: number;
  left1: number;
  left2: number;
  left3: number;
  left4: number;
  left5: number;
  /** After solving, the unknown. */
  right: number;
}

export function emptyRow(held = false): BandRow {
  return { held, diagonal: 0, left1: 0, left2: 0, left3: 0, left4: 0, left5: 0, right: 0 };
}

export function clearRow(row: BandRow): void {
  row.diagonal = 0;
  row.left1 = 0;
  row.left2 = 0;
  row.left3 = 0;
  row.left4 = 0;
  row.left5 = 0;
  row.right = 0;
}

/** Stands for the five rows that the first rows lack. */
const noRow: Readonly<BandRow> = emptyRow(true);

/**
 * Solves a symmetric banded system in place by `L·D·Lᵀ` without exchanging rows; the entries are destroyed.
 *
 * @param backwards the same rows from the last to the first
 */
export function solveBanded(rows: readonly BandRow[], backwards: readonly BandRow[]): void {
  eliminate(rows);
  substituteBack(backwards);
}

function eliminate(rows: readonly BandRow[]): void {
  let before1 = noRow;
  let before2 = noRow;
  let before3 = noRow;
  let before4 = noRow;
  let before5 = noRow;
  for (const row of rows) {
    if (row.held) {
      clearRow(row);
      row.diagonal = 1;
    } else {
      const g5 = before5.held ? 0 : row.left5;
      const g4 = before4.held ? 0 : row.left4 - g5 * before4.left1;
      const g3 = before3.held ? 0 : row.left3 - g5 * before3.left2 - g4 * before3.left1;
      const g2 = before2.held ? 0 : row.left2 - g5 * before2.left3 - g4 * before2.left2 - g3 * before2.left1;
      const g1 = before1.held
        ? 0
        : row.left1 - g5 * before1.left4 - g4 * before1.left3 - g3 * before1.left2 - g2 * before1.left1;
      // The diagonal holds 1/D once its row is done.
      const l1 = g1 * before1.diagonal;
      const l2 = g2 * before2.diagonal;
      const l3 = g3 * before3.diagonal;
      const l4 = g4 * before4.diagonal;
      const l5 = g5 * before5.diagonal;
      row.diagonal = 1 / (row.diagonal - g1 * l1 - g2 * l2 - g3 * l3 - g4 * l4 - g5 * l5);
      row.left1 = l1;
      row.left2 = l2;
      row.left3 = l3;
      row.left4 = l4;
      row.left5 = l5;
      row.right -=
        l1 * before1.right +
        l2 * before2.right +
        l3 * before3.right +
        l4 * before4.right +
        l5 * before5.right;
    }
    before5 = before4;
    before4 = before3;
    before3 = before2;
    before2 = before1;
    before1 = row;
  }
}

function substituteBack(rows: readonly BandRow[]): void {
  let after1 = noRow;
  let after2 = noRow;
  let after3 = noRow;
  let after4 = noRow;
  let after5 = noRow;
  for (const row of rows) {
    row.right =
      row.right * row.diagonal -
      after5.left5 * after5.right -
      after4.left4 * after4.right -
      after3.left3 * after3.right -
      after2.left2 * after2.right -
      after1.left1 * after1.right;
    after5 = after4;
    after4 = after3;
    after3 = after2;
    after2 = after1;
    after1 = row;
  }
}
