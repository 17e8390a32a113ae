import { type HandoutFormat, textWidthMm } from "../../../templates/handouts/format.ts";
import { entry } from "../../core/lists.ts";
import { point, polyline, thin } from "../../drawing/items.ts";
import type { DrawingKit } from "../../drawing/kit.ts";
import type { GroupItem, Item, MeasureText } from "../../drawing/model.ts";
import { mmPerPoint } from "../../markup/boxes.ts";

const labelPt = 9;
/** From a label to its line, from a line to the next label, and the line below the foot of the letters. */
const gapsMm = { before: 1.5, after: 3, below: 0.8 } as const;

/** Above the column of a first page: whose it is, where they meet, and a number to ring. */
export function ownersLines(format: HandoutFormat, { words, measure }: DrawingKit): GroupItem {
  const labels = (["name", "place", "telephone"] as const).map((key) => words(`handout.fill-in.${key}`));
  const room = { xMm: format.sideMm, yMm: format.topMm - 6, widthMm: textWidthMm(format) };
  return toFillIn(labels, room, measure);
}

/**
 * Labels side by side, each with a line as long as the others' to write on by hand. To a reader of the document they are
 * nothing, as nobody types there.
 */
function toFillIn(
  labels: readonly string[],
  { xMm, yMm, widthMm }: { readonly xMm: number; readonly yMm: number; readonly widthMm: number },
  measure: MeasureText,
): GroupItem {
  const sizeMm = labelPt * mmPerPoint;
  const widthsMm = labels.map((label) => measure(label, sizeMm, "regular"));
  const takenMm = widthsMm.reduce((sum, width) => sum + width + gapsMm.before + gapsMm.after, -gapsMm.after);
  const lineMm = (widthMm - takenMm) / labels.length;
  let left = xMm;
  const items = labels.flatMap((text, i): Item[] => {
    const at = left;
    const from = at + entry(widthsMm, i) + gapsMm.before;
    left = from + lineMm + gapsMm.after;
    const line = [point(from, yMm + gapsMm.below), point(from + lineMm, yMm + gapsMm.below)];
    return [
      { kind: "text", xMm: at, yMm, text, sizeMm, face: "regular", ink: "ink", anchor: "start" },
      polyline(line, thin),
    ];
  });
  return { kind: "group", xMm: 0, yMm: 0, artifact: true, items };
}
