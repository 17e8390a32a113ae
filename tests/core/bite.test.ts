import { expect, test } from "vitest";
import { bitePull, type FeltShot, hardestStepG } from "../../src/core/bite.ts";
import { valueIn } from "./sink/rigs.ts";

const float = { tipDiameterMm: 3, tipBelowMm: 200 };
const bite = (shot: readonly FeltShot[], baitAndHookG = 0.05) =>
  valueIn(bitePull(shot, baitAndHookG, float, 1400, 0.2, 1000));
const row = (pullG: number, places: readonly number[]): FeltShot[] =>
  places.map((fromHookMm) => ({ pullG, fromHookMm }));

const telltale = row(0.05, [100]);
const bulk = [...telltale, ...row(0.2, [500, 500, 500, 500])];
const spreadBulk = [...telltale, ...row(0.2, [400, 460, 520, 580])];
const strung = [...telltale, ...row(0.2, [300, 500, 700, 900])];

test("a shot is carried from twice its distance from the hook", () => {
  const steps = bite(telltale);
  expect(steps[0]).toEqual({ liftMm: 0, timeS: 0, feltG: 0.05, tipRiseMm: expect.any(Number) });
  expect(steps[19]!.feltG).toBeCloseTo(0.05, 12);
  expect(steps[20]!.feltG).toBeCloseTo(0.1, 12);
  expect(steps[20]!.timeS).toBeCloseTo(1, 12);
});

test("the tip comes up by the weight taken off it", () => {
  // 0.1 g over a tip of 3 mm: 0.1 / (0.001 · π/4 · 9) = 14.1 mm.
  expect(bite(telltale)[20]!.tipRiseMm).toBeCloseTo(14.147, 3);
});

test("opening out a bulk softens the bite: the same weight, in smaller steps", () => {
  expect(hardestStepG(bite(bulk))).toBeCloseTo(0.8, 9);
  expect(hardestStepG(bite(spreadBulk))).toBeCloseTo(0.2, 9);
  expect(hardestStepG(bite(strung))).toBeCloseTo(0.2, 9);
  for (const shot of [bulk, spreadBulk]) expect(bite(shot).at(-1)!.feltG).toBeCloseTo(0.9, 9);
});

test("strung out the first shot comes on sooner than the bulk does", () => {
  const first = (shot: readonly FeltShot[]) => bite(shot).find((step) => step.feltG > 0.15)!.liftMm;
  expect(first(strung)).toBeLessThan(first(spreadBulk));
  expect(first(spreadBulk)).toBeLessThan(first(bulk));
});

test("a tip can come up no further than there is of it", () => {
  const steps = valueIn(bitePull(bulk, 0.05, { tipDiameterMm: 2, tipBelowMm: 60 }, 1200, 0.2, 1000));
  expect(steps.at(-1)!.tipRiseMm).toBe(60);
});

test("a rise of no pace or a tip of no thickness has no answer", () => {
  expect(bitePull(bulk, 0.05, float, 1000, 0, 1000).ok).toBe(false);
  expect(bitePull(bulk, 0.05, { tipDiameterMm: 0, tipBelowMm: 60 }, 1000, 0.2, 1000).ok).toBe(false);
});
