import { describe, expect, test } from "vitest";
import { fitRig } from "../../src/browser/fit-rig.ts";
import type { ShotScale } from "../../src/core/tackle/shot.ts";
import { sampleStick, sampleWaggler } from "../support/sample-rig.ts";

const { rig } = sampleWaggler;
const scale: ShotScale = {
  id: "trade",
  title: "Round figures",
  sizes: rig.tub.map(({ size, massG }) => ({ name: size, massG })).concat({ name: "No 12", massG: 0.02 }),
};

function fitted(answers: Record<string, string>, of = rig) {
  return fitRig(of, scale, new Map(Object.entries(answers)), "metric first");
}

describe("a rig fitted to a reader's figures", () => {
  test("stays as it is where nothing is typed, at its first depth", () => {
    const { rig: own, problems } = fitted({});
    expect(problems).toEqual([]);
    expect(own).toEqual({ ...rig, depthsMm: [1500] });
  });

  // Feet and inches: 1 ft = 304.8 mm exactly (International Yard and Pound Agreement 1959); °F: (t − 32) · 5/9.
  test("takes figures in either system of units", () => {
    const { rig: own, problems } = fitted({
      depth: "6 ft",
      temperature: "50 F",
      rod: "13 ft",
      tip: "1/2 in",
    });
    expect(problems).toEqual([]);
    expect(own.depthsMm).toEqual([expect.closeTo(1828.8, 6)]);
    expect(own.conditions.tempC).toBeCloseTo(10, 10);
    expect(own.rodLengthMm).toBeCloseTo(3962.4, 6);
    expect(own.float.tipShowingMm).toBeCloseTo(12.7, 10);
  });

  test("takes the pace of running water", () => {
    expect(fitted({ pace: "10 m in 25 s" }, sampleStick.rig).rig.pacesMs).toEqual([0.4]);
  });

  test("takes a capacity as a load of the rig's scale, with its metal and how it is known", () => {
    const { rig: own } = fitted({
      capacity: "1 AAA + 2 BB",
      "capacity-metal": "tin",
      "capacity-basis": "measured",
    });
    expect(own.float.capacityG).toBeCloseTo(1.6, 12);
    expect(own.float.capacityMetal).toBe("tin");
    expect(own.float.capacityBasis).toBe("measured");
  });

  test("takes a float marked for twice the load to push twice as much water aside, a measured one to be itself", () => {
    const area = (float: typeof rig.float) => float.profile.map(({ diameterMm }) => diameterMm ** 2);
    const twice = fitted({ capacity: "4 AAA" }).rig.float;
    expect(area(twice)).toEqual(area(rig.float).map((one) => expect.closeTo(2 * one, 9)));
    expect(twice.profile.map(({ atMm }) => atMm)).toEqual(rig.float.profile.map(({ atMm }) => atMm));
    const measured = fitted({ capacity: "4 AAA", "capacity-basis": "measured" }).rig.float;
    expect(measured.profile).toEqual(rig.float.profile);
  });

  test("forgets the weight of the float once its capacity is another", () => {
    const weighed = { ...rig, float: { ...rig.float, weighedMassG: 2.2 } };
    expect(fitted({ tip: "15 mm" }, weighed).rig.float.weighedMassG).toBe(2.2);
    expect(fitted({ capacity: "3 AAA" }, weighed).rig.float).not.toHaveProperty("weighedMassG");
  });

  test("has the reader's box beside the guide's tub, in the guide's metals where none is said", () => {
    const { rig: own, box } = fitted({ box: "3 BB, lead No 10, No 12" });
    expect(own.tub).toEqual(rig.tub);
    expect(box?.map(({ size, metal, count }) => [size, metal, count])).toEqual([
      ["BB", "tin", 3],
      ["No 10", "lead", Number.POSITIVE_INFINITY],
      ["No 12", "tin", Number.POSITIVE_INFINITY],
    ]);
    expect(fitted({}).box).toBe(undefined);
  });

  test.each([
    ["depth", "6", "not-understood"],
    ["depth", "deep", "not-understood"],
    ["depth", " ", "missing"],
    ["depth", "5 cm", "out-of-range"],
    ["depth", "-2 m", "out-of-range"],
    ["temperature", "80 C", "out-of-range"],
    ["pace", "0 m/s", "out-of-range"],
    ["capacity", "2", "not-a-load"],
    ["capacity", "3 XYZ", "not-a-load"],
    ["box", "two BB", "not-a-box"],
    ["box", "1.5 BB", "not-a-box"],
    ["box", "-3 BB, No 8", "not-a-box"],
    ["box", "none", "not-a-box"],
  ])("tells that %s cannot be %s and keeps the rig's own figure", (field, typed, code) => {
    const { rig: own, problems } = fitted({ [field]: typed });
    expect(problems.map((problem) => [problem.field, problem.code])).toEqual([[field, code]]);
    expect(own).toEqual({ ...rig, depthsMm: [1500] });
  });

  test("still uses what can be read beside what cannot", () => {
    const { rig: own, problems } = fitted({ depth: "2 m", rod: "long" });
    expect(problems).toHaveLength(1);
    expect(own.depthsMm).toEqual([2000]);
  });
});
