import { expect, it } from "vitest";
import { cube, power } from "../../src/core/power.ts";

// The engine's own powers are the reference: they differ from version to version in the last digit only.
it.each([0.14, 0.38, 0.43, 1.256, 1.5, -0.89, -1.9, -7.7, -19.6, -40])("x to the power of %d", (exponent) => {
  for (let x = 0.05; x < 20; x += 0.0371) {
    const expected = x ** exponent;
    expect(Math.abs(power(x, exponent) / expected - 1)).toBeLessThan(1e-13);
  }
});

it("nothing and one are exact", () => {
  expect(power(0, 0.38)).toBe(0);
  expect(power(1, -19.6)).toBe(1);
  expect(power(0, -0.89)).toBe(Number.POSITIVE_INFINITY);
});

it("the third power is that of multiplication", () => {
  expect(cube(3)).toBe(27);
  expect(cube(-0.5)).toBe(-0.125);
});
