import type { Drawing, PathItem } from "../../src/drawing/model.ts";
import { strandStrokes } from "../../src/drawing/strands.ts";
import { flatItems } from "./drawing-checks.ts";
import { inked, raster } from "./raster.ts";

type Corner = readonly [xMm: number, yMm: number];

/** Stretches of ink along a strand in a 300 dpi rendering cut to black and white, its ends left out. */
export function inkRuns(drawing: Drawing, path: PathItem, endsMm: number): number {
  const picture = raster(drawing, 300);
  const corners = path.steps.flatMap((step): Corner[] =>
    step[0] === "M" || step[0] === "L" ? [[step[1], step[2]]] : [],
  );
  const places = corners.slice(1).flatMap((to, i): Corner[] => {
    const from = corners[i]!;
    const pieces = Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) * picture.pxPerMm);
    return Array.from({ length: pieces }, (_, piece) => {
      const share = piece / pieces;
      return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
    });
  });
  const ends = Math.round(endsMm * picture.pxPerMm);
  const ink = places.slice(ends, -ends).map(([xMm, yMm]) => inked(picture, xMm, yMm));
  return ink.filter((here, i) => here && !ink[i - 1]).length;
}

export function strand(drawing: Drawing, which: keyof typeof strandStrokes): PathItem {
  return flatItems(drawing.items).find(
    (item): item is PathItem => item.kind === "path" && item.stroke === strandStrokes[which],
  )!;
}
