import convert from "convert";
import { describe, expect, it } from "vitest";
import { type ParsedQuantity, parseQuantity, type QuantityKind } from "../../src/core/quantity.ts";

const value = (kind: QuantityKind, text: string): number => {
  const read = parseQuantity(kind, text);
  if (!read.ok) throw new Error(`${text}: ${read.problem}`);
  return read.value;
};

const problem = (read: ParsedQuantity) => (read.ok ? `read as ${read.value}` : read.problem);

describe("quantities agree with the convert package", () => {
  it.each([
    ["6 ft", convert(6, "feet").to("millimeters")],
    ["3 yd", convert(3, "yards").to("millimeters")],
    ["7 in", convert(7, "inches").to("millimeters")],
    ["30 cm", convert(30, "centimeters").to("millimeters")],
    ["1.5m", convert(1.5, "meters").to("millimeters")],
  ])("length %s", (text, mm) => expect(value("length", text)).toBeCloseTo(mm, 9));

  it.each([
    ["4 lb", convert(4, "pounds").to("grams")],
    ["2 oz", convert(2, "ounces").to("grams")],
    ["0.4 g", 0.4],
    ["1.8 kg", convert(1.8, "kilograms").to("grams")],
    ["12.5 gr", convert(12.5, "grains").to("grams")],
  ])("mass %s", (text, g) => expect(value("mass", text)).toBeCloseTo(g, 9));

  it.each([
    ["2 US pints", convert(2, "pints").to("milliliters")],
    ["2 imperial pints", convert(2, "imperial pints").to("milliliters")],
    ["1.5 l", convert(1.5, "liters").to("milliliters")],
    ["2.5 litres", convert(2.5, "liters").to("milliliters")],
    ["50 cl", convert(50, "centiliters").to("milliliters")],
  ])("volume %s", (text, ml) => expect(value("volume", text)).toBeCloseTo(ml, 6));

  it.each([
    ["50 F", convert(50, "fahrenheit").to("celsius")],
    ["-4 °F", convert(-4, "fahrenheit").to("celsius")],
    ["12 C", 12],
  ])("temperature %s", (text, c) => expect(value("temperature", text)).toBeCloseTo(c, 9));
});

describe("every spelling of a unit", () => {
  // By definition: the international yard and pound of 1959 (NIST SP 811, appendix B.8), the pint of the United Kingdom (Weights
  // and Measures Act 1985, schedule 1) and that of the United States, an eighth of 231 cubic inches (NIST Handbook 44, appendix C).
  const [inch, foot, yard] = [25.4, 304.8, 914.4];
  const [grain, ounce, pound] = [0.06479891, 28.349523125, 453.59237];
  const units: Readonly<Partial<Record<QuantityKind, Readonly<Record<string, number>>>>> = {
    length: {
      ...{ mm: 1, cm: 10, m: 1000 },
      ...{ in: inch, inch, inches: inch, '"': inch, ft: foot, foot, feet: foot, "'": foot },
      ...{ yd: yard, yard, yards: yard },
    },
    mass: { mg: 0.001, g: 1, kg: 1000, gr: grain, grain, grains: grain, oz: ounce, lb: pound, lbs: pound },
    time: { s: 1, sec: 1, min: 60, h: 3600, hour: 3600, hours: 3600 },
    volume: {
      ...{ ml: 1, cl: 10, l: 1000, litre: 1000, litres: 1000 },
      ...{ "imperial pint": 568.26125, "imperial pints": 568.26125 },
      ...{ "us pint": 473.176473, "us pints": 473.176473 },
    },
    pace: { "m/s": 1, "cm/s": 0.01, "ft/s": 0.3048, "km/h": 1 / 3.6, mph: 0.44704 },
    density: { "g/cm3": 1000, "g/cm³": 1000, "kg/m3": 1, "kg/m³": 1 },
  };
  const spellings = Object.entries(units).flatMap(([kind, values]) =>
    Object.entries(values).map(([unit, one]) => [kind as QuantityKind, unit, one] as const),
  );
  it.each(spellings)("%s: %s", (kind, unit, one) => expect(value(kind, `3 ${unit}`)).toBeCloseTo(3 * one, 5));
});

