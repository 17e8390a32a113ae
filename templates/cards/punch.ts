import type { Item } from "../../src/drawing/model.ts";

/**
 * Where a hole may be punched, in one corner of a card [mm]; words keep clear of it. It is at the top right of the
 * front; on the back that is the top left of a card turned over like a page.
 */
const punch = { diameterMm: 5, edgeMm: 1.5 } as const;

/** Room that words in the first line leave beside the hole, inside this margin. */
export function clearOfPunchMm(marginMm: number): number {
  return Math.max(0, punch.edgeMm + punch.diameterMm + 0.5 - marginMm);
}

export function punchMark(widthMm: number, corner: "left" | "right" = "right"): Item[] {
  const radiusMm = punch.diameterMm / 2;
  const middle = punch.edgeMm + radiusMm;
  const stroke = { ink: "ink", widthMm: 0.15, dashMm: [0.6, 0.6] } as const;
  return [
    { kind: "circle", cxMm: corner === "right" ? widthMm - middle : middle, cyMm: middle, radiusMm, stroke },
  ];
}
