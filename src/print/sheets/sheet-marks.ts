import type { Item, PathItem, PathStep } from "../../drawing/model.ts";

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

/** Radius of a card's corners [mm]. Source: ISO/IEC 7810:2019, ID-1: 3.18 mm ± 0.30 mm. */
const cornerRadiusMm = 3.18;
/** How far the handles of a cubic curve that stands for a quarter of a circle reach, of its radius. */
const quarterHandle = (4 / 3) * Math.tan(Math.PI / 8);

/** A quarter of a circle in each corner of each card, to be cut along: sharp corners prick the film. */
export function roundedCorners(cards: readonly MarkedCard[]): Item[] {
  const handleMm = cornerRadiusMm * (1 - quarterHandle);
  return cards.map(({ xMm, yMm, widthMm, heightMm }) => {
    const steps: PathStep[] = [];
    for (const [x, inX] of [
      [xMm, 1],
      [xMm + widthMm, -1],
    ] as const) {
      for (const [y, inY] of [
        [yMm, 1],
        [yMm + heightMm, -1],
      ] as const) {
        const [across, down] = [x + inX * cornerRadiusMm, y + inY * cornerRadiusMm];
        steps.push(["M", across, y], ["C", x + inX * handleMm, y, x, y + inY * handleMm, x, down]);
      }
    }
    return lines(steps, cropMark.strokeMm);
  });
}

/** Arms of the crosses where cards meet edge to edge [mm]; they stay in the white that cards keep along their edges. */
const crossArmMm = 3;

/**
 * A cross at every corner of cards that lie edge to edge, once where corners meet.
 *
 * @param bar middle of a check bar that marks the cut where it lies; a cross would run through its words
 */
export function cornerMarks(
  cards: readonly MarkedCard[],
  bar?: { readonly xMm: number; readonly yMm: number },
): Item[] {
  const corners = new Map<string, readonly [number, number]>();
  for (const { xMm, yMm, widthMm, heightMm } of cards) {
    for (const x of [xMm, xMm + widthMm]) {
      for (const y of [yMm, yMm + heightMm]) corners.set(cornerKey(x, y), [x, y]);
    }
  }
  if (bar) corners.delete(cornerKey(bar.xMm, bar.yMm));
  return [...corners.values()].map(([x, y]) =>
    lines(
      [
        ["M", x - crossArmMm, y],
        ["L", x + crossArmMm, y],
        ["M", x, y - crossArmMm],
        ["L", x, y + crossArmMm],
      ],
      cropMark.strokeMm,
    ),
  );
}

function cornerKey(xMm: number, yMm: number): string {
  return `${xMm.toFixed(3)} ${yMm.toFixed(3)}`;
}

/** Dashed lines at both ends of the fold in the middle of each card, outside the card or, edge to edge, inside it. */
export function foldMarks(cards: readonly MarkedCard[], inside: boolean): Item[] {
  const { offMm, lengthMm, strokeMm } = cropMark;
  const [from, to] = inside ? [-crossArmMm, 0] : [offMm, offMm + lengthMm];
  return cards.map(({ xMm, yMm, widthMm, heightMm }) => {
    const x = xMm + widthMm / 2;
    const steps: PathStep[] = [
      ["M", x, yMm - to],
      ["L", x, yMm - from],
      ["M", x, yMm + heightMm + from],
      ["L", x, yMm + heightMm + to],
    ];
    return lines(steps, strokeMm, [0.5, 0.3]);
  });
}

const checkBarLengthMm = 100;
export const checkBarHeightMm = 4;

/** A bar of exactly 100 mm along `yMm`, its middle at `xMm`, with a tick every 10 mm. */
export function checkBar(xMm: number, yMm: number, ticks: "up" | "down"): Item[] {
  const way = ticks === "up" ? -1 : 1;
  const left = xMm - checkBarLengthMm / 2;
  const steps: PathStep[] = [
    ["M", left, yMm],
    ["L", left + checkBarLengthMm, yMm],
  ];
  for (let at = 0; at <= checkBarLengthMm; at += 10) {
    const tick = at === 0 || at === checkBarLengthMm ? checkBarHeightMm : at === 50 ? 2.5 : 1.5;
    steps.push(["M", left + at, yMm], ["L", left + at, yMm + way * tick]);
  }
  return [lines(steps, 0.25)];
}
