import { describe, expect, it } from "vitest";
import { type Point, point } from "../../../src/drawing/items.ts";
import type { Drawing } from "../../../src/drawing/model.ts";
import { drawMakeUp } from "../../../src/drawing/scenes/draw-make-up.ts";
import { between, heightAt } from "../../../src/drawing/scenes/ground.ts";
import { type MakeUpStep, makeUpCaption, makeUpSteps } from "../../../src/drawing/scenes/make-up.ts";
import { cutPath, pathLengthMm, pointAlong } from "../../../src/drawing/scenes/path.ts";
import { shelfSwim } from "../../../src/drawing/scenes/shelf-swim.ts";
import { drawSinkTheLine } from "../../../src/drawing/scenes/sink-the-line.ts";
import { bedDepthMm, drawSwim } from "../../../src/drawing/scenes/swim.ts";
import { drawingFaults, flatItems } from "../../support/drawing-checks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleRigs, sampleSlider, sampleStick, sampleWaggler } from "../../support/sample-rig.ts";
import { makebelievePool, placed, setFor } from "./sample-swim.ts";

function expectClear(drawing: Drawing) {
  expect(drawingFaults(drawing), drawing.title).toEqual([]);
}

const texts = (drawing: Drawing) =>
  flatItems(drawing.items).flatMap((item) => (item.kind === "text" ? [item.text] : []));

const swimBoxes = [
  { widthMm: 55, heightMm: 50 },
  { widthMm: 80, heightMm: 80 },
  { widthMm: 170, heightMm: 110 },
];

describe("the cross-section of a swim", () => {
  it.each(swimBoxes)("is clear at $widthMm × $heightMm mm", (box) => {
    expectClear(drawSwim(makebelievePool, placed, box, drawingKit));
    for (const solved of sampleRigs) {
      const { swim, rigs } = shelfSwim(solved, drawingKit);
      expectClear(drawSwim(swim, rigs, box, drawingKit));
    }
  });

  it.each([
    [600, 900],
    [1000, 1100],
    [1500, 1500],
    [3000, 5000],
  ])("is clear from %i to %i mm of water", (shallowMm, deepMm) => {
    const depths = [...new Set([shallowMm, deepMm])].map((depthMm) => setFor(depthMm, 0).depth);
    const { swim, rigs } = shelfSwim({ ...sampleWaggler, depths }, drawingKit);
    for (const box of swimBoxes) expectClear(drawSwim(swim, rigs, box, drawingKit));
  });

  it("takes the depth between two points of the bed in proportion, and level beyond its ends", () => {
    expect(bedDepthMm(makebelievePool, 3000)).toBe(1050);
    expect(bedDepthMm(makebelievePool, 5000)).toBe(1500);
    expect(bedDepthMm(makebelievePool, 20000)).toBe(2100);
  });

  it("shows and tells the same settings and depths", () => {
    const drawing = drawSwim(makebelievePool, placed, swimBoxes[1]!, drawingKit);
    const shown = texts(drawing).join(" ");
    for (const words of ["dead depth", "off bottom", "laid on", "1.05 m", "1.95 m", "2.04 m"]) {
      expect(shown).toContain(words);
      expect(drawing.description).toContain(words);
    }
    expect(drawing.description).toContain("The bed drops from 1.1 m to 1.9 m down a slope 4.5 m out.");
    expect(drawing.description).toContain("laid on, hook 20 cm over depth");
  });

  it("lets the hook touch the bed at dead depth, hang above it off bottom and lie beyond the float laid on", () => {
    const box = swimBoxes[2]!;
    const drawing = drawSwim(makebelievePool, placed, box, drawingKit);
    const accents = flatItems(drawing.items).flatMap((item) =>
      item.kind === "path" && item.stroke?.ink === "accent" && !item.fill ? [item] : [],
    );
    const isBent = ({ steps }: (typeof accents)[number]) => steps.some(([kind]) => kind === "C");
    const hooks = accents.filter(isBent);
    expect(hooks).toHaveLength(3);
    // Both ways from the middle of the line that lies: its length is shown once, at the rig that is laid on.
    expect(accents.filter((item) => !isBent(item))).toHaveLength(2);
    const bed = bedOf(drawing);
    const [dead, off, laid] = hooks.map(({ steps }) => {
      const numbers = steps.flatMap(([, ...rest]) => rest as number[]);
      const [xMm, yMm] = numbers as [number, number];
      const lowest = Math.max(...numbers.filter((_, i) => i % 2 === 1));
      return { xMm, gapMm: heightAt(bed, xMm) - lowest, eyeGapMm: heightAt(bed, xMm) - yMm };
    });
    expect(Math.abs(dead!.gapMm)).toBeLessThan(0.4);
    expect(off!.gapMm).toBeGreaterThan(2.3);
    expect(laid!.eyeGapMm).toBeLessThan(1);
    const floatMm = 0.15 * box.widthMm + (11500 / 14000) * 0.85 * box.widthMm;
    expect(laid!.xMm).toBeGreaterThan(floatMm + 4);
  });

  it("makes a swim from the depths of a rig, with the line laid on as far as the lowest shot needs", () => {
    const { swim, rigs } = shelfSwim(sampleWaggler, drawingKit);
    expect(rigs.map(({ fromBankMm }) => bedDepthMm(swim, fromBankMm))).toEqual([1500, 3000, 3000]);
    expect(rigs.map(({ depth }) => depth.overdepthMm)).toEqual([0, -100, 330]);
    for (const { depth } of rigs) {
      // The float rises by some millimetres where its lowest shot rests on the bed.
      const off = depth.draughtMm + depth.floatToHookMm - depth.depthMm - depth.overdepthMm;
      expect(Math.abs(off)).toBeLessThan(10);
    }
  });
});

