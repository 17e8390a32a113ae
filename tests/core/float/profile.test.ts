import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  diameterAtMm,
  heightOfVolumeMm,
  momentBelowMm4,
  type Profile,
  volumeBelowMm3,
} from "../../../src/core/float/profile.ts";

fc.configureGlobal({ seed: 20, numRuns: 200 });

const cylinder: Profile = [
  { atMm: 0, diameterMm: 10 },
  { atMm: 100, diameterMm: 10 },
];
const cone: Profile = [
  { atMm: 0, diameterMm: 0 },
  { atMm: 60, diameterMm: 20 },
];
const frustum: Profile = [
  { atMm: 0, diameterMm: 4 },
  { atMm: 30, diameterMm: 8 },
];

/** Any float-like outline: a foot that may be pointed, then two to six points upward. */
const profiles: fc.Arbitrary<Profile> = fc
  .tuple(
    fc.double({ min: 0, max: 20, noNaN: true }),
    fc.array(
      fc.record({
        riseMm: fc.oneof(fc.constant(0), fc.double({ min: 0.5, max: 80, noNaN: true })),
        diameterMm: fc.double({ min: 0.5, max: 30, noNaN: true }),
      }),
      { minLength: 2, maxLength: 6 },
    ),
  )
  .map(([foot, rises]) => {
    let atMm = 0;
    const above = rises.map(({ riseMm, diameterMm }, i) => {
      atMm += i === 0 ? riseMm + 1 : riseMm;
      return { atMm, diameterMm };
    });
    return [{ atMm: 0, diameterMm: foot }, ...above];
  });

/** Simpson's rule on the area, an independent way to the same integrals; exact for areas of second degree. */
function simpson(profile: Profile, weight: (z: number) => number): number {
  let sum = 0;
  for (let i = 1; i < profile.length; i++) {
    const below = profile[i - 1]!;
    const above = profile[i]!;
    const pieces = 64;
    const h = (above.atMm - below.atMm) / pieces;
    const at = (k: number) => {
      const share = k / pieces;
      const d = below.diameterMm + (above.diameterMm - below.diameterMm) * share;
      return (Math.PI / 4) * d * d * weight(below.atMm + (above.atMm - below.atMm) * share);
    };
    for (let k = 0; k < pieces; k++) sum += (h / 6) * (at(k) + 4 * at(k + 0.5) + at(k + 1));
  }
  return sum;
}

describe("volume below a height", () => {
  it("is πd²h/4 for a cylinder", () => {
    expect(volumeBelowMm3(cylinder, 40)).toBeCloseTo((Math.PI / 4) * 100 * 40, 9);
  });

  it("is πd²h/12 for a cone, and an eighth of it at half height", () => {
    const whole = (Math.PI / 12) * 400 * 60;
    expect(volumeBelowMm3(cone, 60)).toBeCloseTo(whole, 9);
    expect(volumeBelowMm3(cone, 30)).toBeCloseTo(whole / 8, 9);
  });

  it("is πh(d² + dD + D²)/12 for a frustum", () => {
    expect(volumeBelowMm3(frustum, 30)).toBeCloseTo(((Math.PI * 30) / 12) * (16 + 32 + 64), 9);
  });

  it("does not change on a shoulder and stops at the ends", () => {
    const shouldered: Profile = [...cylinder, { atMm: 100, diameterMm: 2 }, { atMm: 150, diameterMm: 2 }];
    expect(volumeBelowMm3(shouldered, 100)).toBe(volumeBelowMm3(cylinder, 100));
    expect(volumeBelowMm3(shouldered, 1000)).toBe(volumeBelowMm3(shouldered, 150));
    expect(volumeBelowMm3(shouldered, -1)).toBe(0);
  });

  it("equals the integral of the area, and so does its moment", () => {
    fc.assert(
      fc.property(profiles, (profile) => {
        const top = profile.at(-1)!.atMm;
        const volume = simpson(profile, () => 1);
        expect(Math.abs(volumeBelowMm3(profile, top) / volume - 1)).toBeLessThan(1e-12);
        expect(Math.abs(momentBelowMm4(profile, top) / simpson(profile, (z) => z) - 1)).toBeLessThan(1e-9);
      }),
    );
  });
});

describe("height of a volume", () => {
  it("is 4V/πd² in a cylinder", () => {
    expect(heightOfVolumeMm(cylinder, 1000)).toBeCloseTo(4000 / (Math.PI * 100), 12);
  });

  it("is the cube root of the share in a cone", () => {
    const whole = (Math.PI / 12) * 400 * 60;
    expect(heightOfVolumeMm(cone, whole * 0.3)).toBeCloseTo(60 * Math.cbrt(0.3), 11);
  });

  it("finds again the height whose volume it is given, to 1e-9 mm", () => {
    fc.assert(
      fc.property(profiles, fc.double({ min: 1e-6, max: 1, noNaN: true }), (profile, share) => {
        const height = share * profile.at(-1)!.atMm;
        expect(heightOfVolumeMm(profile, volumeBelowMm3(profile, height))).toBeCloseTo(height, 8);
      }),
    );
  });

  it("agrees with halving the interval", () => {
    fc.assert(
      fc.property(profiles, fc.double({ min: 0.001, max: 0.999, noNaN: true }), (profile, share) => {
        const volume = share * volumeBelowMm3(profile, Infinity);
        let low = 0;
        let high = profile.at(-1)!.atMm;
        for (let i = 0; i < 60; i++) {
          const half = (low + high) / 2;
          if (volumeBelowMm3(profile, half) < volume) low = half;
          else high = half;
        }
        expect(heightOfVolumeMm(profile, volume)).toBeCloseTo(low, 8);
      }),
    );
  });

  it("stops at the ends", () => {
    expect(heightOfVolumeMm(cone, -1)).toBe(0);
    expect(heightOfVolumeMm(cone, 0)).toBe(0);
    expect(heightOfVolumeMm(cone, 1e9)).toBe(60);
  });

  it("does not lose digits where a piece is all but a cylinder", () => {
    const nearly: Profile = [
      { atMm: 0, diameterMm: 4 },
      { atMm: 100, diameterMm: 4 + 1e-13 },
    ];
    expect(heightOfVolumeMm(nearly, Math.PI * 4 * 25)).toBeCloseTo(25, 10);
  });
});

describe("diameter at a height", () => {
  it("lies on the line between two points", () => {
    expect(diameterAtMm(frustum, 15)).toBeCloseTo(6, 12);
  });

  it("is that of the part below on a shoulder", () => {
    expect(diameterAtMm([...cylinder, { atMm: 100, diameterMm: 2 }, { atMm: 150, diameterMm: 2 }], 100)).toBe(
      10,
    );
  });
});