describe("quantities in the forms people type", () => {
  it("adds up feet and inches, pounds and ounces", () => {
    expect(value("length", "4 ft 6 in")).toBeCloseTo(54 * 25.4, 9);
    expect(value("length", "5' 10\"")).toBeCloseTo(70 * 25.4, 9);
    expect(value("mass", "1 lb 12 oz")).toBeCloseTo(28 * 28.349523125, 9);
  });

  it("counts a minus for the whole sum", () => {
    expect(value("length", "-1 ft 6 in")).toBeCloseTo(-18 * 25.4, 9);
  });

  it("reads fractions", () => {
    expect(value("length", "1/2 in")).toBeCloseTo(12.7, 9);
    expect(value("length", "1 1/2 in")).toBeCloseTo(38.1, 9);
    expect(value("share", "2/3")).toBeCloseTo(2 / 3, 12);
  });

  it("reads a pace as a way in a time", () => {
    expect(value("pace", "10 m in 25 s")).toBeCloseTo(0.4, 12);
    expect(value("pace", "10 yd in 25 s")).toBeCloseTo(0.36576, 9);
    expect(value("pace", "30 cm in 6 s")).toBeCloseTo(0.05, 12);
    expect(value("pace", "0.4 m/s")).toBe(0.4);
    expect(value("pace", "30 cm/s")).toBeCloseTo(0.3, 12);
    expect(value("pace", "3.6 km/h")).toBeCloseTo(1, 12);
    // NIST SP 811, appendix B.8.
    expect(value("pace", "2 ft/s")).toBeCloseTo(2 * 0.3048, 12);
    expect(value("pace", "1 mph")).toBeCloseTo(0.44704, 12);
  });

  it("reads densities and shares", () => {
    expect(value("density", "1.02 g/cm3")).toBeCloseTo(1020, 9);
    expect(value("share", "70 %")).toBeCloseTo(0.7, 12);
  });
});

describe("what is no quantity is said to be none", () => {
  it.each<[QuantityKind, string, string]>([
    ["length", "30", "no unit"],
    ["length", "deep", "no number"],
    ["length", "", "no number"],
    ["length", "30 stones", "unknown unit"],
    ["length", "30 constructor", "unknown unit"],
    ["length", "3 m deep", "not understood"],
    ["volume", "2 pints", "pint of which country"],
    ["mass", "4 cm", "unknown unit"],
    ["temperature", "12", "no unit"],
    ["temperature", "12 K", "unknown unit"],
    ["share", "0.7", "no unit"],
    ["pace", "10 m in 0 s", "not understood"],
    ["pace", "10 in 25 s", "no unit"],
    ["length", "1/0 m", "no number"],
  ])("%s %s: %s", (kind, text, expected) => {
    expect(problem(parseQuantity(kind, text))).toBe(expected);
  });

  it("gives examples of what is right", () => {
    expect(parseQuantity("length", "30")).toMatchObject({
      ok: false,
      examples: expect.arrayContaining(["30 cm"]),
    });
  });
});

describe("a figure out of all sense", () => {
  it.each([
    ["length", "1001 m"],
    ["length", `${"9".repeat(400)} m`],
    ["length", `0.${"0".repeat(20)}1 mm`],
    ["mass", "1000.1 kg"],
    ["pace", "101 m/s"],
    ["time", "1000100 s"],
    ["temperature", "1001 C"],
    ["volume", "1000.1 l"],
    ["density", "100.1 g/cm3"],
    ["share", "100001 %"],
    ["share", "1/0"],
    ["volume", `1${"0".repeat(300)} l`],
  ] as const)("%s %s is no quantity", (kind, text) => {
    expect(parseQuantity(kind, text)).toMatchObject({ ok: false });
  });

  it.each([
    ["length", "1 km", "unknown unit"],
    ["length", "1000 m", undefined],
    ["length", "0 mm", undefined],
    ["mass", "1000 kg", undefined],
    ["time", "1000000 s", undefined],
    ["temperature", "1000 C", undefined],
    ["volume", "1000 l", undefined],
    ["density", "100 g/cm3", undefined],
    ["share", "100000 %", undefined],
    ["pace", "100 m/s", undefined],
  ] as const)("%s %s stands at the edge of what is", (kind, text, problem) => {
    const read = parseQuantity(kind, text);
    expect(read.ok ? undefined : read.problem).toBe(problem);
  });
});
