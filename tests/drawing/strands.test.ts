import { describe, expect, test } from "vitest";
import type { Drawing, PathItem } from "../../src/drawing/model.ts";
import { drawRig } from "../../src/drawing/rig-drawing.ts";
import { strandStrokes } from "../../src/drawing/strands.ts";
import { flatItems } from "../support/drawing-checks.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { inked, raster } from "../support/raster.ts";
import { sampleRigs } from "../support/sample-rig.ts";

type Corner = readonly [xMm: number, yMm: number];

/** Stretches of ink along a strand in a 300 dpi rendering cut to black and white, its ends left out. */
function inkRuns(drawing: Drawing, path: PathItem, endsMm: number): number {
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

function strand(drawing: Drawing, which: keyof typeof strandStrokes): PathItem {
  return flatItems(drawing.items).find(
    (item): item is PathItem => item.kind === "path" && item.stroke === strandStrokes[which],
  )!;
}

describe("main line and hook length in black and white", () => {
  const depths = sampleRigs.flatMap((solved) =>
    solved.depths.map((depth) => ({ name: `${solved.rig.id} in ${depth.depthMm} mm`, solved, depth })),
  );

  test.each(depths)("$name: the hook length is seen to be dashed", ({ solved, depth }) => {
    const card = drawRig(solved, depth, { widthMm: 48, heightMm: 78 }, drawingKit, {
      labels: "distances",
      textMm: 3.175,
    });
    // Hook and loop cover the ends.
    expect(inkRuns(card, strand(card, "hook length"), 1.7)).toBeGreaterThanOrEqual(2);
  });

  test("an unbroken strand is one run, a dashed one of the same length many", () => {
    const only = (which: keyof typeof strandStrokes) => {
      const steps = [
        ["M", 5, 2],
        ["L", 5, 18],
      ] as const;
      const item: PathItem = { kind: "path", steps, stroke: strandStrokes[which] };
      return inkRuns({ widthMm: 10, heightMm: 20, title: "", description: "", items: [item] }, item, 0.2);
    };
    expect(only("main line")).toBe(1);
    expect(only("hook length")).toBe(7);
  });
});
