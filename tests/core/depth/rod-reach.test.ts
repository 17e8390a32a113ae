import { describe, expect, it } from "vitest";
import {
  checkReach,
  fixedFloatLimitMm,
  recordDepth,
  slidingLoadMinG,
  slidingSetup,
} from "../../../src/core/depth/rod-reach.ts";
import { straightQuill } from "../floats.ts";

const slider = { ...straightQuill, attachment: "sliding" as const };

describe("the reach of a rod", () => {
  it("is the rod less 30 cm for a fixed float (common practice, no source)", () => {
    expect(fixedFloatLimitMm(3600)).toBe(3300);
    expect(fixedFloatLimitMm(200)).toBe(0);
    expect(checkReach(straightQuill, 3400, 3300, 3600, 1.6)).toEqual([]);
  });

  it("asks for a sliding float beyond it", () => {
    const [finding] = checkReach(straightQuill, 3500, 3301, 3600, 1.6);
    expect(finding).toMatchObject({ code: "sliding-float-needed", values: { limitMm: 3300 } });
  });

  it("asks a sliding float for 2.4 g to 14 ft and 3.2 g beyond (common practice, no source)", () => {
    expect(slidingLoadMinG(4267)).toBe(2.4);
    expect(slidingLoadMinG(4268)).toBe(3.2);
    expect(slidingSetup(4268, 4100)).toEqual({ stopKnotFromHookMm: 4100, stopKnots: 2, loadMinG: 3.2 });
    expect(checkReach(slider, 4000, 3800, 3600, 2.4)).toEqual([]);
    expect(checkReach(slider, 4000, 3800, 3600, 1.6)[0]!.code).toBe("sliding-float-too-light");
  });
});

describe("a depth kept for another day", () => {
  it("is a mark on the rod and a count of hand-spans", () => {
    expect(recordDepth(1315, 2600, 190)).toMatchObject({
      ok: true,
      value: { rodLengths: 0, markMm: 1315, handSpans: 6, restMm: 175 },
    });
  });

  // 3 m along 2.6 m of rod: up to the tip, then 40 cm back down.
  it("turns at the rod tip where the line is longer", () => {
    const record = recordDepth(3000, 2600, 200);
    expect(record.ok && [record.value.rodLengths, record.value.markMm]).toEqual([1, 2200]);
  });

  it.each([
    [0, 2600, 190, "record-float-to-hook"],
    [1315, -1, 190, "record-rod"],
    [1315, 2600, Number.NaN, "record-hand-span"],
  ])("of %d mm on %d mm with a span of %d mm says %s", (line, rod, span, code) => {
    expect(recordDepth(line, rod, span).findings[0]!.code).toBe(code);
  });
});
