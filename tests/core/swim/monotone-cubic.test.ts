import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { entry, neighbours, paired } from "../../../src/core/lists.ts";
import { heightOf, monotoneCubic } from "../../../src/core/swim/monotone-cubic.ts";

const knotsOf = (xs: readonly number[], ys: readonly number[]) => paired(xs, ys).map(([x, y]) => ({ x, y }));

/** Fritsch & Carlson 1980, data set RPN 14 (radiochemical calculations of theirs). */
const rpn14 = knotsOf(
  [7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20],
  [0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.94374, 0.998636, 0.999919, 0.999994],
);
/** H. Akima, "A new method of interpolation and smooth curve fitting", J. ACM 17 (1970), 589–602; the third of the sets. */
const akima = knotsOf([0, 2, 3, 5, 6, 8, 9, 11, 12, 14, 15], [10, 10, 10, 10, 10, 10, 10.5, 15, 50, 60, 85]);

const steps = Array.from({ length: 41 }, (_, i) => i / 40);

describe.each([
  ["RPN 14", rpn14],
  ["Akima's", akima],
])("through the published data %s", (_, knots) => {
  const cubic = monotoneCubic(knots);

  it("passes through each point and never falls, as the data never do", () => {
    for (const { x, y } of knots) expect(heightOf(cubic, x)).toBe(y);
    for (const [a, b] of neighbours(knots)) {
      const heights = steps.map((t) => heightOf(cubic, a.x + t * (b.x - a.x)));
      for (const [before, after] of neighbours(heights)) {
        expect(after - before).toBeGreaterThanOrEqual(-1e-12);
      }
    }
  });

  it("keeps its slopes within the paper's circle of radius 3, and level where the data are", () => {
    for (const [at, [a, b]] of neighbours(knots).entries()) {
      const secant = (b.y - a.y) / (b.x - a.x);
      const [from, to] = [entry(cubic.slopes, at), entry(cubic.slopes, at + 1)];
      if (secant === 0) expect([from, to]).toEqual([0, 0]);
      else expect(Math.hypot(from / secant, to / secant)).toBeLessThanOrEqual(3 + 1e-9);
    }
  });
});

it("has the slopes that the paper's two steps give by hand", () => {
  // Secants 1, 10 and 0. First: 1, 5.5, 0 (a level one follows), 0. Then on the first stretch the circle asks for
  // 3 / sqrt(1² + 5.5²) of both.
  const { slopes } = monotoneCubic(knotsOf([0, 1, 2, 3], [0, 1, 11, 11]));
  const share = 3 / Math.sqrt(1 + 5.5 * 5.5);
  expect(slopes).toEqual([share, 5.5 * share, 0, 0].map((slope) => expect.closeTo(slope, 12)));
});

it("is the cubic of Hermite between two points", () => {
  // Both slopes are those of the straight line where there are but two points.
  const cubic = monotoneCubic(knotsOf([2, 6], [1, 9]));
  expect(steps.map((t) => heightOf(cubic, 2 + 4 * t))).toEqual(
    steps.map((t) => expect.closeTo(1 + 8 * t, 12)),
  );
});

it("makes no hole and no hump between two points of any data, and turns round at points alone", () => {
  const list = fc.array(
    fc.tuple(fc.double({ min: 0.01, max: 5, noNaN: true }), fc.double({ min: 0, max: 10, noNaN: true })),
    {
      minLength: 2,
      maxLength: 12,
    },
  );
  fc.assert(
    fc.property(list, (pairs) => {
      let x = 0;
      const knots = pairs.map(([step, y]) => {
        x += step;
        return { x, y };
      });
      const cubic = monotoneCubic(knots);
      for (const knot of knots) expect(heightOf(cubic, knot.x)).toBe(knot.y);
      for (const [a, b] of neighbours(knots)) {
        const heights = steps.map((t) => heightOf(cubic, a.x + t * (b.x - a.x)));
        const way = Math.sign(b.y - a.y);
        for (const [before, after] of neighbours(heights)) {
          expect(way * (after - before)).toBeGreaterThanOrEqual(-1e-9);
        }
        expect(Math.min(...heights)).toBeGreaterThanOrEqual(Math.min(a.y, b.y) - 1e-9);
        expect(Math.max(...heights)).toBeLessThanOrEqual(Math.max(a.y, b.y) + 1e-9);
      }
    }),
    { seed: 20, numRuns: 120 },
  );
});
