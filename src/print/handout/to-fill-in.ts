import { columnWidthMm, type HandoutFormat } from "../../../templates/handouts/format.ts";
import { thin } from "../../drawing/items.ts";
import type { DrawingKit } from "../../drawing/kit.ts";
import type { GroupItem, Item, MeasureText } from "../../drawing/model.ts";
import { mmPerPoint } from "../../markup/boxes.ts";

const labelPt = 9;
/** From a label to its line, from a line to the next label, and the line below the foot of the letters. */
const gapsMm = { before: 1.5, after: 3, below: 0.8 } as const;

/** Above the column of a first page: whose it is, where they meet, and a number to ring. */
export function ownersLines(format: HandoutFormat, { words, measure }: DrawingKit): GroupItem {
  const labels = (["name", "place", "telephone"] as const).map((key) => words(`handout.fill-in.${key}`));
  const room = { xMm: format.sideMm, yMm: format.topMm - 6, widthMm: columnWidthMm(format) };
  return toFillIn(labels, room, measure);
}

/**
 * Labels side by side, each with a line to write on by hand. They share the width evenly; to a reader of the document
 * they are nothing, as nobody types there.
 */
function toFillIn(
  labels: readonly string[],
  { xMm, yMm, widthMm }: { readonly xMm: number; readonly yMm: number; readonly widthMm: number },
  measure: MeasureText,
): GroupItem {
  const sizeMm = labelPt * mmPerPoint;
  const partMm = (widthMm + gapsMm.after) / labels.length;
  const items = labels.flatMap((label, i): Item[] => {
    const left = xMm + i * partMm;
    const from = left + measure(label, sizeMm, "regular") + gapsMm.before;
    const y = yMm + gapsMm.below;
    return [
      { kind: "text", xMm: left, yMm, text: label, sizeMm, face: "regular", ink: "ink", anchor: "start" },
      {
        kind: "path",
        steps: [
          ["M", from, y],
          ["L", left + partMm - gapsMm.after, y],
        ],
        stroke: thin,
      },
    ];
  });
  return { kind: "group", xMm: 0, yMm: 0, artifact: true, items };
}
