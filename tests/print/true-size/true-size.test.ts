import { beforeAll, describe, expect, test } from "vitest";
import type { CircleItem, Item, PathItem } from "../../../src/drawing/model.ts";
import { drawStripPiece, stripMarks, stripPieces } from "../../../src/print/true-size/strip.ts";
import {
  layOutTrueSize,
  type TrueSizeFile,
  trueSizeFiles,
  trueSizeProblems,
} from "../../../src/print/true-size/true-size-files.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import { sampleAvon, sampleRigs, sampleWaggler } from "../../support/sample-rig.ts";
import { samplePress } from "../handout/sample-lesson.ts";
import { uaBreaks } from "../pdf-ua-rules.ts";
import { rawPdf } from "../raw-pdf.ts";

const press = samplePress();
let files: TrueSizeFile[];

beforeAll(async () => {
  files = await layOutTrueSize(sampleRigs, press);
}, 60_000);

describe("the bank strip", () => {
  const depth = sampleWaggler.depths[0]!;
  const marks = stripMarks(depth, sampleWaggler.rig.hookLengthMm, press.kit);
  const pieces = stripPieces(marks, 200, 5);

  test("marks the loop and every shot on the line, none of the lock", () => {
    const onLine = depth.lineShot.map(({ fromHookMm }) => fromHookMm);
    expect(marks).toHaveLength(1 + onLine.length);
    for (const [i, atMm] of [300, ...onLine].sort((a, b) => a - b).entries())
      expect(Math.abs(marks[i]!.fromHookMm - atMm)).toBeLessThanOrEqual(5);
    expect(pieces.flatMap((piece) => piece.marks)).toEqual(marks);
  });

  test("has each mark at the figure that it is labelled with", () => {
    const between = stripMarks(
      { ...depth, lineShot: depth.lineShot.map((shot) => ({ ...shot, fromHookMm: shot.fromHookMm + 3 })) },
      304,
      press.kit,
    );
    for (const { fromHookMm, label } of between)
      expect(label).toMatch(new RegExp(`^${fromHookMm / 10}\\scm`));
  });

  test("has each mark at its distance, in true size", () => {
    for (const piece of pieces) {
      const items = drawStripPiece(piece, 7);
      const strokes = items.filter((item): item is PathItem => item.kind === "path");
      const [ruler, ...drawn] = strokes;
      const ends = ruler!.steps.slice(0, 2).map((step) => step[2] as number);
      expect(Math.abs(ends[1]! - ends[0]!)).toBe(200);
      expect(drawn.map(({ steps }) => piece.fromMm + 200 - (steps[0]![2] as number))).toEqual(
        piece.marks.map(({ fromHookMm }) => fromHookMm),
      );
    }
  });

  test("in inches has a tick each half inch, and a figure at each whole one", () => {
    const { ruler } = makeFigures("imperial", press.kit.words, "en");
    const [first, ...rest] = drawStripPiece({ fromMm: 0, toMm: 203.2, marks: [] }, 7, ruler);
    if (first?.kind !== "path") throw new Error("a strip has lines");
    const ticks = first.steps.slice(2).flatMap((step) => (step[0] === "M" ? [203.2 - step[2]] : []));
    for (const [i, atMm] of ticks.entries()) expect(atMm).toBeCloseTo(12.7 * i, 9);
    expect(ticks).toHaveLength(17);
    expect(rest.map((one) => one.kind === "text" && one.text)).toEqual([..."012345678"]);
  });

  test("keeps labels of crowded shot apart", () => {
    const crowded = stripMarks(sampleAvon.depths[0]!, sampleAvon.rig.hookLengthMm, press.kit);
    for (const piece of stripPieces(crowded, 200, 5)) {
      const labels = drawStripPiece(piece, 7).filter(
        (item) => item.kind === "text" && item.anchor === "start",
      );
      const baselines = labels.map((item) => (item.kind === "text" ? item.yMm : 0)).sort((a, b) => a - b);
      for (const [i, y] of baselines.slice(1).entries()) expect(y - baselines[i]!).toBeGreaterThan(3);
    }
  });
});

test("the gauge has discs as wide as balls of that weight", () => {
  const gauge = files.find(({ path }) => path === "handouts/shot-gauge.pdf")!;
  const discs = circlesOf(gauge.page.items);
  const { tub } = sampleWaggler.rig;
  expect(discs).toHaveLength(tub.length);
  // Source of the densities: handbook values, tin 7.287 and lead 11.34 g/cm³; d = ∛(6m/πρ).
  const density = { tin: 7.287e-3, lead: 11.34e-3 } as Record<string, number>;
  for (const [i, { massG, metal }] of tub.entries()) {
    expect(2 * discs[i]!.radiusMm).toBeCloseTo(Math.cbrt((6 * massG) / (Math.PI * density[metal]!)), 6);
  }
});

function circlesOf(items: readonly Item[]): CircleItem[] {
  return items.flatMap((item) =>
    item.kind === "circle" ? [item] : item.kind === "group" ? circlesOf(item.items) : [],
  );
}

test("all fit their page and keep the rules of PDF/UA-1 that a program can check", async () => {
  expect(trueSizeProblems(files)).toEqual([]);
  let count = 0;
  for await (const { path, content } of trueSizeFiles(files, press)) {
    count += 1;
    expect({ path, breaks: uaBreaks(await rawPdf(content as Uint8Array)) }).toEqual({ path, breaks: [] });
  }
  expect(count).toBe(sampleRigs.length + 1);
});
