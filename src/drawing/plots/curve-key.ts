import { point, polyline } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { layLabel, paintLabel } from "../labels/label-text.ts";
import type { Item, Stroke } from "../model.ts";

/** What a curve looks like and what it is. */
interface KeyEntry {
  readonly stroke: Stroke;
  readonly label: string;
}

/** Length of the sample of a line, and between it and its label. */
const sampleMm = 11;
const gapMm = 2;

/** The key below a plot: a stretch of each line and what it stands for, one under the other. */
export function drawKey(
  entries: readonly KeyEntry[],
  at: { leftMm: number; topMm: number; widthMm: number },
  textMm: number,
  { measure }: DrawingKit,
): { items: readonly Item[]; heightMm: number } {
  const items: Item[] = [];
  let top = at.topMm;
  for (const { stroke, label } of entries) {
    const laid = layLabel([{ text: label }], at.widthMm - sampleMm - gapMm, textMm, measure);
    const middle = top + laid.heightMm / 2;
    items.push(
      polyline([point(at.leftMm, middle), point(at.leftMm + sampleMm, middle)], stroke),
      ...paintLabel(laid, at.leftMm + sampleMm + gapMm, middle, measure),
    );
    top += laid.heightMm + textMm * 0.25;
  }
  return { items, heightMm: top - at.topMm };
}
