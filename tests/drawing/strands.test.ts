import { describe, expect, test } from "vitest";
import type { Drawing, PathItem } from "../../src/drawing/model.ts";
import { drawRig } from "../../src/drawing/rig-drawing.ts";
import { strandStrokes } from "../../src/drawing/strands.ts";
import { flatItems } from "../support/drawing-checks.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { inked, raster } from "../support/raster.ts";
import { sampleRigs } from "../support/sample-rig.ts";

/** Stretches of ink along an upright strand in a 300 dpi rendering cut to black and white. */
function inkRuns(drawing: Drawing, xMm: number, fromMm: number, toMm: number): number {
  const picture = raster(drawing, 300);
  let runs = 0;
  let before = false;
  for (let yMm = fromMm; yMm <= toMm; yMm += 1 / picture.pxPerMm) {
    const ink = inked(picture, xMm, yMm);
    if (ink && !before) runs += 1;
    before = ink;
  }
  return runs;
}

function strand(drawing: Drawing, which: keyof typeof strandStrokes): PathItem {
  return flatItems(drawing.items).find(
    (item): item is PathItem => item.kind === "path" && item.stroke === strandStrokes[which],
  )!;
}

/** The upright piece of a strand nearest its lower end, as far as nothing else covers it. */
function bareStretch(path: PathItem): { xMm: number; fromMm: number; toMm: number } {
  const points = path.steps.flatMap((step) =>
    step[0] === "M" || step[0] === "L" ? [[step[1], step[2]]] : [],
  );
  const ys = points.map(([, y]) => y!);
  return { xMm: points[0]![0]!, fromMm: Math.min(...ys), toMm: Math.max(...ys) };
}

describe("main line and hook length in black and white", () => {
  const hanging = sampleRigs.flatMap((solved) =>
    solved.depths.filter((depth) => depth.overdepthMm <= 0).map((depth) => ({ solved, depth })),
  );

  test.each(hanging)(
    "$solved.rig.id in $depth.depthMm mm: one is broken, the other is not",
    ({ solved, depth }) => {
      const card = drawRig(solved, depth, { widthMm: 48, heightMm: 78 }, drawingKit, {
        labels: "distances",
        textMm: 3.175,
      });
      const hookLength = bareStretch(strand(card, "hook length"));
      // The loop's own outline covers the uppermost 1.5 mm.
      expect(inkRuns(card, hookLength.xMm, hookLength.fromMm + 1.7, hookLength.toMm)).toBeGreaterThanOrEqual(
        2,
      );
    },
  );

  test("an unbroken strand is one run, a dashed one of the same length many", () => {
    const both = (which: keyof typeof strandStrokes): Drawing => ({
      widthMm: 10,
      heightMm: 20,
      title: which,
      description: which,
      items: [
        {
          kind: "path",
          steps: [
            ["M", 5, 2],
            ["L", 5, 18],
          ],
          stroke: strandStrokes[which],
        },
      ],
    });
    expect(inkRuns(both("main line"), 5, 2.2, 17.8)).toBe(1);
    expect(inkRuns(both("hook length"), 5, 2.2, 17.8)).toBe(7);
  });
});
