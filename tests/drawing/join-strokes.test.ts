import { expect, test } from "vitest";
import { joinStrokes } from "../../src/drawing/join-strokes.ts";
import type { Drawing, GroupItem, Item, PathItem } from "../../src/drawing/model.ts";

const thin = { ink: "soft", widthMm: 0.3 } as const;
const line = (x: number, stroke: PathItem["stroke"] = thin): PathItem => ({
  kind: "path",
  steps: [
    ["M", x, 0],
    ["L", x, 1],
  ],
  stroke,
});
const drawing = (items: Item[]): Drawing => ({
  widthMm: 9,
  heightMm: 9,
  title: "t",
  description: "d",
  items,
});
const joined = (items: Item[]) => joinStrokes(drawing(items)).items;

test("neighbours of one stroke become one path with all their steps in order", () => {
  const items = joined([line(1), line(2), line(3)]);
  expect(items).toHaveLength(1);
  expect((items[0] as PathItem).steps.map(([, x]) => x)).toEqual([1, 1, 2, 2, 3, 3]);
});

test("paths of another stroke, with a fill, or with something between stay apart", () => {
  const filled: PathItem = { ...line(2), fill: "ink" };
  const dot: Item = { kind: "circle", cxMm: 0, cyMm: 0, radiusMm: 1 };
  expect(joined([line(1), line(2, { ...thin, widthMm: 0.5 })])).toHaveLength(2);
  expect(joined([line(1), filled])).toHaveLength(2);
  expect(joined([line(1), dot, line(2)])).toHaveLength(3);
});

test("groups are joined within, never across", () => {
  const group: Item = { kind: "group", xMm: 1, yMm: 0, items: [line(1), line(2)] };
  const items = joined([line(0), group, line(3)]);
  expect(items).toHaveLength(3);
  expect((items[1] as GroupItem).items).toHaveLength(1);
});
