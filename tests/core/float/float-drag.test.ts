import { describe, expect, it } from "vitest";
import { floatDragAreaCm2 } from "../../../src/core/float/float-drag.ts";

/** Long cylinder across the stream at Reynolds numbers of some hundreds. Source: Wieselsberger 1922 (NACA TN-84). */
const cylinder = 1.1;
/** Left of it for a length of twenty to forty diameters. Source: as above. */
const forLength = 0.8;
const at = (atMm: number, diameterMm: number) => ({ atMm, diameterMm });
/** Drag area of a part seen as large as this, to what its coefficient is rounded to. */
const expectArea = (found: number, seenMm2: number) =>
  expect(found / ((cylinder * forLength * seenMm2) / 100)).toBeCloseTo(0.9 / 0.88, 9);

describe("the drag of a float", () => {
  it("is that of a long cylinder on what is under water", () => {
    const tube = [at(0, 4.5), at(200, 4.5)];
    expectArea(floatDragAreaCm2(tube, 200), 4.5 * 200);
    expectArea(floatDragAreaCm2(tube, 150), 4.5 * 150);
  });

  it("counts a tapered part as the trapezoid that is seen of it", () => {
    const pear = [at(0, 2), at(60, 14), at(100, 6)];
    expectArea(floatDragAreaCm2(pear, 60), (60 * (2 + 14)) / 2);
    expectArea(floatDragAreaCm2(pear, 100), (60 * (2 + 14)) / 2 + (40 * (14 + 6)) / 2);
    // Half way up the lower part it is 8 mm thick.
    expectArea(floatDragAreaCm2(pear, 30), (30 * (2 + 8)) / 2);
  });

  it("counts nothing above the water, nor a shoulder, which has no height", () => {
    const shouldered = [at(0, 3), at(50, 3), at(50, 9), at(80, 9)];
    expectArea(floatDragAreaCm2(shouldered, 50), 3 * 50);
    expectArea(floatDragAreaCm2(shouldered, 70), 3 * 50 + 9 * 20);
    expect(floatDragAreaCm2(shouldered, 0)).toBe(0);
  });
});
