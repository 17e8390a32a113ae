import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type DepthGuideInput, depthGuide } from "../../../src/core/depth/depth-guide.ts";
import type { GuideStep } from "../../../src/core/depth/guide-step.ts";
import { type Float, floatPullG } from "../../../src/core/float/float.ts";
import { draughtMm, tipShowingMm } from "../../../src/core/float/tip.ts";
import type { PlacedShot } from "../../../src/core/patterns/pattern.ts";
import { pullG } from "../../../src/core/tackle/shot.ts";
import { pool, stick, straightQuill, tippedFloat } from "../floats.ts";

fc.configureGlobal({ seed: 20, numRuns: 200 });

const lead = (size: string, massG: number, fromHookMm: number, role: PlacedShot["role"]): PlacedShot => ({
  size,
  massG,
  metal: "lead",
  role,
  fromHookMm,
});

/** A bare float in 2 m of still water. */
const still: DepthGuideInput = {
  float: straightQuill,
  water: pool,
  depthMm: 2000,
  shot: [],
  hookAndBaitPullG: 0,
  settingMm: 0,
};

function guide(input: Partial<DepthGuideInput>): readonly GuideStep[] {
  const result = depthGuide({ ...still, ...input });
  if (!result.ok) throw new Error(result.findings.map(({ code }) => code).join());
  return result.value;
}

/** The line at an overdepth; `settingMm` has made sure that there is one. */
const at = (input: Partial<DepthGuideInput>, overdepthMm: number): GuideStep =>
  guide({ ...input, settingMm: overdepthMm }).find((step) => step.overdepthMm === overdepthMm)!;

describe("a 1.5 mm tip with a No 8 at 8 cm in still water", () => {
  // The rest of the capacity locks the float: 4 g − 0.06 g at the float.
  const float = tippedFloat(1.5);
  const rig = {
    float,
    shot: [lead("No 8", 0.06, 80, "telltale"), lead("rest", 3.94, 1820, "lock")],
  };

  it("hangs the hook off the bed by what it is set short of the depth, and never below it", () => {
    const heights = [-300, -50, 0, 80, 600].map((overdepthMm) => at(rig, overdepthMm).hookOffBedMm);
    expect(heights).toEqual([300, 50, 0, 0, 0]);
  });

  // Whole pull 0.06 g · 0.911843 = 0.054711 g = 54.727 mm³; tip area π/4 · 2.25 = 1.76715 mm²: 30.97 mm.
  it.each([
    [70, 0],
    [80, 0],
    [90, 10],
    [100, 20],
    [111, 30.97],
    [200, 30.97],
    [600, 30.97],
  ])("at %d mm over depth shows %d mm more", (overdepthMm, moreMm) => {
    expect(at(rig, overdepthMm).tipShowingMm).toBeCloseTo(100 + moreMm, 2);
  });

  it("has a line where the shot touches and where it wholly rests", () => {
    const events = guide(rig).map(({ overdepthMm }) => overdepthMm);
    expect(events).toContain(80);
    // It wholly rests from 110.97 mm on; nobody sets a float finer than to the centimetre.
    expect(events).toContain(120);
    expect(events).not.toContain(110);
    expect(at(rig, 70).shotOnBed).toEqual([]);
    expect(at(rig, 80).shotOnBed).toEqual(["No 8"]);
  });

  it.each([0, -20, 300, 900, -1000])(
    "set at %d mm over depth starts there alone, and says from every other line how far that is",
    (settingMm) => {
      const steps = guide({ ...rig, settingMm });
      const starts = steps.filter(({ advice }) => advice === "start-here");
      expect(starts.map(({ overdepthMm }) => overdepthMm)).toEqual([settingMm]);
      for (const { overdepthMm, moveMm, advice } of steps) {
        expect(overdepthMm + moveMm).toBe(settingMm);
        if (moveMm !== 0) expect(advice).toBe(moveMm > 0 ? "go-deeper" : "go-shallower");
      }
    },
  );

  it("reaches 60 cm to either side of dead depth, off the bed no more than half the depth", () => {
    const ends = (depthMm: number) => {
      const overdepths = guide({ ...rig, depthMm }).map(({ overdepthMm }) => overdepthMm);
      return [overdepths[0], overdepths.at(-1)];
    };
    expect(ends(2000)).toEqual([-600, 600]);
    expect(ends(1000)).toEqual([-500, 600]);
  });

  it("in finer steps is told from the first of those to the last, and never beyond them", () => {
    const shot = [lead("No 8", 0.06, 640, "telltale"), lead("rest", 3.94, 1820, "lock")];
    const finer = depthGuide({ ...still, ...rig, shot }, 10);
    const overdepths = finer.ok ? finer.value.map(({ overdepthMm }) => overdepthMm) : [];
    expect(overdepths.slice(0, 2)).toEqual([-600, -590]);
    // The first shot wholly rests at 671 mm, and is set to rest in whole centimetres.
    expect(overdepths.at(-1)).toBe(680);
    expect(overdepths).toHaveLength(129);
  });

  it("reaches until the first shot rests, however long the hook length", () => {
    const far = { ...rig, shot: [lead("No 8", 0.06, 640, "telltale"), lead("rest", 3.94, 1820, "lock")] };
    const deepest = guide(far).at(-1)!;
    // From 670.97 mm on, in whole centimetres.
    expect(deepest.overdepthMm).toBe(680);
    expect(deepest).toMatchObject({ shotOnBed: ["No 8"], advice: "go-shallower" });
  });

  // Hook and bait of 0.02 g pull: 20.006 mm³/1.76715 mm² = 11.321 mm, off the float from 11.3 mm over depth.
  // The No 8 then touches at 80 + 11.321 mm.
  it("rises first by the hook and bait, which lie on the bed from dead depth on", () => {
    const lighter = { ...float, capacityG: 4 + 0.02 / 0.911843 };
    const withBait = { ...rig, float: lighter, hookAndBaitPullG: 0.02 };
    expect(at(withBait, 0).tipShowingMm).toBeCloseTo(100, 2);
    expect(at(withBait, 5).tipShowingMm).toBeCloseTo(105, 2);
    expect(at(withBait, 60).tipShowingMm).toBeCloseTo(111.321, 2);
    expect(at(withBait, 90).tipShowingMm).toBeCloseTo(111.321, 2);
    expect(at(withBait, 95).tipShowingMm).toBeCloseTo(115, 2);
  });
});

