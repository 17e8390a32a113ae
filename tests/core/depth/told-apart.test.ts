import { expect, it } from "vitest";
import type { GuideReading } from "../../../src/core/depth/guide-step.ts";
import { isToldAsBefore, untoldFrom, untoldLess, untoldStates } from "../../../src/core/depth/told-apart.ts";

// A tip is told to the nearest 5 mm (common practice, no source): 15.5 is told as 15, 18.8 and 21.4 as 20, 24 as 25.
const hangs: GuideReading = { state: "hangs", shotOnBed: [], tipShowingMm: 15.5 };
const touches: GuideReading = { state: "rests on the bed", shotOnBed: [], tipShowingMm: 15.5 };
const bait: GuideReading = { ...touches, tipShowingMm: 18.8 };
const one: GuideReading = { ...bait, shotOnBed: ["No 8"], tipShowingMm: 21.4 };
const two: GuideReading = { ...bait, shotOnBed: ["No 8", "No 8"], tipShowingMm: 24 };
const under: GuideReading = { state: "drags under", shotOnBed: ["No 8"], tipShowingMm: null };
const guide = [hangs, touches, bait, one, two];

it("finds the states that one tip stands for, each by its line that shows most", () => {
  expect(untoldStates(guide)).toEqual([{ less: bait, more: one }]);
});

it("tells of either what it cannot be told from, and of the one with more alone what has less", () => {
  expect([untoldFrom(bait, guide), untoldFrom(one, guide), untoldFrom(two, guide)]).toEqual([
    one,
    bait,
    undefined,
  ]);
  expect([untoldLess(bait, guide), untoldLess(one, guide)]).toEqual([undefined, bait]);
});

it("tells a line whose own tip is another", () => {
  expect(untoldFrom(touches, guide)).toBeUndefined();
});

it("holds lines against each other where something else lies on the bed, and the float shows a tip in both", () => {
  expect(isToldAsBefore(touches, hangs)).toBe(true);
  expect(isToldAsBefore({ ...bait, tipShowingMm: 19 }, bait)).toBe(false);
  expect(isToldAsBefore(under, { ...hangs, tipShowingMm: null })).toBe(false);
  expect(isToldAsBefore({ ...one, tipShowingMm: 22.6 }, bait)).toBe(false);
});
