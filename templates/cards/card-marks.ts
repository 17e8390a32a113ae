import type { WaterKind } from "../../src/core/water/water.ts";
import type { Item, PathStep } from "../../src/drawing/model.ts";
import { mmPerPoint } from "../../src/markup/boxes.ts";
import type { Ruler } from "../../src/words/unit-systems.ts";

/**
 * Where a hole may be punched, in one corner of a card [mm], in two steps: the paper with an office punch before it is
 * sealed, the film with a smaller one after that, so that no water gets to the paper.
 *
 * Source of the larger hole: ISO 838:1974, 6 mm ± 0.5 mm.
 */
const punch = { paperMm: 6, filmMm: 3, edgeMm: 1.5 } as const;

/** What a card carries along its edges, off the white that its printer needs there [mm]. */
export interface CardEdge {
  readonly whiteMm: number;
}

/** Between the hole and words: those that begin beside it stay further off than those that may end there [mm]. */
const besidePunchMm = { left: 1.5, right: 0.5 } as const;

/** Room that words in the first line leave beside the hole in a corner, inside this margin. */
export function clearOfPunchMm(
  marginMm: number,
  corner: keyof typeof besidePunchMm,
  { whiteMm }: CardEdge,
): number {
  return Math.max(0, Math.max(punch.edgeMm, whiteMm) + punch.paperMm + besidePunchMm[corner] - marginMm);
}

/** At the top right of the front; on the back of a card turned over like a page that is the top left. */
export function punchMark(widthMm: number, corner: "left" | "right", { whiteMm }: CardEdge): Item[] {
  const middle = Math.max(punch.edgeMm, whiteMm) + punch.paperMm / 2;
  const at = { kind: "circle", cxMm: corner === "right" ? widthMm - middle : middle, cyMm: middle } as const;
  const stroke = { ink: "ink", widthMm: 0.15 } as const;
  return [
    { ...at, radiusMm: punch.paperMm / 2, stroke: { ...stroke, dashMm: [0.6, 0.6] } },
    { ...at, radiusMm: punch.filmMm / 2, stroke },
  ];
}

const tickMm = { one: 0.8, five: 1.2, ten: 1.7 } as const;
const figurePt = 8;
/** Lines of a ruler, thin enough to leave white between millimetres. */
const rulerStroke = { ink: "ink", widthMm: 0.2 } as const;

/** How far the ruler with its figures comes in from the edge, as far as the line that parts it from the words [mm]. */
function rulerBodyMm({ whiteMm }: CardEdge): number {
  const em = figurePt * mmPerPoint;
  return whiteMm + Math.max(tickMm.ten + 0.3 + 0.6 * em + 0.5, unitInMm + 1.37 * em + 0.15);
}

/** From the edge's white to a ruler's unit [mm]. */
const unitInMm = 0.3;

/** Where words beside the ruler may begin [mm]. */
export function rulerInMm(edge: CardEdge): number {
  return rulerBodyMm(edge) + 0.6;
}

/** Above a ruler's 0 or, on a card that has not so much, below its end, for its unit [mm]. */
const unitRoomMm = { above: 8, below: 4.2 } as const;

/** Where a true ruler of centimetres or inches along the left edge of a card so high has its 0 and its unit [mm]. */
function rulerAlong(heightMm: number, { cardUnits, unitMm }: Ruler) {
  const lengthMm = cardUnits * unitMm;
  const spareMm = heightMm - lengthMm;
  const sizeMm = figurePt * mmPerPoint;
  if (spareMm / 2 >= unitRoomMm.above) {
    const topMm = spareMm / 2;
    return { topMm, endMm: topMm + lengthMm, unitAtMm: topMm - 0.4 * sizeMm };
  }
  const topMm = Math.min(spareMm / 2, spareMm - unitRoomMm.below);
  const endMm = topMm + lengthMm;
  return { topMm, endMm: endMm + unitRoomMm.below, unitAtMm: endMm + 0.9 * sizeMm };
}

/** The ruler's ticks, 0 at its head, its figures and its unit, and the line that parts these from the words beside them. */
export function ruler(heightMm: number, edge: CardEdge, scale: Ruler): Item[] {
  const { unit, unitMm, parts, cardUnits } = scale;
  const { whiteMm } = edge;
  const { topMm, endMm, unitAtMm } = rulerAlong(heightMm, scale);
  const ticks = Array.from({ length: cardUnits * parts + 1 }, (_, part): PathStep[] => {
    const yMm = topMm + (part * unitMm) / parts;
    const tick = part % parts === 0 ? tickMm.ten : (2 * part) % parts === 0 ? tickMm.five : tickMm.one;
    return [
      ["M", whiteMm, yMm],
      ["L", whiteMm + tick, yMm],
    ];
  }).flat();
  const bodyMm = rulerBodyMm(edge);
  const line: PathStep[] = [
    ["M", bodyMm, topMm],
    ["L", bodyMm, endMm],
  ];
  const sizeMm = figurePt * mmPerPoint;
  const xMm = whiteMm + tickMm.ten + 0.3;
  const figures = Array.from({ length: cardUnits - 1 }, (_, at): Item => {
    const yMm = topMm + (at + 1) * unitMm + 0.35 * sizeMm;
    return { ...plainText, xMm, yMm, text: String(at + 1), sizeMm };
  });
  const stroke = rulerStroke;
  return [
    {
      kind: "group",
      xMm: 0,
      yMm: 0,
      artifact: true,
      items: [
        { kind: "path", steps: ticks, stroke },
        { kind: "path", steps: line, stroke },
        ...figures,
        { ...plainText, xMm: whiteMm + unitInMm, yMm: unitAtMm, text: unit, sizeMm },
      ],
    },
  ];
}

const plainText = { kind: "text", face: "regular", ink: "ink", anchor: "start" } as const;

/** What a card's edge tells of it: the kind of water by shape, the level by bars. */
interface CardTab {
  readonly water: WaterKind;
  /** How many bars: from 1, the easiest. */
  readonly bars: number;
}

const tab = { widthMm: 1.6, heightMm: 5, barMm: 1.1, gapMm: 1 } as const;

/** How far the tab with the white beside it comes in from the edge [mm]: a drawing ends before it. */
export const tabInMm = ({ whiteMm }: CardEdge): number => whiteMm + tab.widthMm + 0.6;

/** A tab on the right edge of the front: a block for still water, an arrow head for running water, bars for the level. */
export function edgeTab(
  widthMm: number,
  fromMm: number,
  { water, bars }: CardTab,
  { whiteMm }: CardEdge,
): Item[] {
  const right = widthMm - whiteMm;
  const left = right - tab.widthMm;
  const block = (top: number, heightMm: number): PathStep[] => [
    ["M", left, top],
    ["L", right, top],
    ["L", right, top + heightMm],
    ["L", left, top + heightMm],
    ["Z"],
  ];
  const head: PathStep[] = [
    ["M", left, fromMm],
    ["L", right, fromMm + tab.heightMm / 2],
    ["L", left, fromMm + tab.heightMm],
    ["Z"],
  ];
  const steps = water === "still" ? block(fromMm, tab.heightMm) : head;
  const levels = Array.from({ length: bars }, (_, i) =>
    block(fromMm + tab.heightMm + tab.gapMm + i * (tab.barMm + tab.gapMm), tab.barMm),
  ).flat();
  return [{ kind: "path", steps: [...steps, ...levels], fill: "ink" }];
}

/** Where the tab begins below the hole [mm]. */
export function tabFromMm({ whiteMm }: CardEdge): number {
  return Math.max(punch.edgeMm, whiteMm) + punch.paperMm + 1.5;
}
