import { describe, expect, test } from "vitest";
import type { PathItem } from "../../src/drawing/model.ts";
import { drawRig } from "../../src/drawing/rig/rig-drawing.ts";
import { strandStrokes } from "../../src/drawing/strands.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { inkRuns, strand } from "../support/ink-runs.ts";
import { sampleRigs } from "../support/sample-rig.ts";

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
