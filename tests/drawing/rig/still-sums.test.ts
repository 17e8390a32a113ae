import { expect, it } from "vitest";
import { rigVariants } from "../../../src/core/float/moved-float.ts";
import { drawRig } from "../../../src/drawing/rig/rig-drawing.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";
import { textsOf } from "../../support/tellers/read-drawing.ts";

const still = shippedGuide.rigs.filter(
  ({ rig }) => rig.water === "still" && rig.float.attachment !== "sliding",
);
const box = { widthMm: 100, heightMm: 130 };

// A line that hangs straight down is as long as the water below the float is deep, with what lies on the bed.
it.each(still)("$rig.id: float and line add up to the depth and what lies on the bed", (solved) => {
  for (const depth of solved.depths)
    for (const variant of rigVariants) {
      const { items } = drawRig(solved, depth, box, drawingKit, { labels: "full", textMm: 3.2, variant });
      const seen = textsOf(items)
        .map(({ text }) => text.replaceAll("\u00a0", " "))
        .join(" ");
      const cmOf = (found: RegExp) => Number(found.exec(seen)?.[1] ?? Number.NaN);
      const over = cmOf(/set (\d+) cm over depth/) || 0;
      const lying = cmOf(/(\d+) cm of it on the bed/) || over;
      const off = cmOf(/(\d+) cm off the bed/) || 0;
      const line = cmOf(/(\d+) cm float/) + cmOf(/(\d+) cm of float in water/);
      expect(line - lying + off, `${variant}: ${seen}`).toBe(depth.depthMm / 10);
    }
});
