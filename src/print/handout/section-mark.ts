import type { GroupItem } from "../../drawing/model.ts";
import { mmPerPoint } from "../../markup/boxes.ts";

const barWidthMm = 1.6;
const barHeightMm = 6;
const textPt = 8;

/** The part of the fold that marks may stand on, as shares of its length. */
const from = 0.15;
const to = 0.85;

/**
 * The mark of a section at the middle fold of a sheet: a bar across the fold, for each section a step lower, so that
 * the spine of a stack in order shows a stair, and its number beside the bar.
 *
 * @param section from 1
 */
export function sectionMark(
  section: number,
  sections: number,
  paper: { readonly widthMm: number; readonly heightMm: number },
): GroupItem {
  const stepMm = Math.min(barHeightMm, ((to - from) * paper.heightMm) / sections);
  const x = paper.widthMm / 2;
  const y = from * paper.heightMm + (section - 1) * stepMm;
  const half = barWidthMm / 2;
  return {
    kind: "group",
    xMm: 0,
    yMm: 0,
    artifact: true,
    items: [
      {
        kind: "path",
        steps: [
          ["M", x - half, y],
          ["L", x + half, y],
          ["L", x + half, y + stepMm],
          ["L", x - half, y + stepMm],
          ["Z"],
        ],
        fill: "ink",
      },
      {
        kind: "text",
        xMm: x + half + 1,
        yMm: y + stepMm - 1,
        text: String(section),
        sizeMm: textPt * mmPerPoint,
        face: "regular",
        ink: "ink",
        anchor: "start",
      },
    ],
  };
}
