import fc from "fast-check";
import { expect, test } from "vitest";
import { rigWith, shotAt, sinks } from "./rigs.ts";

const draw = {
  massG: fc.double({ min: 0.05, max: 0.3, noNaN: true }),
  count: fc.integer({ min: 3, max: 7 }),
  lineMm: fc.double({ min: 0.1, max: 0.2, noNaN: true }),
};

/** Shot of one weight at equal gaps from a telltale up to the float. */
function evenly(depthMm: number, massG: number, count: number, telltale: readonly [number, number]) {
  const gap = (depthMm - telltale[1]) / (count + 1);
  return shotAt([
    telltale,
    ...Array.from({ length: count }, (_, i) => [massG, telltale[1] + gap * (i + 1)] as const),
  ]);
}

const inWater = (depthMm: number, lineMm: number) => ({
  floatToHookMm: depthMm,
  depthMm,
  mainLineDiameterMm: lineMm,
  hookLineDiameterMm: lineMm,
  hookLengthMm: 200,
});

// In a heap the shot fall unhindered to where their line is out, and what is left is the bait's own fall below the
// bulk: a bulk high in the lowest third, or in deep water, then has no lead left.
test.each([
  ["straight", "third", 1 / 3, 3500],
  ["heap", "quarter", 1 / 4, 2000],
] as const)(
  "landed %s, a bulk in the lowest %s beats the same load strung out",
  (landing, _, highest, deepestMm) => {
    fc.assert(
      fc.property(
        fc.integer({ min: 700, max: deepestMm }),
        fc.double({ min: 0.12, max: highest, noNaN: true }),
        draw.massG,
        draw.count,
        draw.lineMm,
        (depthMm, height, massG, count, lineMm) => {
          const telltale = [0.05, Math.min(150, 0.6 * height * depthMm)] as const;
          const bulk = shotAt([telltale, [massG * count, height * depthMm]]);
          const time = (shot: typeof bulk) =>
            sinks(rigWith(shot, inWater(depthMm, lineMm)), landing).tenthsS[9]!;
          expect(time(bulk)).toBeLessThan(time(evenly(depthMm, massG, count, telltale)));
        },
      ),
      { numRuns: 20, seed: 11, endOnFailure: true },
    );
  },
);

test("in shallow water a bulk half-way up is no quicker than strung out", () => {
  for (const depthMm of [600, 800, 1000]) {
    const telltale = [0.06, 150] as const;
    const bulk = shotAt([telltale, [1, depthMm / 2]]);
    const time = (shot: typeof bulk) => sinks(rigWith(shot, inWater(depthMm, 0.15)), "straight").tenthsS[9]!;
    expect(time(bulk)).toBeGreaterThan(time(evenly(depthMm, 0.2, 5, telltale)));
  }
});

test("laid out straight, the thinner the line the faster the fall", () => {
  fc.assert(
    fc.property(
      draw.massG,
      draw.count,
      fc.double({ min: 0.1, max: 0.16, noNaN: true }),
      (massG, count, lineMm) => {
        const shot = evenly(1500, massG, count, [0.06, 150]);
        const time = (mm: number) => sinks(rigWith(shot, inWater(1500, mm)), "straight").tenthsS[9]!;
        expect(time(lineMm)).toBeLessThan(time(1.25 * lineMm));
      },
    ),
    { numRuns: 8, seed: 12, endOnFailure: true },
  );
});

// Larger shot run at Reynolds numbers at which the drag coefficient of a ball rises again.
test("a strung rig of No 4 and smaller falls faster in warmer water", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(0.06, 0.1, 0.2),
      draw.count,
      fc.integer({ min: 2, max: 14 }),
      fc.constantFrom("straight" as const, "heap" as const),
      (massG, count, tempC, landing) => {
        const shot = evenly(1500, massG, count, [0.06, 150]);
        const time = (temp: number) =>
          sinks(rigWith(shot, { ...inWater(1500, 0.14), water: { tempC: temp, salinity: 0 } }), landing)
            .tenthsS[9]!;
        expect(time(tempC + 10)).toBeLessThan(time(tempC));
      },
    ),
    { numRuns: 8, seed: 13, endOnFailure: true },
  );
});

test("lead falls faster than tin of the same weight", () => {
  fc.assert(
    fc.property(
      draw.massG,
      draw.count,
      fc.constantFrom("straight" as const, "heap" as const),
      (massG, count, landing) => {
        const shot = evenly(1500, massG, count, [0.06, 150]);
        const tin = shot.map((one) => ({ ...one, metal: "tin" as const }));
        const time = (of: typeof shot) => sinks(rigWith(of, inWater(1500, 0.14)), landing).tenthsS[9]!;
        expect(time(shot)).toBeLessThan(time(tin));
      },
    ),
    { numRuns: 8, seed: 14, endOnFailure: true },
  );
});

test("laid out straight, a float that slides easily lets the rig down faster", () => {
  const shot = evenly(1500, 0.2, 5, [0.06, 150]);
  const time = (float: "held" | { massG: number; dragAreaCm2: number }) =>
    sinks(rigWith(shot, { ...inWater(1500, 0.14), float }), "straight").tenthsS[9]!;
  expect(time({ massG: 1, dragAreaCm2: 1 })).toBeLessThan(time({ massG: 10, dragAreaCm2: 20 }));
});
