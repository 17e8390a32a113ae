import { expect, it } from "vitest";
import { moveFloat, rigVariants } from "../../../src/core/float/moved-float.ts";
import { drawRig } from "../../../src/drawing/rig/rig-drawing.ts";
import { flatItems } from "../../support/drawing-checks.ts";
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

// The guide tells which shot the bed carries; where the line is just so long, the highest of them stands under the float.
it.each(still)("$rig.id: as many shot are drawn on the bed as the guide has there", (solved) => {
  for (const depth of solved.depths)
    for (const variant of rigVariants) {
      const { overdepthMm } = moveFloat(depth, "still", variant);
      const step = depth.depthGuide.find((one) => one.overdepthMm === overdepthMm);
      if (!step) continue;
      const items = flatItems(
        drawRig(solved, depth, box, drawingKit, { labels: "full", textMm: 3.2, variant }).items,
      );
      const bedMm = Math.max(
        ...items.flatMap((item) =>
          item.kind === "path" && item.fill === "water" ? item.steps.map((to) => Number(to.at(-1)) || 0) : [],
        ),
      );
      const lying = items.filter(
        (item) =>
          item.kind === "circle" && item.fill === "ink" && Math.abs(bedMm - item.cyMm - item.radiusMm) < 0.05,
      );
      expect(lying.length, `${variant}, ${overdepthMm}`).toBe(step.shotOnBed.length);
    }
});

it("the anchor of a lift rig stands on the bed straight below its float", () => {
  const lift = still.find(({ rig }) => rig.id === "lift-method")!;
  for (const depth of lift.depths) {
    const { items } = drawRig(lift, depth, box, drawingKit, { labels: "full", textMm: 3.2 });
    const circles = flatItems(items).flatMap((item) => (item.kind === "circle" ? [item] : []));
    const anchor = circles.find(({ fill, radiusMm }) => fill === "ink" && radiusMm > 0.7)!;
    const eye = circles.find(({ fill }) => fill === "paper")!;
    expect(Math.abs(anchor.cxMm - eye.cxMm)).toBeLessThan(0.1);
  }
});

// A label below the bed has its leader run down through the bed, as if the shot were buried: common practice of drawing, no source.
it.each(still)("$rig.id: what lies on the bed is named above it", (solved) => {
  for (const depth of solved.depths)
    for (const variant of rigVariants) {
      const { items } = drawRig(solved, depth, box, drawingKit, { labels: "full", textMm: 3.2, variant });
      const all = flatItems(items);
      const water = all.find((item) => item.kind === "path" && item.fill === "water");
      const bedMm = Math.max(
        ...(water?.kind === "path" ? water.steps.map((to) => Number(to.at(-1)) || 0) : []),
      );
      const named = textsOf(items).filter(({ face }) => face === "bold");
      const hook = named.find(({ text }) => text === "0")!;
      expect(hook.yMm, `${variant}: the hook`).toBeLessThan(bedMm);
      const distances = named.filter(({ text }) => /^\d+(?:.to.\d+)?.cm$/u.test(text));
      for (const { text, yMm } of distances) expect(yMm, `${variant}: ${text}`).toBeLessThan(bedMm);
    }
});

// Its anchor is more than it can carry: as long as the float stands, the line holds it down.
it("a lift rig's drawing says that the line to its anchor is tight, as it is set and set deeper", () => {
  const lift = still.find(({ rig }) => rig.id === "lift-method")!;
  for (const depth of lift.depths)
    for (const variant of ["set", "over depth"] as const) {
      const drawing = drawRig(lift, depth, box, drawingKit, { labels: "full", textMm: 3.2, variant });
      const seen = textsOf(drawing.items).map(({ text }) => text.replaceAll("\u00a0", " "));
      expect(seen.join(" ")).toContain("line tight to SSG");
      expect(drawing.description.replaceAll("\u00a0", " ")).toContain(
        "held down by the tight line to SSG on the bed",
      );
    }
});
