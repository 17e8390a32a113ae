import { describe, expect, it } from "vitest";
import type { Float } from "../../../src/core/float/float.ts";
import { checkFloat } from "../../../src/core/float/float-check.ts";
import { valuesOf } from "../../support/findings.ts";
import { pool, stick, straightQuill, tippedFloat } from "../floats.ts";

const codes = (float: Float) => checkFloat(float, pool).map(({ code }) => code);
const changed = (changes: Partial<Float>): Float => ({ ...straightQuill, ...changes });
const shape = (...points: [number, number][]) => points.map(([atMm, diameterMm]) => ({ atMm, diameterMm }));

describe("a float's figures", () => {
  it.each([straightQuill, stick, tippedFloat(1.5), tippedFloat(5)])("pass where they agree", (float) => {
    expect(checkFloat(float, pool)).toEqual([]);
  });

  it.each<[string, Partial<Float>]>([
    ["float-profile-short", { profile: [] }],
    ["float-profile-short", { profile: shape([0, 5]) }],
    ["float-profile-short", { profile: shape([10, 5], [200, 5]) }],
    ["float-profile-short", { profile: shape([0, 5], [0, 5]) }],
    ["float-profile-falls", { profile: shape([0, 5], [90, 5], [80, 5]) }],
    ["float-figure", { profile: shape([0, 5], [Number.NaN, 5]) }],
    ["float-figure", { profile: shape([0, 5], [Number.POSITIVE_INFINITY, 5]) }],
    ["float-figure", { profile: shape([0, 5], [1_010_000, 5]) }],
    ["float-figure", { profile: shape([0, 9e-7], [200, 5]) }],
    ["float-figure", { weighedMassG: Number.NaN }],
    ["float-profile-diameter", { profile: shape([0, 5], [90, 0], [200, 5]) }],
    ["float-profile-diameter", { profile: shape([0, -1], [200, 5]) }],
    ["float-tip-zero", { profile: shape([0, 5], [200, 0]) }],
    ["float-tip-showing", { tipShowingMm: 0 }],
    ["float-tip-showing", { tipShowingMm: 200 }],
    ["float-figure", { tipShowingMm: Number.NaN }],
    ["float-capacity", { capacityG: 0 }],
    ["float-capacity", { capacityG: -1 }],
    ["float-figure", { capacityG: Number.NaN }],
    ["float-self-load", { selfLoadG: -1 }],
    ["float-self-load", { selfLoadG: 3 }],
    ["float-weighed-mass", { weighedMassG: 0 }],
  ])("are refused as %s", (code, changes) => {
    expect(codes(changed(changes))).toEqual([code]);
  });

  it("may have a pointed foot and a shoulder", () => {
    expect(codes(changed({ profile: shape([0, 0], [10, 5], [190, 5], [190, 4], [200, 4]) }))).toEqual([]);
  });
});

describe("profile against capacity", () => {
  // 3.63 g of water below the mark; 3.6 g of lead pull 3.28 g of it, which leaves 0.35 g for 3927 mm³: 89 kg/m³.
  // With 3.7 g of lead 0.26 g are left: 66 kg/m³. With 0.1 g, 3.54 g: 901 kg/m³.
  it.each([
    [3.6, true],
    [3.7, false],
    [5, false],
    [0.1, false],
  ])("with %d g of shot on the straight quill is believed: %s", (capacityG, believed) => {
    expect(codes(changed({ capacityG })).some((code) => code.startsWith("float-density"))).toBe(!believed);
  });

  it("asks for the figure that is least to be trusted", () => {
    expect(codes(changed({ capacityG: 5 }))).toEqual(["float-density-marked"]);
    expect(codes(changed({ capacityG: 5, capacityBasis: "measured" }))).toEqual(["float-density-measured"]);
    expect(codes(changed({ weighedMassG: 5 }))).toEqual(["float-density-weighed"]);
  });

  // Implied 2.17 g; 15 % of 3.63 g is 0.54 g.
  it("warns where a weighed float is far from its figures", () => {
    expect(codes(changed({ weighedMassG: 1.7 }))).toEqual([]);
    expect(codes(changed({ weighedMassG: 1.5 }))).toEqual(["float-weighed-against-marked"]);
    expect(codes(changed({ weighedMassG: 1.5, capacityBasis: "measured" }))).toEqual([
      "float-weighed-against-measured",
    ]);
  });
});

describe("a float that never cocks", () => {
  it("is refused with the pull that it cannot stand under", () => {
    const thickTop = tippedFloat(9, { capacityG: 1.5 });
    const [finding] = checkFloat(thickTop, pool);
    expect(finding).toMatchObject({ code: "float-never-cocks", severity: "error" });
    expect(valuesOf([finding!], "float-never-cocks").pullG).toBeCloseTo(1.5 * 0.911843, 4);
  });
});
