import type { Drawing } from "../../src/drawing/model.ts";
import { flatItems } from "./drawing-checks.ts";

/** A dot of a plot: round or square, hollow or full. */
export interface PlotDot {
  readonly cxMm: number;
  readonly cyMm: number;
  readonly look: string;
}

/** All dots of a plot. */
export function plotDots(drawing: Drawing): PlotDot[] {
  return flatItems(drawing.items).flatMap((item): PlotDot[] => {
    const place = placeOf(item);
    if (!place) return [];
    const [cxMm, cyMm] = place;
    return [{ cxMm, cyMm, look: `${item.kind} ${"fill" in item ? item.fill : ""}` }];
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
