import { entry, paired, sum } from "../../core/lists.ts";
import { type Point, point, polyline, thinSoft } from "../items.ts";
import type { Item, MeasureText } from "../model.ts";
import { type LabelText, layLabel, paintLabel } from "./label-text.ts";

/** A label over or under a picture, and the place that its leader runs to. */
interface RowLabel {
  readonly say: string;
  readonly at: Point;
}

/** Labels side by side, each with its share of the width, in the order of the places they name. */
interface LabelRow {
  readonly heightMm: number;
  /** The labels with their leaders, the row's top at a height; the leaders leave it above or below. */
  paint(topMm: number, leaders: "down" | "up"): Item[];
}

const gapMm = 2;
const marginMm = 0.5;

/** A row of labels as wide as the picture. Leaders never cross, as labels and places have one order. */
export function labelRow(
  labels: readonly RowLabel[],
  widthMm: number,
  textMm: number,
  measure: MeasureText,
): LabelRow {
  const inOrder = [...labels].sort((a, b) => a.at.xMm - b.at.xMm);
  const rooms = roomsOf(inOrder, widthMm - 2 * marginMm - gapMm * (inOrder.length - 1), textMm, measure);
  const laid = paired(inOrder, rooms).map(([{ say }, roomMm]) =>
    layLabel([{ text: say }], roomMm, textMm, measure),
  );
  const heightMm = Math.max(0, ...laid.map((label) => label.heightMm));
  const middles = paired(inOrder, laid).map(([{ at }, label], i) => {
    const leftMm = rooms.slice(0, i).reduce((sum, roomMm) => sum + roomMm + gapMm, marginMm);
    return middleOf(label, at.xMm, leftMm, entry(rooms, i));
  });
  return {
    heightMm,
    paint: (topMm, leaders) =>
      paired(paired(inOrder, laid), middles).flatMap(([[{ at }, label], middle]) => {
        const yMm = leaders === "down" ? topMm + heightMm - label.heightMm / 2 : topMm + label.heightMm / 2;
        const edge = leaders === "down" ? topMm + heightMm + 0.4 : topMm - 0.4;
        const from = point(middle, edge);
        return [polyline([from, at], thinSoft), ...paintLabel(label, middle, yMm, measure, "middle")];
      }),
  };
}

/** Each label's share of a width: its widest word, and as much more as each other has. */
function roomsOf(
  labels: readonly RowLabel[],
  widthMm: number,
  textMm: number,
  measure: MeasureText,
): number[] {
  const widest = labels.map(({ say }) =>
    Math.max(...say.split(" ").map((word) => measure(word, textMm, "regular"))),
  );
  const moreMm = (widthMm - sum(widest)) / Math.max(1, labels.length);
  return widest.map((mm) => (moreMm < 0 ? widthMm / labels.length : mm + moreMm));
}

/** The label's middle: over its place if it can be, within its share of the width. */
function middleOf({ widthMm }: LabelText, wantedMm: number, leftMm: number, roomMm: number): number {
  const half = widthMm / 2;
  return Math.min(Math.max(wantedMm, leftMm + half), leftMm + roomMm - half);
}
