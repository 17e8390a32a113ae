import { expect, test } from "vitest";
import { rigVariants } from "../../src/core/float/moved-float.ts";
import { drawRig } from "../../src/drawing/rig/rig-drawing.ts";
import { drawingFaults, faintTexts } from "../support/drawing-checks.ts";
import { shippedGuide } from "../support/shipped-guide.ts";
import { places } from "./places.ts";

const { rigs, kit } = shippedGuide;

test.each(rigs)("$rig.id is clear at every depth, in every variant, on card, page and phone", (rig) => {
  for (const depth of rig.depths)
    for (const variant of rigVariants)
      for (const place of places) {
        const drawing = drawRig(rig, depth, place.box, kit, { ...place, variant });
        const faults = [...drawingFaults(drawing), ...faintTexts(drawing)];
        expect(faults, `${place.name}, ${depth.depthMm} mm, ${variant}`).toEqual([]);
      }
});
