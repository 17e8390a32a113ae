import { expect, test } from "vitest";
import { bitePull, type FeltShot, hardestStepG } from "../../../src/core/float/bite.ts";
import { floatPullG } from "../../../src/core/float/float.ts";
import { pool, tippedFloat } from "../floats.ts";
import { valueIn } from "../sink/rigs.ts";

const atItsMark = (tipDiameterMm: number) => {
  const float = tippedFloat(tipDiameterMm);
  return { float, loadG: floatPullG(float, pool), water: pool };
};
const bite = (shot: readonly FeltShot[], baitAndHookG = 0.05) =>
  valueIn(bitePull(shot, baitAndHookG, atItsMark(3), 1400, 0.2));
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
  // 0.1 g over a tip of 3 mm in water of 999.70 kg/m³: 0.1 / (0.0009997 · π/4 · 9) = 14.151 mm.
  expect(bite(telltale)[20]!.tipRiseMm).toBeCloseTo(14.151, 3);
});

test("opening out a bulk softens the bite: the same weight, in smaller steps", () => {
  expect(hardestStepG(bite(bulk), 10)).toBeCloseTo(0.8, 9);
  expect(hardestStepG(bite(spreadBulk), 10)).toBeCloseTo(0.2, 9);
  expect(hardestStepG(bite(strung), 10)).toBeCloseTo(0.2, 9);
  for (const shot of [bulk, spreadBulk]) expect(bite(shot).at(-1)!.feltG).toBeCloseTo(0.9, 9);
});

test("shot that touch come on as one to a fish that rises by 5 cm, and as several by the centimetre", () => {
  const touching = row(0.2, [500, 506, 512, 518]);
  expect(hardestStepG(bite(touching), 10)).toBeCloseTo(0.2, 9);
  expect(hardestStepG(bite(touching), 50)).toBeCloseTo(0.8, 9);
});

test("strung out the first shot comes on sooner than the bulk does", () => {
  const first = (shot: readonly FeltShot[]) => bite(shot).find((step) => step.feltG > 0.15)!.liftMm;
  expect(first(strung)).toBeLessThan(first(spreadBulk));
  expect(first(spreadBulk)).toBeLessThan(first(bulk));
});

test("once the tip is out, the body comes up by less", () => {
  // Of 0.85 g a tip of 2 mm and 50 mm takes 0.157 g, its cone of 10 mm up to 12 mm 0.450 g (π/12 · 10 · (4 + 24 + 144)),
  // and the body of 12 mm the other 0.243 g in 2.15 mm.
  const heavy = row(0.8, [500]);
  const steps = valueIn(bitePull(heavy, 0.05, atItsMark(2), 1200, 0.2));
  expect(steps.at(-1)!.tipRiseMm).toBeCloseTo(62.15, 1);
});

test("a rise of no pace or a float without a load has no answer", () => {
  expect(bitePull(bulk, 0.05, atItsMark(3), 1000, 0).ok).toBe(false);
  expect(bitePull(bulk, 0.05, { ...atItsMark(3), loadG: 0 }, 1000, 0.2).ok).toBe(false);
});
