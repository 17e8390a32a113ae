import { describe, expect, it } from "vitest";
import { checkWhip, whipDepthLimitMm, whipLine, whipLineMm } from "../../../src/core/depth/whip.ts";
import { straightQuill } from "../floats.ts";

describe("the line of a whip", () => {
  // A whip of 4 m stood up, its butt by the hand that holds it: the hook hangs 30 cm above the butt.
  it("is the whip less 30 cm, so that the hook comes to hand (common practice, no source)", () => {
    expect(whipLineMm(4000)).toBe(3700);
    expect(whipLineMm(200)).toBe(0);
  });

  it("is shared between what hangs in the water and what is left above it", () => {
    // 3.7 m of line, 1.2 m of it in the water.
    expect(whipLine(4000, 1200)).toEqual({ lineMm: 3700, tipToWaterMm: 2500, reachMm: 6500 });
  });

  it("loses above the water, and of its reach, what is set deeper", () => {
    const [shallow, deep] = [whipLine(4000, 1000), whipLine(4000, 1400)];
    expect(shallow.tipToWaterMm - deep.tipToWaterMm).toBe(400);
    expect(shallow.reachMm - deep.reachMm).toBe(400);
    expect(shallow.lineMm).toBe(deep.lineMm);
  });

  it("leaves half a metre above the water at the deepest that it may be set (common practice, no source)", () => {
    const limitMm = whipDepthLimitMm(4000);
    expect(whipLine(4000, limitMm).tipToWaterMm).toBe(500);
    expect(checkWhip(straightQuill, limitMm, 4000)).toEqual([]);
    expect(checkWhip(straightQuill, limitMm + 1, 4000)).toMatchObject([
      { code: "whip-too-short", values: { limitMm: 3200 } },
    ]);
  });

  // The advice closes the loop: a whip as long as asked for has no more to say.
  it.each([1200, 2600, 3900])("of a whip longer by what is missing fishes %i mm", (hookDepthMm) => {
    const missingMm = Math.max(0, hookDepthMm - whipDepthLimitMm(3000));
    expect(checkWhip(straightQuill, hookDepthMm, 3000 + missingMm)).toEqual([]);
  });

  it("slides through no float", () => {
    expect(checkWhip({ ...straightQuill, attachment: "sliding" }, 1000, 4000)).toMatchObject([
      { code: "whip-sliding-float" },
    ]);
  });
});