describe("the draught", () => {
  // The straight quill has 185 of its 200 mm under water: in 1 m the hook hangs 815 mm below its eye.
  it("counts towards the depth of the hook, or every setting is a float's length out", () => {
    const load = floatPullG(straightQuill, pool);
    expect(draughtMm(straightQuill, load, pool)).toBeCloseTo(185, 9);
    const rig = { depthMm: 1000, shot: [lead("AAA", 1.6, 815, "lock")] };
    expect(at(rig, 0).floatToHookMm).toBeCloseTo(815, 9);
    // A metre of line below the float, as if it had no draught, lays 185 mm of it on the bed.
    expect(at(rig, 185).floatToHookMm).toBeCloseTo(1000, 9);
  });
});

describe("a lift rig", () => {
  // 1.6 g to the mark, 0.4 g more takes the quill under by 0.364737 − 0.294438 = 0.070299 g. The anchor shot touches
  // at 50 mm and takes that off at once; then 19.635 mm² of water line carry the rest millimetre for millimetre.
  it("is under until its anchor touches, then shows tip as it is set deeper", () => {
    const rig = { shot: [lead("BB", 0.4, 50, "anchor"), lead("AAA", 1.6, 1800, "lock")] };
    expect(at(rig, 20)).toMatchObject({ state: "drags under", tipShowingMm: null });
    expect(at(rig, 60).tipShowingMm).toBeCloseTo(10, 6);
    // Whole pull 18.581 mm above the mark's 15 mm less 33.581 mm in all: it rests from 50 + 33.581 mm.
    expect(at(rig, 100).tipShowingMm).toBeCloseTo(15, 6);
    expect(at(rig, 100).shotOnBed).toEqual(["BB"]);
  });

  it("set too shallow starts at the nearest line that shows a tip, and says so", () => {
    const shot = [lead("BB", 0.4, 50, "anchor"), lead("AAA", 1.6, 1800, "lock")];
    const result = depthGuide({ ...still, shot, settingMm: 20 });
    const start = result.ok && result.value.find(({ advice }) => advice === "start-here");
    expect(start).toMatchObject({ state: "rests on the bed", shotOnBed: ["BB"] });
    expect(result.findings).toEqual([
      {
        code: "setting-too-shallow",
        severity: "warning",
        values: { deeperMm: (start as GuideStep).overdepthMm - 20 },
      },
    ]);
  });
});

