import { Resvg } from "@resvg/resvg-js";
import { describe, expect, test } from "vitest";
import { readContent } from "../../../src/build/build.ts";
import { disk } from "../../../src/cli/disk.ts";
import { drawFish } from "../../../src/drawing/fish/draw-fish.ts";
import type { Drawing, PathItem } from "../../../src/drawing/model.ts";
import { drawingToSvg } from "../../../src/drawing/svg.ts";
import { drawingFaults, flatItems } from "../../support/drawing-checks.ts";
import { drawingKit } from "../../support/drawing-kit.ts";

const { value: read } = await readContent(disk, ["content"]);
if (!read) throw new Error("the guide's content has errors");
const { library } = read;
const kinds = library.species.flatMap(({ id, title, looks }) => (looks ? [{ id, title, looks }] : []));
const room = { widthMm: 80, textMm: 3.5 };
const drawn = (fish: (typeof kinds)[number]) => drawFish(fish, room, drawingKit);
const kind = (id: string) => kinds.find((one) => one.id === id)!;

const paths = (drawing: Drawing) => flatItems(drawing.items).filter((item) => item.kind === "path");
const barbels = (drawing: Drawing) =>
  paths(drawing).filter(
    ({ stroke }) => stroke?.cap === "round" && stroke.ink === "ink" && stroke.widthMm === 0.5,
  );
const corners = ({ steps }: PathItem) =>
  steps.flatMap((step) => (step[0] === "Z" ? [] : [step.slice(-2) as [number, number]]));

test("every kind of fish of the guide has its picture", () => {
  expect(kinds.map(({ id }) => id)).toEqual(library.species.map(({ id }) => id));
  expect(kinds.length).toBeGreaterThanOrEqual(12);
});

test.each(kinds)("$id: words are clear of words and marks, all in the frame", (fish) => {
  const drawing = drawn(fish);
  expect(drawingFaults(drawing)).toEqual([]);
  expect(drawing.description.split(" ").length).toBeLessThanOrEqual(60);
  for (const { say } of [...fish.looks.tell.above, ...fish.looks.tell.below])
    expect(drawing.description).toContain(say);
});

// From memory of any field guide of freshwater fish: the marks by which these kinds are told apart.
describe("what tells kinds apart is in the picture", () => {
  test.each([
    ["roach", 0],
    ["rudd", 0],
    ["bream", 0],
    ["crucian-carp", 0],
    ["chub", 0],
    ["tench", 1],
    ["gudgeon", 1],
    ["carp", 2],
    ["barbel", 2],
  ])("%s has %i barbels on the side that is seen", (id, count) => {
    expect(barbels(drawn(kind(id)))).toHaveLength(count);
  });

  test("the roach's back fin begins above its belly fins, the rudd's behind them", () => {
    const gap = (id: string) => {
      const { backFins, bellyFinShare } = kind(id).looks;
      return backFins[0]!.fromShare - bellyFinShare;
    };
    expect(Math.abs(gap("roach"))).toBeLessThan(0.04);
    expect(gap("rudd")).toBeGreaterThan(0.08);
  });

  test.each(kinds)("$id has a red eye where its words say so, and only there", (fish) => {
    const isRed = flatItems(drawn(fish).items).some(
      (item) => item.kind === "circle" && item.fill === "accent",
    );
    const { above, below } = fish.looks.tell;
    expect(isRed).toBe([...above, ...below].some(({ say }) => /red eye/.test(say)));
  });

  test("the perch has two back fins and bars, the crucian carp is the deepest, the gudgeon slim", () => {
    expect(kind("perch").looks.backFins).toHaveLength(2);
    expect(kind("perch").looks.marks).toBe("bars");
    const depths = kinds.map(({ looks }) => looks.depthShare);
    expect(kind("crucian-carp").looks.depthShare).toBe(Math.max(...depths));
    expect(kind("gudgeon").looks.depthShare).toBe(Math.min(...depths));
  });
});

test.each(kinds)("$id is as deep for its length as its file says", (fish) => {
  // The body is the outline without a stroke that is filled with paper.
  const body = paths(drawn(fish)).find(({ fill, stroke }) => fill === "paper" && !stroke)!;
  const xs = corners(body).map(([x]) => x);
  const ys = corners(body).map(([, y]) => y);
  const share = (Math.max(...ys) - Math.min(...ys)) / (Math.max(...xs) - Math.min(...xs));
  expect(share).toBeCloseTo(fish.looks.depthShare, 1.7);
});

test("no two kinds look alike: at the size of a thumb a third of the ink differs", () => {
  const inked = kinds.map((fish) => {
    const bare = drawFish(
      { ...fish, looks: { ...fish.looks, tell: { above: [], below: [] } } },
      room,
      drawingKit,
    );
    const middle = { ...bare, heightMm: 48 };
    const svg = drawingToSvg(middle, { idPrefix: "f", theme: "print" });
    const { pixels } = new Resvg(svg, { fitTo: { mode: "width", value: 160 }, background: "#fff" }).render();
    return Array.from({ length: pixels.length / 4 }, (_, i) => 255 - pixels[4 * i]!);
  });
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const shares = inked.flatMap((one, i) =>
    inked.slice(i + 1).map((other, j) => {
      const apart = sum(one.map((value, at) => Math.abs(value - other[at]!)));
      return { pair: `${kinds[i]!.id} ${kinds[i + 1 + j]!.id}`, share: apart / (sum(one) + sum(other)) };
    }),
  );
  expect(shares.filter(({ share }) => share < 1 / 3)).toEqual([]);
});
