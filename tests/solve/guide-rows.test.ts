import { describe, expect, it } from "vitest";
import type { GuideStep } from "../../src/core/depth/guide-step.ts";
import { guideRows } from "../../src/solve/guide-rows.ts";

const step = (overdepthMm: number, changes: Partial<GuideStep> = {}): GuideStep => ({
  overdepthMm,
  floatToHookMm: 1000 + overdepthMm,
  hookOffBedMm: Math.max(0, -overdepthMm),
  state: "hangs",
  shotOnBed: [],
  tipShowingMm: 15,
  advice: "go-deeper",
  moveMm: -overdepthMm,
  ...changes,
});

const ranges = (steps: readonly GuideStep[]) =>
  guideRows(steps).map(({ overdepthMm, toOverdepthMm }) => [overdepthMm, toOverdepthMm]);

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

  it("leave the line to start at by itself, and keep the move from either end", () => {
    const rows = guideRows([step(-200), step(-100), step(0, { advice: "start-here", moveMm: 0 })]);
    expect(rows.map(({ advice, moveMm, toMoveMm }) => [advice, moveMm, toMoveMm])).toEqual([
      ["go-deeper", 200, 100],
      ["start-here", 0, 0],
    ]);
  });
});
