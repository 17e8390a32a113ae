import type { Drawing } from "../../src/drawing/model.ts";
import { flatItems } from "./drawing-checks.ts";
import { drawingKit } from "./drawing-kit.ts";

/** A dot of a plot: round or square, hollow or full. */
export interface PlotDot {
  readonly cxMm: number;
  readonly cyMm: number;
  readonly look: string;
  /** The words that it stands behind or, of a line's name, beside, where it is no dot of a line. */
  readonly said?: string;
}

/** All dots of a plot, and those that stand behind what dots say and beside the names of lines. */
export function plotDots(drawing: Drawing, textMm: number): PlotDot[] {
  const items = flatItems(drawing.items);
  const texts = items.flatMap((item) => (item.kind === "text" ? [item] : []));
  return items.flatMap((item): PlotDot[] => {
    const place = placeOf(item);
    if (!place) return [];
    const [cxMm, cyMm] = place;
    const said = texts.find(({ text, xMm, yMm, sizeMm, face }) => {
      const offMm = cxMm - xMm - drawingKit.measure(text, sizeMm, face);
      const isName = face === "bold";
      const isBeside = (mm: number) => mm > 0 && mm < 2;
      const upMm = Math.abs(yMm - 0.3 * textMm - cyMm);
      return (isBeside(offMm) || (isName && isBeside(xMm - cxMm))) && upMm < (isName ? 0.8 * textMm : 0.1);
    });
    const look = `${item.kind} ${"fill" in item ? item.fill : ""}`;
    return [{ cxMm, cyMm, look, ...(said && { said: said.text }) }];
  });
}

/** The middle of a circle or of a filled square; none of any other mark. */
function placeOf(item: ReturnType<typeof flatItems>[number]): readonly [number, number] | undefined {
  if (item.kind === "circle") return [item.cxMm, item.cyMm];
  if (item.kind !== "path" || !item.fill || item.fill === "water" || item.steps.length !== 5)
    return undefined;
  const corners = item.steps.flatMap((step) => (step[0] === "Z" ? [] : [step.slice(-2) as [number, number]]));
  const middle = (axis: 0 | 1) => corners.reduce((sum, corner) => sum + corner[axis], 0) / corners.length;
  return [middle(0), middle(1)];
}
