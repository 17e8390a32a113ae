import { describe, expect, test } from "vitest";
import { drawRig, type RigDrawingOptions } from "../../src/drawing/rig-drawing.ts";
import { rigVariants } from "../../src/drawing/rig-variants.ts";
import {
  marksThroughTexts,
  outOfFrame,
  overlappingTexts,
  thinnestStrokeMm,
} from "../support/drawing-checks.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { sampleRigs } from "../support/sample-rig.ts";

/** The drawing's place on an upright ISO/IEC 7810 ID-1 card, and on a page. 9 pt is 3.175 mm. */
const places = [
  { name: "card", box: { widthMm: 48, heightMm: 78 }, labels: "distances", textMm: 3.175 },
  { name: "page", box: { widthMm: 100, heightMm: 140 }, labels: "full", textMm: 4 },
] as const satisfies readonly (Omit<RigDrawingOptions, "variant"> & { name: string; box: object })[];

const cases = sampleRigs.flatMap((solved) =>
  solved.depths.flatMap((depth) =>
    places.flatMap((place) =>
      rigVariants.map((variant) => ({
        name: `${solved.rig.id} in ${depth.depthMm} mm, ${variant}, on a ${place.name}`,
        drawing: () => drawRig(solved, depth, place.box, drawingKit, { ...place, variant }),
      })),
    ),
  ),
);

describe("rig drawings", () => {
  test.each(cases)("$name: no label overlaps or leaves the frame", ({ drawing }) => {
    const drawn = drawing();
    expect(outOfFrame(drawn)).toEqual([]);
    expect(overlappingTexts(drawn)).toEqual([]);
    expect(marksThroughTexts(drawn)).toEqual([]);
    expect(thinnestStrokeMm(drawn)).toBeGreaterThanOrEqual(0.35);
  });
});