describe("a float with too much shot at its lock", () => {
  it("has no guide, as it is under at every depth; what is too much, taken off, brings the tip to the water", () => {
    const line = lead("No 8", 0.06, 80, "telltale");
    const result = depthGuide({ ...still, shot: [line, lead("AAA", 2.4, 1800, "lock")] });
    const [finding] = result.findings;
    expect(finding).toMatchObject({ code: "load-sinks-float", severity: "error" });
    const { pullG: allG, mostPullG } = finding!.values as { pullG: number; mostPullG: number };
    expect(tipShowingMm(straightQuill, allG - (allG - mostPullG), pool)).toBeCloseTo(0, 6);
  });
});

describe("a hook with a bait that floats it", () => {
  // It would hang above the lowest shot: no line of a guide has a place for that.
  it("is refused with the lift that it has, and one that just sinks is not", () => {
    const rig = {
      ...still,
      float: { ...tippedFloat(1.5), capacityG: 3.9 },
      shot: [lead("No 8", 0.06, 80, "telltale")],
    };
    const floats = depthGuide({ ...rig, hookAndBaitPullG: -0.02 });
    expect(floats.ok).toBe(false);
    expect(floats.findings).toMatchObject([{ code: "hook-and-bait-float", values: { liftG: 0.02 } }]);
    const sinks = depthGuide({
      ...rig,
      hookAndBaitPullG: 0,
      shot: [...rig.shot, lead("rest", 3.85, 1800, "lock")],
    });
    expect(sinks.ok).toBe(true);
  });
});

describe("a float with its whole load on the bed", () => {
  it("lies flat, and the guide says how far too deep that is", () => {
    const rig = { float: stick, shot: [lead("No 4", 0.4, 200, "bulk"), lead("No 4", 0.4, 205, "bulk")] };
    const steps = guide(rig);
    expect(steps.find(({ overdepthMm }) => overdepthMm === 300)).toMatchObject({
      state: "lies flat",
      tipShowingMm: null,
      advice: "go-shallower",
    });
  });

  it("set so, starts at the nearest line that shows a tip, and says so", () => {
    const shot = [lead("No 4", 0.4, 200, "bulk"), lead("No 4", 0.4, 205, "bulk")];
    const result = depthGuide({ ...still, float: stick, shot, settingMm: 300 });
    const start = result.ok && result.value.find(({ advice }) => advice === "start-here");
    expect((start as GuideStep).tipShowingMm).toBeGreaterThan(5);
    expect(result.findings.map(({ code }) => code)).toEqual(["setting-too-deep"]);
  });
});

/** The lines of a guide; none for a rig that takes its float under wherever it is set. */
function guideOrSunk(input: Partial<DepthGuideInput>): readonly GuideStep[] {
  const result = depthGuide({ ...still, ...input });
  if (!result.ok) expect(result.findings.map(({ code }) => code)).toEqual(["load-sinks-float"]);
  return result.ok ? result.value : [];
}

/** Rigs of up to six shot on the line, with a lock that brings the float near its mark. */
const rigs = fc
  .record({
    float: fc.oneof(
      fc.constant<Float>(straightQuill),
      fc.double({ min: 1, max: 5, noNaN: true }).map((d) => tippedFloat(d)),
    ),
    depthMm: fc.double({ min: 700, max: 5000, noNaN: true }),
    hookAndBaitPullG: fc.double({ min: 0, max: 0.2, noNaN: true }),
    line: fc.array(
      fc.record({
        massG: fc.constantFrom(0.02, 0.04, 0.06, 0.1, 0.2),
        fromHookMm: fc.double({ min: 20, max: 300, noNaN: true }),
      }),
      { minLength: 1, maxLength: 6 },
    ),
    spareG: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
  })
  .map(({ line, spareG, ...rig }) => {
    const shot = line.map(({ massG, fromHookMm }) => lead("shot", massG, fromHookMm, "spread"));
    const left =
      rig.float.capacityG - spareG - rig.hookAndBaitPullG - shot.reduce((sum, s) => sum + s.massG, 0);
    return { ...rig, shot: left > 0 ? [...shot, lead("lock", left, 600, "lock")] : shot };
  });

