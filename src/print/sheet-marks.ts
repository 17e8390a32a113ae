import type { Item, PathItem, PathStep } from "../drawing/model.ts";

/** A card on a sheet, seen from the sheet's top left corner. */
export interface MarkedCard {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Crop marks: how far off the card they start, how long they are, how thick (0.25 pt, common practice). */
export const cropMark = { offMm: 1, lengthMm: 2, strokeMm: 0.0882 } as const;

function lines(steps: readonly PathStep[], widthMm: number, dashMm?: readonly number[]): PathItem {
  return { kind: "path", steps, stroke: { ink: "ink", widthMm, ...(dashMm && { dashMm }) } };
}

/** Two short lines at each corner of each card, in line with its edges. */
export function cropMarks(cards: readonly MarkedCard[]): Item[] {
  const { offMm, lengthMm, strokeMm } = cropMark;
  return cards.map(({ xMm, yMm, widthMm, heightMm }) => {
    const steps: PathStep[] = [];
    for (const [x, outX] of [
      [xMm, -1],
      [xMm + widthMm, 1],
    ] as const) {
      for (const [y, outY] of [
        [yMm, -1],
        [yMm + heightMm, 1],
      ] as const) {
        steps.push(["M", x + outX * offMm, y], ["L", x + outX * (offMm + lengthMm), y]);
        steps.push(["M", x, y + outY * offMm], ["L", x, y + outY * (offMm + lengthMm)]);
      }
    }
    return lines(steps, strokeMm);
  });
}

/** Dashed lines above and below the middle of each card that is folded there. */
export function foldMarks(cards: readonly MarkedCard[]): Item[] {
  const { offMm, lengthMm, strokeMm } = cropMark;
  return cards.map(({ xMm, yMm, widthMm, heightMm }) => {
    const x = xMm + widthMm / 2;
    const steps: PathStep[] = [
      ["M", x, yMm - offMm - lengthMm],
      ["L", x, yMm - offMm],
      ["M", x, yMm + heightMm + offMm],
      ["L", x, yMm + heightMm + offMm + lengthMm],
    ];
    return lines(steps, strokeMm, [0.5, 0.3]);
  });
}

export const checkBarLengthMm = 100;
export const checkBarHeightMm = 4;

/** A bar of exactly 100 mm with a tick every 10 mm, in the middle at `xMm`; it stands on `footMm`. */
export function checkBar(xMm: number, footMm: number): Item[] {
  const left = xMm - checkBarLengthMm / 2;
  const steps: PathStep[] = [
    ["M", left, footMm],
    ["L", left + checkBarLengthMm, footMm],
  ];
  for (let at = 0; at <= checkBarLengthMm; at += 10) {
    const tick = at === 0 || at === checkBarLengthMm ? checkBarHeightMm : at === 50 ? 2.5 : 1.5;
    steps.push(["M", left + at, footMm], ["L", left + at, footMm - tick]);
  }
  return [lines(steps, 0.25)];
}