/** The longest unbroken line of many points: the bed. */
function bedOf(drawing: Drawing): Point[] {
  const lines = flatItems(drawing.items).flatMap((item) =>
    item.kind === "path" && item.stroke?.widthMm === 0.6 && item.steps.length === makebelievePool.bed.length
      ? [item.steps]
      : [],
  );
  return lines[0]!.map(([, x, y]) => point(x as number, y as number));
}

describe("making up a rig", () => {
  const inOrder = (steps: readonly MakeUpStep[], a: MakeUpStep, b: MakeUpStep) => {
    expect(steps).toContain(a);
    expect(steps).toContain(b);
    expect(steps.indexOf(a), `${a} before ${b}`).toBeLessThan(steps.indexOf(b));
  };

  // The order is common practice, no source.
  it("puts the float on the line before the loop is tied, however it is held", () => {
    for (const solved of [...sampleRigs, sampleSlider]) {
      const steps = makeUpSteps(solved);
      inOrder(steps, "rings", "float");
      inOrder(steps, "float", "loop");
      inOrder(steps, "loop", "hook-length");
      inOrder(steps, "hook-length", "plummet");
      inOrder(steps, "plummet", "shot");
    }
  });

  it("puts rubbers on before the float they hold, and no lock shot", () => {
    const steps = makeUpSteps(sampleStick);
    inOrder(steps, "rubbers", "float");
    expect(steps).not.toContain("lock");
  });

  it("holds a float with a shot on each side till the depth is found, locks it then, and gives it no rubbers", () => {
    const steps = makeUpSteps(sampleWaggler);
    inOrder(steps, "float", "hold");
    inOrder(steps, "hold", "plummet");
    inOrder(steps, "plummet", "lock");
    expect(steps).not.toContain("rubbers");
  });

  it("puts stop knot, bead and sliding float on in that order", () => {
    const steps = makeUpSteps(sampleSlider);
    inOrder(steps, "stop-knot", "bead");
    inOrder(steps, "bead", "float");
  });

  it("leaves out a step for shot on the line where all of it is at the float", () => {
    const atFloat = {
      ...sampleWaggler,
      depths: sampleWaggler.depths.map((depth) => ({
        ...depth,
        lineShot: [],
      })),
    };
    expect(makeUpSteps(atFloat)).not.toContain("shot");
  });

  it.each([60, 90, 150])("is clear on one sheet %i mm wide", (widthMm) => {
    for (const solved of [...sampleRigs, sampleSlider])
      expectClear(drawMakeUp(solved, { widthMm }, drawingKit));
  });

  it("names each step beside its number, once at its circle and once on the rig", () => {
    const words = texts(drawMakeUp(sampleWaggler, { widthMm: 90 }, drawingKit));
    const said = words.join(" ");
    for (const part of [
      "float",
      "loop",
      "hook length",
      "first two lock shot",
      "other lock shot",
      "plummet",
      "lock shot",
      "shot",
    ])
      expect(said).toContain(part);
    for (const number of ["1", "2", "3", "4", "5", "6", "7", "8"])
      expect(words.filter((word) => word === number)).toHaveLength(2);
  });

  it("tells each step by its number, with the rig's own figures", () => {
    const told = makeUpCaption(sampleWaggler, drawingKit);
    expect(told).toMatch(/^1\. Lead the line .* 2\. .* 8\. /);
    expect(told).toContain("30 cm");
    expect(told).toContain("BB\u00a0+ No\u00a04 above, BB\u00a0+ No\u00a04 below");
  });
});

describe("sinking the line", () => {
  it.each([
    { widthMm: 60, heightMm: 36 },
    { widthMm: 90, heightMm: 44 },
    { widthMm: 150, heightMm: 60 },
  ])("takes three clear pictures at $widthMm × $heightMm mm", (box) => {
    const drawings = drawSinkTheLine(sampleWaggler.rig, box, drawingKit);
    expect(drawings).toHaveLength(3);
    for (const drawing of drawings) expectClear(drawing);
  });

  it("draws the line on the water first, and under it from then on", () => {
    const box = { widthMm: 90, heightMm: 44 };
    const surfaceMm = 0.46 * box.heightMm;
    const heights = drawSinkTheLine(sampleWaggler.rig, box, drawingKit).map(({ items }) => {
      const line = flatItems(items).find((item) => item.kind === "path" && item.stroke?.widthMm === 0.5);
      const steps = line?.kind === "path" ? line.steps : [];
      return steps.slice(1).map((step) => step[step.length - 1] as number);
    });
    expect(heights[0]!.filter((y) => y < surfaceMm)).toHaveLength(2);
    expect(heights[1]!.every((y) => y > surfaceMm)).toBe(true);
    expect(heights[2]!.every((y) => y > surfaceMm)).toBe(true);
  });
});

describe("lines through points", () => {
  const path = [point(0, 0), point(3, 4), point(3, 10)];

  it("have the length, places and parts of their pieces", () => {
    expect(pathLengthMm(path)).toBe(11);
    expect(pointAlong(path, 2.5)).toEqual(point(1.5, 2));
    expect(pointAlong(path, 99)).toEqual(point(3, 10));
    expect(cutPath(path, 2.5, 8)).toEqual([point(1.5, 2), point(3, 4), point(3, 7)]);
  });

  it("are cut between two places across, with their heights there", () => {
    const slope = [point(0, 0), point(10, 5), point(20, 5)];
    expect(between(slope, 4, 15)).toEqual([point(4, 2), point(10, 5), point(15, 5)]);
    expect(heightAt(slope, 99)).toBe(5);
  });
});
