import { describe, expect, it } from "vitest";
import type { Shot } from "../../src/core/tackle/shot.ts";
import type { GuideRow } from "../../src/model/guide-row.ts";
import { rigTexts } from "../../src/words/rig-texts.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { sampleSlider, sampleWaggler } from "../support/sample-rig.ts";

const told = rigTexts(drawingKit);
const plain = (text: string) => text.replaceAll("\u00a0", " ");
const tin = (size: string, massG: number): Shot => ({ size, massG, metal: "tin" });

describe("what is said of a rig in several places", () => {
  const start: GuideRow = {
    overdepthMm: 0,
    toOverdepthMm: 0,
    hookOffBedMm: 0,
    toHookOffBedMm: 0,
    floatToHookMm: 1000,
    state: "rests on the bed",
    shotOnBed: [],
    tipShowingMm: 15,
    advice: "start-here",
    moveMm: 0,
    toMoveMm: 0,
  };

  it("tells of a line of the guide how far it is to where to start, from either end", () => {
    expect(told.advice(start)).toBe("Start here.");
    expect(told.advice({ ...start, advice: "go-deeper", moveMm: 600, toMoveMm: 100 })).toContain(
      "10 cm to 60 cm",
    );
    expect(told.advice({ ...start, advice: "go-shallower", moveMm: -80, toMoveMm: -80 })).toContain("8 cm");
  });

  it("tells a lock by what goes above the float's eye and what below", () => {
    const lock = { above: [tin("BB", 0.4), tin("No 4", 0.2)], below: [tin("AAA", 0.8)] };
    expect(plain(drawingKit.figures.lock(lock))).toBe("BB + No 4 above, AAA below");
    expect(plain(drawingKit.figures.lock({ above: [], below: [tin("AAA", 0.8)] }))).toBe(
      "AAA on one side alone",
    );
  });

  it("measures from the float, or from the stop knot where the float slides", () => {
    expect(told.measuredFrom(sampleWaggler)).toBe("Float to hook");
    expect(told.measuredFrom(sampleSlider)).toBe("Stop knot to hook");
  });

  it("tells to add or take shot for the tip only where shot set it", () => {
    const depth = sampleWaggler.depths[0]!;
    expect(told.tip(depth)).toMatch(/add a small shot/);
    expect(told.tip({ ...depth, tipSetBy: "depth" })).toMatch(/make it shallower.*no shot/);
  });

  it("names the shot that stay on for plumbing, or says that none do", () => {
    const { plumbing } = sampleWaggler.depths[0]!;
    expect(plain(told.plumbing(plumbing).plummet)).toContain(
      "only this much stays on for it, close to the float's eye: No 4 above, No 4 below.",
    );
    expect(told.plumbing({ ...plumbing, kept: { below: [], above: [] } }).plummet).toContain(
      "All the shot are off",
    );
  });
});
