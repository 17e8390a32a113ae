import { expect, test } from "vitest";
import { readContent } from "../../../src/build/build.ts";
import { disk } from "../../../src/cli/disk.ts";
import { drawBait } from "../../../src/drawing/bait/draw-bait.ts";
import type { PathItem } from "../../../src/drawing/model.ts";
import { drawPictures } from "../../../src/drawing/pictures.ts";
import { drawingFaults, flatItems } from "../../support/drawing-checks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";

const { value: read } = await readContent(disk, ["content"]);
if (!read) throw new Error("the guide's content has errors");
const { library } = read;
const room = { widthMm: 80, textMm: 3.5 };
const draw = drawPictures({ library, solved: new Map(), images: new Map() });
const drawings = library.baits.flatMap(({ bait }) =>
  draw({ picture: "bait", bait: bait.id }, room, drawingKit),
);

test("every bait of the guide has its picture", () => {
  expect(drawings.map(({ drawing }) => drawing.title)).toEqual(library.baits.map(({ bait }) => bait.title));
  expect(drawings.length).toBeGreaterThanOrEqual(12);
});

test.each(drawings)("$drawing.title: words are clear of words and marks, all in the frame", ({ drawing }) => {
  expect(drawingFaults(drawing)).toEqual([]);
});

// What a hook in a bait must show is common practice, no source: in at one place, out at another, the point clear.
test.each(drawings)(
  "$drawing.title: the hook goes in, is dotted inside, comes out, and its point is bare",
  ({ drawing }) => {
    const items = flatItems(drawing.items);
    const holes = items.flatMap((item) => (item.kind === "circle" && item.radiusMm === 0.7 ? [item] : []));
    const wire = items.flatMap((item) =>
      item.kind === "path" && item.stroke?.ink === "accent" ? [item] : [],
    );
    const [inside, seen] = [wire.filter(isDotted), wire.filter((one) => !isDotted(one))];
    expect(inside.length).toBeGreaterThan(0);
    expect(holes.length).toBe(inside.length + 1);
    const [tip] = seen.map((one) => one.steps.at(-1)!.slice(1) as [number, number]).sort(([a], [b]) => b - a);
    for (const { cxMm, cyMm } of holes) expect(Math.hypot(tip![0] - cxMm, tip![1] - cyMm)).toBeGreaterThan(2);
  },
);

const isDotted = ({ stroke }: PathItem) => stroke?.dashMm !== undefined;

const width = ({ steps }: PathItem) => {
  const xs = steps.flatMap((step) => (step[0] === "Z" ? [] : [step[step.length - 2] as number]));
  return Math.max(...xs) - Math.min(...xs);
};

test.each([4, 9, 14])("a cube of %i mm is as wide to its bar as it is to 10 mm", (sideMm) => {
  const looks = { shape: "cube", lengthMm: sideMm, widthMm: sideMm, count: 1, tell: [] } as const;
  const drawing = drawBait({ title: "Cube", looks, hookMassG: 0.05 }, room, drawingKit);
  const lines = flatItems(drawing.items).filter((item) => item.kind === "path");
  const face = lines.find(({ fill }) => fill === "paper")!;
  const level = (item: PathItem) => item.steps.length === 2 && item.steps[0]![2] === item.steps[1]![2];
  const bar = lines.find(level)!;
  expect(width(face) / width(bar)).toBeCloseTo(sideMm / 10, 9);
});
