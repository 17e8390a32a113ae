import type { Item } from "../drawing/model.ts";

/** Clockwise, in degrees. */
export type QuarterTurn = 0 | 90 | 180 | 270;

/** Something laid out, put on a piece of paper: its top left corner after turning is at `xMm`, `yMm`. */
export interface Placed {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly items: readonly Item[];
  readonly xMm: number;
  readonly yMm: number;
  readonly turn: QuarterTurn;
  /** Enlarged by this factor; only of something that is not turned. */
  readonly scale?: number;
  /** Stands for all that its marks are made from, and for which of their links lead somewhere, where that is known. */
  readonly from?: string;
  /** Its place in the order of reading, where that is not the order of the paper. */
  readonly reading?: number;
}

/** One side of paper with what is printed on it. */
export interface PaperSide {
  readonly widthMm: number;
  readonly heightMm: number;
  /** How a viewer turns the side to show it the right way up. */
  readonly viewTurn: QuarterTurn;
  readonly parts: readonly Placed[];
}

interface Page {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly items: readonly Item[];
  readonly from?: string;
}

/** A page as a side of paper of its own size. */
export function asPaper(page: Page): PaperSide {
  const { widthMm, heightMm } = page;
  return { widthMm, heightMm, viewTurn: 0, parts: [placed(page, { xMm: 0, yMm: 0, turn: 0 })] };
}

/** Something laid out, put on paper, or put elsewhere; its marks are not asked for. */
export function placed<T extends Page>(page: T, at: Omit<Placed, keyof Page> & Partial<Page>): T & Placed {
  const told = { ...Object.getOwnPropertyDescriptors(page), ...Object.getOwnPropertyDescriptors(at) };
  return Object.defineProperties({} as T & Placed, told);
}

/** a b c d e f of `x' = a·x + c·y + e`, `y' = b·x + d·y + f` [mm]. */
export type Matrix = readonly [number, number, number, number, number, number];

/** Moves marks of a placed page to where it lies on the paper. */
export function placing({ xMm: x, yMm: y, widthMm: w, heightMm: h, turn, scale = 1 }: Placed): Matrix {
  switch (turn) {
    case 0:
      return [scale, 0, 0, scale, x, y];
    case 90:
      return [0, 1, -1, 0, x + h, y];
    case 180:
      return [-1, 0, 0, -1, x + w, y + h];
    case 270:
      return [0, -1, 1, 0, x, y + w];
  }
}

export function moved([a, b, c, d, e, f]: Matrix, xMm: number, yMm: number): { xMm: number; yMm: number } {
  return { xMm: a * xMm + c * yMm + e, yMm: b * xMm + d * yMm + f };
}
