import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  choosePlummet,
  keptForPlumbing,
  lightestPlummetG,
  type PlumbedFloat,
  plumbingSign,
  plumbingSteps,
} from "../../../src/core/depth/plumbing.ts";
import { tipShowingMm } from "../../../src/core/float/tip.ts";
import { pullG, type Shot } from "../../../src/core/tackle/shot.ts";
import { pool, stick, straightQuill } from "../floats.ts";

fc.configureGlobal({ seed: 20, numRuns: 200 });

/** The straight quill with nothing on it falls over as soon as nothing pulls at its foot. */
const bare: PlumbedFloat = { float: straightQuill, water: pool, markMm: 15, keptPullG: 0 };

describe("what the float says with a plummet on the hook", () => {
  // The quill stands with more than half its load, and 15 mm of it show: set 15 mm too shallow it is under.
  it.each([
    [-100, "goes under"],
    [-16, "goes under"],
    [-14, "stands too low"],
    [-5, "shows its mark"],
    [0, "shows its mark"],
    [5, "shows its mark"],
    [20, "stands too high"],
    [1000, "lies flat"],
  ])("set %d mm too deep: %s", (offMm, sign) => {
    expect(plumbingSign(bare, offMm)).toBe(sign);
  });

  it("stands too high where the shot that stay on it hold it up", () => {
    const kept = { ...bare, keptPullG: pullG(1.2, "lead", pool) };
    expect(plumbingSign(kept, 1000)).toBe("stands too high");
    // 0.4 g less than its mark: 18.581 mm of tip more, and no more than that however deep.
    expect(plumbingSign(kept, 21)).toBe("stands too high");
  });

  it("stands too low before it goes under where much of its tip should show", () => {
    const tall = { ...bare, markMm: 60 };
    expect(plumbingSign(tall, -40)).toBe("stands too low");
    expect(plumbingSign(tall, -61)).toBe("goes under");
  });
});

describe("plumbing", () => {
  it("finds 1.6 m from a first guess of 1 m", () => {
    // 1.0 under, 2.0 flat, 1.5 under, 1.75 flat, 1.63 too high by 30 mm, so 30 mm less.
    const steps = plumbingSteps(bare, 1600);
    expect(steps.ok && steps.value.map(({ settingMm, sign }) => [settingMm, sign])).toEqual([
      [1000, "goes under"],
      [2000, "lies flat"],
      [1500, "goes under"],
      [1750, "lies flat"],
      [1630, "stands too high"],
      [1600, "shows its mark"],
    ]);
  });

  it("ends where the tip shows its mark at any depth, each move leading to the next try", () => {
    fc.assert(
      fc.property(fc.double({ min: 50, max: 9000, noNaN: true }), (depthMm) => {
        const result = plumbingSteps(bare, depthMm);
        if (!result.ok) throw new Error("no steps");
        const steps = result.value;
        expect(Math.abs(steps.at(-1)!.settingMm - depthMm)).toBeLessThanOrEqual(5);
        for (let i = 1; i < steps.length; i++) {
          expect(steps[i]!.settingMm).toBe(steps[i - 1]!.settingMm + steps[i - 1]!.moveMm);
          expect(steps[i]!.settingMm).toBeGreaterThan(0);
        }
      }),
    );
  });

  it.each([
    [-1, 1000, 20, "depth-not-positive"],
    [Number.NaN, 1000, 20, "depth-not-positive"],
    [1500, 0, 20, "plumbing-guess"],
    [1500, 1, 20, "plumbing-guess"],
    [1500, 1000, 0, "plumbing-guess"],
  ])("of %d mm from %d to within %d says %s", (depthMm, guessMm, withinMm, code) => {
    const result = plumbingSteps(bare, depthMm, guessMm, withinMm);
    expect(result.ok).toBe(false);
    expect(result.findings[0]!.code).toBe(code);
  });
});

const lock = (massG: number): Shot => ({ size: `${massG} g`, massG, metal: "lead" });

describe("the shot that stay on for plumbing", () => {
  it("are the lightest of each side of the lock, so that none changes sides when the rest goes on", () => {
    const kept = keptForPlumbing({ below: [lock(0.8)], above: [lock(0.4), lock(0.1), lock(0.06)] });
    expect(kept).toEqual({ below: [lock(0.8)], above: [lock(0.06)] });
    expect(keptForPlumbing({ below: [lock(0.8)], above: [] })).toEqual({ below: [lock(0.8)], above: [] });
    expect(keptForPlumbing({ below: [], above: [] })).toEqual({ below: [], above: [] });
  });
});

describe("the plummet", () => {
  // The straight quill holds up 3.92582 g of water whole (3926.99 mm³), less its own 2.17244 g: 1.75338 g sink it.
  // With 0.12 g of lead left on, 0.10942 g of pull, 1.64396 g are missing: 1.64396/0.911843 = 1.80290 g of lead.
  it("for the straight quill with two No 8 left on must weigh 1.8 g in lead", () => {
    expect(lightestPlummetG(straightQuill, pullG(0.12, "lead", pool), "lead", pool)).toBeCloseTo(1.8029, 3);
  });

  it("just sinks the float, and one a little lighter does not", () => {
    const kept = pullG(0.12, "lead", pool);
    for (const float of [straightQuill, stick]) {
      const least = lightestPlummetG(float, kept, "brass", pool);
      expect(tipShowingMm(float, kept + pullG(least * 1.001, "brass", pool), pool)).toBeNull();
      expect(tipShowingMm(float, kept + pullG(least * 0.999, "brass", pool), pool)).not.toBeNull();
    }
  });

  it("is the lightest in the box that will do", () => {
    const box = [14, 2, 7, 1].map((massG) => ({ massG, metal: "brass" as const }));
    const choice = choosePlummet(straightQuill, 0, box, "brass", pool);
    expect(choice.ok && choice.value.plummet?.massG).toBe(2);
    expect(choice.findings).toEqual([]);
  });

  it("is taken for what its own metal pulls, whatever a new one would be made of", () => {
    // 1.7534 g sink it. In water of 0.9997 g/cm³ 1.95 g of brass (8.5) pull 1.7207 g; of lead (11.34) 1.7781 g.
    const box = (metal: "brass" | "lead") => [{ massG: 1.95, metal }];
    for (const asked of ["brass", "lead"] as const) {
      expect(choosePlummet(straightQuill, 0, box("brass"), asked, pool)).toMatchObject({
        value: { plummet: undefined },
      });
      expect(choosePlummet(straightQuill, 0, box("lead"), asked, pool)).toMatchObject({
        value: { plummet: { massG: 1.95 } },
      });
    }
  });

  it("brings a warning where none in the box will do", () => {
    const box = [{ massG: 1, metal: "brass" as const }];
    const choice = choosePlummet(straightQuill, 0, box, "brass", pool);
    expect(choice.ok && choice.value.plummet).toBe(undefined);
    expect(choice.findings[0]).toMatchObject({ code: "plummet-too-light", values: { heaviestG: 1 } });
    expect(choosePlummet(straightQuill, 0, [], "brass", pool).findings[0]!.code).toBe("plummet-too-light");
  });

  it("must weigh something", () => {
    const choice = choosePlummet(straightQuill, 0, [{ massG: Number.NaN, metal: "lead" }], "lead", pool);
    expect(choice.findings[0]!.code).toBe("plummet-weight");
  });
});
