import { describe, expect, it } from "vitest";
import type { GuideStep } from "../../src/core/depth/depth-guide.ts";
import { guideRows } from "../../src/solve/guide-rows.ts";

const step = (overdepthMm: number, changes: Partial<GuideStep> = {}): GuideStep => ({
  overdepthMm,
  floatToHookMm: 1000 + overdepthMm,
  state: "hangs",
  shotOnBed: [],
  tipShowingMm: 15,
  advice: "deepen",
  ...changes,
});

const ranges = (steps: readonly GuideStep[], settingMm = 0) =>
  guideRows(steps, settingMm).map(({ overdepthMm, toOverdepthMm }) => [overdepthMm, toOverdepthMm]);

describe("lines of the depth guide that say the same", () => {
  it("become one", () => {
    expect(ranges([step(-300), step(-200), step(-100)])).toEqual([[-300, -100]]);
  });

  it("stay apart where the tip reads another 5 mm", () => {
    expect(ranges([step(100), step(200, { tipShowingMm: 20 })])).toEqual([
      [100, 100],
      [200, 200],
    ]);
  });

  it("stay apart where another shot rests", () => {
    const resting = { state: "rests on the bed" as const, shotOnBed: ["No 8"] };
    expect(ranges([step(100, { state: "rests on the bed" }), step(200, resting)])).toHaveLength(2);
  });

  it("become one wherever the float is dragged under, whatever drags it", () => {
    const under = (at: number, shotOnBed: string[]) =>
      step(at, { state: "drags under", tipShowingMm: null, shotOnBed });
    expect(ranges([under(300, ["No 8"]), under(400, ["No 8", "No 8"])])).toEqual([[300, 400]]);
  });

  it("leave the rig's own setting a line to itself", () => {
    const rows = guideRows([step(-100), step(1), step(100)], 0);
    expect(rows.map(({ chosen }) => chosen)).toEqual([false, true, false]);
  });
});
