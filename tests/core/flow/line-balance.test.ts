import { describe, expect, it } from "vitest";
import { balanceOf, type FlowRig, hangingFrom } from "../../../src/core/flow/line-balance.ts";
import { rigWith, shotAt } from "../sink/rigs.ts";

// In water at rest relative to the rig nothing drags: all that the line holds at its end are weights in water, m (1 − ρw/ρ) g.
// Water at 15 °C 0.99910 g/cm³, lead 11.34 g/cm³, nylon 1.14 g/cm³ (handbook values), g 9.80665 m/s² (CGPM 1901).
const g = 9806.65;
const inWaterUn = (massG: number, density: number) => massG * (1 - 0.9991 / density) * g;
const lineUn = (lengthMm: number, diameterMm: number) =>
  (Math.PI / 4) * diameterMm ** 2 * lengthMm * 1e-3 * (1.14 - 0.9991) * g;

const rig: FlowRig = {
  ...rigWith(
    shotAt([
      [0.1, 400],
      [0.4, 900],
      [0.8, 1500],
    ]),
    { floatToHookMm: 1500, hookLengthMm: 350, mainLineDiameterMm: 0.2, hookLineDiameterMm: 0.14 },
  ),
  floatDragAreaCm2: 6,
};
const bait = inWaterUn(0.15, 1.2);
const [shot, bulk] = [inWaterUn(0.1, 11.34), inWaterUn(0.4, 11.34)];
const still = () => 0;
const { lineUp } = balanceOf(rig);
const whole = { kind: "length", lengthMm: 1500 } as const;

describe("a line in water that stands still past it", () => {
  it("hangs straight down, and holds bait, line and shot, but not those that lock the float", () => {
    const line = lineUp(hangingFrom(1800), still, whole);
    expect(line.pushUn).toBe(0);
    const own = lineUn(350, 0.14) + lineUn(1150, 0.2);
    expect(line.weightUn / (bait + shot + bulk + own)).toBeCloseTo(1, 4);
    expect(line.points.at(-1)).toMatchObject({ fromHookMm: 1500, xMm: 0 });
    expect(line.points.at(-1)!.depthMm).toBeCloseTo(300, 9);
  });

  it.each([0, 0.25, 1])("leaves %d of what is where it leaves the bed to the bed, and all below", (share) => {
    const line = lineUp({ depthMm: 1800, lyingMm: 400, carriedShare: share }, still, whole);
    const own = lineUn(1100, 0.2);
    expect(line.weightUn / ((1 - share) * shot + bulk + own)).toBeCloseTo(1, 4);
    expect(line.lyingMm).toBe(400);
    expect(line.points.slice(0, 2)).toMatchObject([
      { fromHookMm: 0, xMm: 400, depthMm: 1800 },
      { fromHookMm: 400, xMm: 0, depthMm: 1800 },
    ]);
  });

  it("may be followed to a depth, to a thousandth of a millimetre", () => {
    const line = lineUp(hangingFrom(1800), still, { kind: "depth", depthMm: 1234, longestMm: 1500 });
    expect(line.points.at(-1)!.depthMm).toBeCloseTo(1234, 3);
    expect(line.points.at(-1)!.fromHookMm).toBeCloseTo(566, 3);
  });
});
