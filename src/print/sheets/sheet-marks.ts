import type { Item, PathItem, PathStep } from "../../drawing/model.ts";
import { type CheckedBar, centimetreRuler } from "../../words/unit-systems.ts";

/** A place on a sheet, from its top left corner. */
export interface Place {
  readonly xMm: number;
  readonly yMm: number;
}

/** A card on a sheet, seen from the sheet's top left corner. */
export interface MarkedCard extends Place {
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

/** A cross along the cuts at every corner of cards that lie edge to edge, once where corners meet. */
export function cornerMarks(cards: readonly MarkedCard[]): Item[] {
  const corners = new Map<string, Place>();
  for (const { xMm, yMm, widthMm, heightMm } of cards) {
    for (const x of [xMm, xMm + widthMm]) {
      for (const y of [yMm, yMm + heightMm]) corners.set(cornerKey(x, y), { xMm: x, yMm: y });
    }
  }
  return [...corners.values()].map((at) => lines(cross(at, crossArmMm), cropMark.strokeMm));
}

function cross({ xMm, yMm }: Place, armMm: number): PathStep[] {
  return [
    ["M", xMm - armMm, yMm],
    ["L", xMm + armMm, yMm],
    ["M", xMm, yMm - armMm],
    ["L", xMm, yMm + armMm],
  ];
}

/**
 * Marks that show through a sheet held to the light: crosses on its front, rings on its back. A cross that stands in
 * its ring is off by less than half of what a card keeps free along its edges.
 */
const lightMark = { armMm: 2, ringMm: 1, strokeMm: 0.25 } as const;

export function lightCrosses(places: readonly Place[]): Item[] {
  return places.map((at) => lines(cross(at, lightMark.armMm), lightMark.strokeMm));
}

export function lightRings(places: readonly Place[]): Item[] {
  return places.map(({ xMm, yMm }) => ({
    kind: "circle",
    cxMm: xMm,
    cyMm: yMm,
    radiusMm: lightMark.ringMm,
    stroke: { ink: "ink", widthMm: lightMark.strokeMm },
  }));
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

export const checkBarHeightMm = 4;

/** How high the ticks of a bar stand [mm]: at its ends, in its middle, at its other parts. */
const tickMm = { end: checkBarHeightMm, middle: 2.5, part: 1.5 } as const;

/** A bar of exactly 100 mm or 4 in along `yMm`, its middle at `xMm`, with a tick upwards at each of its parts. */
export function checkBar(xMm: number, yMm: number, bar: CheckedBar = centimetreRuler.check): Item[] {
  const { lengthMm, parts } = bar;
  const leftMm = xMm - lengthMm / 2;
  const ticks = Array.from({ length: parts + 1 }, (_, part): PathStep[] => {
    const x = leftMm + (part * lengthMm) / parts;
    const tick = part % parts === 0 ? "end" : part === parts / 2 ? "middle" : "part";
    return [
      ["M", x, yMm],
      ["L", x, yMm - tickMm[tick]],
    ];
  });
  return [lines([["M", leftMm, yMm], ["L", leftMm + lengthMm, yMm], ...ticks.flat()], 0.25)];
}
