import { expect, test } from "vitest";
import {
  countSizes,
  type GroupedShot,
  groupShot,
  mergeGroups,
} from "../../../src/core/tackle/shot-groups.ts";

const shot = (size: string, fromHookMm: number, massG = 0.06): GroupedShot => ({
  size,
  fromHookMm,
  massG,
  role: "spread",
});
const told = (groups: ReturnType<typeof groupShot>) =>
  groups.map(
    ({ kind, shots, gapMm }) => `${kind} ${shots.map((one) => one.fromHookMm).join(" ")} / ${gapMm}`,
  );

test("three or more equal shot at equal gaps are a run, two are not", () => {
  const run = [300, 550, 800, 1050].map((at) => shot("No 8", at));
  expect(told(groupShot(run))).toEqual(["run 300 550 800 1050 / 250"]);
  expect(told(groupShot(run.slice(0, 2)))).toEqual(["single 300 / 0", "single 550 / 0"]);
});

test("another size or another gap ends a run", () => {
  const shots = [shot("No 10", 100), ...[300, 500, 700].map((at) => shot("No 8", at)), shot("No 8", 1200)];
  expect(told(groupShot(shots))).toEqual(["single 100 / 0", "run 300 500 700 / 200", "single 1200 / 0"]);
});

test("gaps that agree to the centimetre are equal, two halves of it and what a shot is wide included", () => {
  const runs = (...places: readonly number[]) => told(groupShot(places.map((at) => shot("No 8", at)))).length;
  expect(told(groupShot([300, 547, 799].map((at) => shot("No 8", at))))).toEqual(["run 300 547 799 / 249.5"]);
  expect(runs(300, 550, 806)).toBe(1);
  expect(runs(300, 550, 794)).toBe(1);
  expect(runs(300, 550, 807)).toBe(3);
  expect(runs(300, 550, 793)).toBe(3);
});

test("shot within a finger's width stand together whatever their size", () => {
  const shots = [shot("No 8", 300), shot("BB", 750, 0.4), shot("BB", 755, 0.4), shot("SSG", 765, 1.6)];
  expect(told(groupShot(shots))).toEqual(["single 300 / 0", "together 750 755 765 / 0"]);
});

test("a telltale is told with the shot that it is in step with, but never as pinched on with those above it", () => {
  const telltale: GroupedShot = { ...shot("No 8", 300), role: "telltale" };
  const near = [telltale, shot("No 8", 310), shot("No 8", 319)];
  expect(told(groupShot(near))).toEqual(["single 300 / 0", "together 310 319 / 0"]);
  const inStep = [telltale, ...[400, 500, 600].map((at) => shot("No 8", at))];
  expect(told(groupShot(inStep))).toEqual(["run 300 400 500 600 / 100"]);
});

test("what lies on the bed is never told with what hangs", () => {
  const run = [100, 300, 500, 700].map((at) => shot("No 8", at));
  expect(told(groupShot(run, 200))).toEqual(["single 100 / 0", "run 300 500 700 / 200"]);
});

test("merged groups keep every shot, and sizes are counted heaviest first", () => {
  const [lower, upper] = groupShot([shot("No 8", 300), shot("BB", 750, 0.4), shot("BB", 755, 0.4)]);
  const merged = mergeGroups(lower!, upper!);
  expect(merged.kind).toBe("mixed");
  expect(countSizes(merged.shots)).toEqual([
    { size: "BB", count: 2 },
    { size: "No 8", count: 1 },
  ]);
});