describe("any rig", () => {
  it("in still water never shows less tip as it is set deeper", () => {
    fc.assert(
      fc.property(rigs, (rig) => {
        const tips = guideOrSunk(rig).flatMap(({ tipShowingMm: mm }) => mm ?? []);
        expect(tips.every((mm, i) => i === 0 || mm >= tips[i - 1]! - 1e-9)).toBe(true);
      }),
    );
  });

  it("keeps draught + float to hook = depth + overdepth, and its lines in order and apart", () => {
    fc.assert(
      fc.property(rigs, (rig) => {
        const total = rig.shot.reduce((sum, s) => sum + pullG(s.massG, s.metal, pool), rig.hookAndBaitPullG);
        const draught = draughtMm(rig.float, total, pool);
        const steps = guideOrSunk(rig);
        for (const [i, step] of steps.entries()) {
          expect(draught + step.floatToHookMm).toBeCloseTo(rig.depthMm + step.overdepthMm, 6);
          if (i > 0) expect(step.overdepthMm - steps[i - 1]!.overdepthMm).toBeGreaterThanOrEqual(5);
        }
      }),
    );
  });

  it("balances: what the float carries and what the bed carries make up the load", () => {
    fc.assert(
      fc.property(rigs, fc.double({ min: 0, max: 600, noNaN: true }), (rig, settingMm) => {
        const total = rig.shot.reduce((sum, s) => sum + pullG(s.massG, s.metal, pool), rig.hookAndBaitPullG);
        const hangingTip = tipShowingMm(rig.float, total, pool);
        const step = guideOrSunk({ ...rig, settingMm }).find(({ overdepthMm }) => overdepthMm === settingMm);
        if (!step || step.tipShowingMm === null || hangingTip === null) return;
        // The line below the float is slack by the overdepth less the rise; what is nearer the hook than that lies
        // on the bed, what is further hangs.
        const slack = settingMm - (step.tipShowingMm - hangingTip);
        const line = rig.shot.filter(({ role }) => role !== "lock");
        const pulls = (kept: (mm: number) => boolean) =>
          [
            { fromHookMm: 0, pull: rig.hookAndBaitPullG },
            ...line.map((s) => ({ ...s, pull: pullG(s.massG, s.metal, pool) })),
          ]
            .filter(({ fromHookMm }) => kept(fromHookMm))
            .reduce((sum, { pull }) => sum + pull, 0);
        const wholly = pulls((mm) => mm < slack - 1e-6);
        const atMost = pulls((mm) => mm < slack + 1e-6);
        const restingTip = (off: number) => tipShowingMm(rig.float, total - off, pool)!;
        expect(step.tipShowingMm).toBeGreaterThanOrEqual(restingTip(wholly) - 1e-6);
        expect(step.tipShowingMm).toBeLessThanOrEqual(restingTip(atMost) + 1e-6);
      }),
    );
  });
});

describe("a guide that cannot be had", () => {
  const shot = [lead("AAA", 1.6, 815, "lock")];
  it.each<[string, Partial<DepthGuideInput>]>([
    ["depth-not-positive", { depthMm: -1 }],
    ["depth-not-positive", { depthMm: Number.NaN }],
    ["depth-below-draught", { depthMm: 150 }],
    ["capacity-below-hook-and-bait", { hookAndBaitPullG: 2 }],
    ["setting-figure", { settingMm: Number.NaN }],
    ["hook-and-bait-figure", { hookAndBaitPullG: Number.NaN }],
    ["water-figure", { water: { tempC: Number.NaN, salinity: 0 } }],
    ["shot-not-on-line", { shot: [lead("AAA", 1.6, -5, "lock")] }],
    ["shot-above-float", { depthMm: 1000, shot: [...shot, lead("No 8", 0.06, 5000, "telltale")] }],
    ["load-does-not-cock", { shot: [lead("No 8", 0.06, 80, "telltale")] }],
    ["float-tip-zero", { float: tippedFloat(0) }],
  ])("says %s", (code, input) => {
    const result = depthGuide({ ...still, shot, ...input });
    expect(result.ok).toBe(false);
    expect(result.findings.map((finding) => finding.code)).toEqual([code]);
  });
});
