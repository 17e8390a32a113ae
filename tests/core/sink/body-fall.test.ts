import { expect, test } from "vitest";
import { type Body, fallTimeS, shotBody, terminalFallMs } from "../../../src/core/sink/body-fall.ts";
import { kinematicViscosityMm2S } from "../../../src/core/water/viscosity.ts";
import { waterDensityKgM3 } from "../../../src/core/water/water.ts";

const cold = { tempC: 10, salinity: 0 };
const mild = { tempC: 25, salinity: 0 };
function value<T>(found: { ok: true; value: T } | { ok: false }): T {
  if (!found.ok) throw new Error("no answer");
  return found.value;
}
const ball = (diameterMm: number, densityKgM3: number): Body => ({
  massG: densityKgM3 * 1e-6 * (Math.PI / 6) * diameterMm ** 3,
  densityKgM3,
});

// Mordant & Pinton 2000, European Physical Journal B 18:343: settling balls in water of 0.89 mm²/s.
test.each([
  ["0.5 mm glass", 0.5, 2.56, 0.0741, 0.08],
  ["1.5 mm glass", 1.5, 2.56, 0.218, 0.04],
  ["0.8 mm steel", 0.8, 7.71, 0.316, 0.04],
])("a ball of %s falls as Mordant & Pinton measured", (_, diameterMm, ratio, speedMs, tolerance) => {
  expect(kinematicViscosityMm2S(mild)).toBeCloseTo(0.89, 2);
  const fall = value(terminalFallMs(ball(diameterMm, ratio * waterDensityKgM3(mild)), mild));
  expect(Math.abs(fall / speedMs - 1)).toBeLessThan(tolerance);
});

// The fluids library's v_terminal with Cheng's formula, water at 10 °C.
test.each([
  ["lead 0.4 g", shotBody(0.4, "lead"), 1.16277],
  ["lead 0.06 g", shotBody(0.06, "lead"), 0.8134],
  ["tin 0.4 g", shotBody(0.4, "tin"), 0.97577],
  ["steel 2 mm", ball(2, 7850), 0.61609],
])("%s falls as a reference library has it", (_, body, speedMs) => {
  expect(Math.abs(value(terminalFallMs(body, cold)) / speedMs - 1)).toBeLessThan(2e-4);
});

test("from rest, under a constant drag coefficient, depth and time follow the closed form", () => {
  // v = v∞ tanh(g′t/v∞), so depth = v∞²/g′ · ln cosh(g′t/v∞).
  const body: Body = { massG: 0.15, densityKgM3: 1200, fallMs: 0.19 };
  // A ball moves half of the water that it pushes aside with it. Source: Lamb, Hydrodynamics, 6th edition, article 92.
  const water = waterDensityKgM3(cold);
  const gMmS2 = (9806.65 * (1200 - water)) / (1200 + water / 2);
  for (const t of [0.02, 0.05, 0.1, 0.3, 1, 5]) {
    const depthMm = (190 ** 2 / gMmS2) * Math.log(Math.cosh((gMmS2 * t) / 190));
    expect(Math.abs(value(fallTimeS(body, depthMm, cold)) / t - 1)).toBeLessThan(1e-4);
  }
});

test("a bait timed in a jar falls at that pace again", () => {
  // 30 cm in 6 s.
  const fallMs = 0.05;
  const maggot: Body = { massG: 0.04, densityKgM3: 1020, fallMs };
  expect(value(terminalFallMs(maggot, cold))).toBeCloseTo(0.05, 9);
  expect(value(fallTimeS(maggot, 1000, cold))).toBeGreaterThan(20);
  expect(value(fallTimeS(maggot, 1000, cold))).toBeLessThan(20.3);
});

test("bread that floats has no fall, and says so", () => {
  const crust: Body = { massG: 0.3, densityKgM3: 400 };
  for (const found of [terminalFallMs(crust, cold), fallTimeS(crust, 1000, cold)]) {
    expect(found.ok).toBe(false);
    expect(found.findings[0]?.code).toBe("fall-floats");
  }
});

test("no depth takes no time", () => {
  expect(value(fallTimeS(shotBody(0.2, "lead"), 0, cold))).toBe(0);
});
