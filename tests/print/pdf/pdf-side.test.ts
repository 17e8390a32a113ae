import { expect, test } from "vitest";
import { first } from "../../../src/core/lists.ts";
import type { Item } from "../../../src/drawing/model.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { asPaper, type PaperSide, placed } from "../../../src/layout/paper.ts";
import { inMemory, type Keep } from "../../../src/model/kept.ts";
import { painted } from "../../../src/print/painted.ts";
import { paintPdf } from "../../../src/print/pdf/pdf.ts";

const fonts = nodeFonts();
const facts = { title: "Sides", author: "Makebelieve", language: "en", date: "2026-05-01" };

/** A page of one line, which stands for itself. */
function page(text: string, from: string | undefined = text): PaperSide {
  const line: Item = {
    kind: "text",
    xMm: 5,
    yMm: 10,
    text,
    sizeMm: 4,
    face: "regular",
    ink: "ink",
    anchor: "start",
    link: "https://water.example",
  };
  const items: Item[] = [{ kind: "group", xMm: 0, yMm: 0, role: "H1", items: [line] }];
  return asPaper({ widthMm: 50, heightMm: 30, items, ...(from !== undefined && { from }) });
}

const links = new Map([["https://water.example", { address: "https://water.example", about: "water" }]]);

/** Keeps, and counts what it had to make. */
function counting() {
  const made: string[] = [];
  const below: Keep = (kind, _from, make) => {
    made.push(kind);
    return make();
  };
  return { made, keep: inMemory(100, below) };
}

test("only sides that are not as they were are painted, and the document has the same bytes as one painted whole", () => {
  const { made, keep } = counting();
  const paint = (sides: readonly PaperSide[], over = {}) =>
    paintPdf(sides, { ...facts, ...over, sides: keep }, fonts);
  paint([page("one"), page("two"), page("three")]);
  expect(made).toEqual(["side", "side", "side"]);
  const sides = [page("one"), page("new"), page("three")];
  expect(paint(sides)).toEqual(paintPdf(sides, facts, fonts));
  expect(made).toHaveLength(4);
});

test("a side that lies elsewhere, whose links lead somewhere, or that says nothing of what it is made from, is painted anew", () => {
  const { made, keep } = counting();
  const paint = (side: PaperSide, over = {}) => paintPdf([side], { ...facts, ...over, sides: keep }, fonts);
  const one = page("one");
  const moved = { ...one, parts: one.parts.map((part) => placed(part, { xMm: 1, yMm: 0, turn: 0 })) };
  const wide = { ...one, widthMm: 60 };
  const turned = { ...one, parts: one.parts.map((part) => placed(part, { xMm: 0, yMm: 0, turn: 180 })) };
  for (const side of [one, moved, wide, turned]) expect(paint(side)).toEqual(paintPdf([side], facts, fonts));
  expect(paint(one, { links })).toEqual(paintPdf([one], { ...facts, links }, fonts));
  expect(made).toHaveLength(5);
  const unknown = asPaper({ widthMm: 50, heightMm: 30, items: one.parts[0]!.items });
  paint(unknown);
  paint(unknown);
  expect(made).toHaveLength(5);
});

test("tags, fonts and what else is packed beside sides is not packed again where it is as it was, to the same bytes", () => {
  const { made, keep } = counting();
  const paint = (sides: readonly PaperSide[]) => {
    const facing = { ...facts, sides: keep };
    return painted(sides, first(sides), facing, { fonts, parts: keep }).content;
  };
  paint([page("stop knot"), page("knots top")]);
  const before = made.filter((kind) => kind === "packed").length;
  expect(before).toBeGreaterThanOrEqual(5);
  made.length = 0;
  // The same signs, so the same fonts.
  const sides = [page("stop knot"), page("tops knot")];
  expect(paint(sides)).toEqual(paintPdf(sides, facts, fonts));
  expect(made.filter((kind) => kind === "packed").length).toBeLessThanOrEqual(1);
});
