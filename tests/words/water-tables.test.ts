import { expect, test } from "vitest";
import type { Sink } from "../../src/core/sink/sink-of-rig.ts";
import { sinkTable } from "../../src/words/water-tables.ts";
import { drawingKit } from "../support/drawing-kit.ts";
import { sampleRigs } from "../support/sample-rig.ts";

const seconds = (cells: readonly string[]) => cells.map((cell) => Number(/^(\d+)\ss$/.exec(cell)![1]));

test("the whole seconds of the thirds of a fall add up to those of all of it", () => {
  const falls = sampleRigs.flatMap(({ depths }) => depths.flatMap(({ inWater }) => inWater?.sink ?? []));
  expect(falls.length).toBeGreaterThan(4);
  const odd: readonly Sink["thirdsS"][] = [
    [0.6, 0.6, 0.6],
    [1.4, 1.4, 1.4],
    [3.5, 2.5, 4.5],
  ];
  const { rows } = sinkTable([...falls, ...odd.map((thirdsS) => ({ ...falls[0]!, thirdsS }))], drawingKit);
  for (const [at, [, ...cells]] of rows.entries()) {
    const [upper, middle, lower, all] = seconds(cells) as [number, number, number, number];
    expect(upper + middle + lower).toBe(all);
    const thirdsS = [...falls.map((fall) => fall.thirdsS), ...odd][at]!;
    expect(Math.abs(all - thirdsS.reduce((sum, time) => sum + time, 0))).toBeLessThanOrEqual(0.5);
  }
});
