import fc from "fast-check";
import { expect, test } from "vitest";
import { scaleStretches } from "../../../src/drawing/rig/line-scale.ts";

const bare = (lengthMm: number) => ({ lengthMm, leastMm: 2, leastBrokenMm: 3 });
const whole = (lengthMm: number) => ({ lengthMm, leastMm: 2 });

test("stretches fill the room to one scale, none under its least", () => {
  const stretch = fc.record({
    lengthMm: fc.oneof(fc.constant(0), fc.double({ min: 0.1, max: 4000, noNaN: true })),
    leastMm: fc.double({ min: 0.5, max: 4, noNaN: true }),
    leastBrokenMm: fc.option(fc.constant(4), { nil: undefined }),
  });
  fc.assert(
    fc.property(fc.array(stretch, { minLength: 1, maxLength: 12 }), (stretches) => {
      const { drawn, scale } = scaleStretches(stretches, 60)!;
      const sum = drawn.reduce((total, { drawnMm }) => total + drawnMm, 0);
      if (scale > 0) expect(sum).toBeCloseTo(60, 6);
      for (const [i, { drawnMm, broken }] of drawn.entries()) {
        const { lengthMm, leastMm, leastBrokenMm } = stretches[i]!;
        expect(drawnMm).toBeGreaterThanOrEqual((broken ? leastBrokenMm! : leastMm) - 1e-9);
        if (broken) expect(leastBrokenMm).toBeDefined();
        else expect(drawnMm).toBeCloseTo(Math.max(leastMm, lengthMm * scale), 6);
      }
    }),
    { seed: 3 },
  );
});

test("a stretch far longer than the others is shortened and stays the longest", () => {
  const { drawn } = scaleStretches([bare(300), bare(250), bare(2000)], 60)!;
  expect(drawn.map(({ broken }) => broken)).toEqual([false, false, true]);
  expect(drawn[2]!.drawnMm).toBeGreaterThan(drawn[0]!.drawnMm);
  expect(drawn[0]!.drawnMm / drawn[1]!.drawnMm).toBeCloseTo(300 / 250, 9);
});

test("a stretch of twice the next length is drawn to scale, and so is one that may not be shortened", () => {
  expect(scaleStretches([bare(300), bare(600)], 60)!.drawn.some(({ broken }) => broken)).toBe(false);
  expect(scaleStretches([bare(300), whole(2000)], 60)!.drawn.some(({ broken }) => broken)).toBe(false);
});

test("no answer where the least lengths do not fit", () => {
  expect(scaleStretches([bare(10), bare(10)], 3.9)).toBeUndefined();
  expect(scaleStretches([bare(10), bare(10)], 4)).toBeDefined();
});
