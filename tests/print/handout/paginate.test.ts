import { describe, expect, test } from "vitest";
import type { GroupItem, Item, Role, TextItem } from "../../../src/drawing/model.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { chunksOf, rowsOf } from "../../../src/print/handout/chunks.ts";
import { composePages } from "../../../src/print/handout/compose.ts";
import { paginate } from "../../../src/print/handout/paginate.ts";

const fonts = nodeFonts();

function line(text: string, yMm: number): TextItem {
  return { kind: "text", xMm: 0, yMm, text, sizeMm: 4, face: "regular", ink: "ink", anchor: "start" };
}

function group(role: Role, items: readonly Item[]): GroupItem {
  return { kind: "group", xMm: 0, yMm: 0, role, items };
}

/** A block of lines 6 mm apart, the first at `fromMm`. */
function block(role: Role, fromMm: number, texts: readonly string[]): GroupItem {
  return group(
    role,
    texts.map((text, i) => line(text, fromMm + 6 * i)),
  );
}

function words(items: readonly Item[]): string[] {
  return items.flatMap((item) =>
    item.kind === "text" ? [item.text] : item.kind === "group" ? words(item.items) : [],
  );
}

/** Heights of the lines of a column, groups' own places added. */
function baselines(items: readonly Item[], downMm = 0): number[] {
  return items.flatMap((item) =>
    item.kind === "text"
      ? [item.yMm + downMm]
      : item.kind === "group"
        ? baselines(item.items, downMm + item.yMm)
        : [],
  );
}

function pagesOf(items: readonly Item[], heightMm: number): string[][] {
  return composePages(paginate(rowsOf(chunksOf(items, fonts)), heightMm), "test").map(words);
}

const letters = (count: number) => Array.from({ length: count }, (_, i) => `line ${i + 1}`);

describe("pages", () => {
  test("hold all lines once, in order", () => {
    const pages = pagesOf([block("P", 6, letters(23))], 60);
    expect(pages.length).toBe(3);
    expect(pages.flat()).toEqual(letters(23));
  });

  test("do not end with a sentence that leads up to a list", () => {
    const list = group(
      "L",
      [60, 66, 72, 78].map((y, i) => block("LI", y, [`item ${i + 1}`])),
    );
    const pages = pagesOf([block("P", 6, letters(8)), block("P", 54, ["Bring these:"]), list], 57);
    expect(pages[0]).toEqual(letters(8));
    expect(pages[1]).toEqual(["Bring these:", "item 1", "item 2", "item 3", "item 4"]);
  });

  test("do not begin or end with a single item of a list", () => {
    const items = Array.from({ length: 5 }, (_, i) => `item ${i + 1}`);
    const list = (fromMm: number) =>
      group(
        "L",
        items.map((item, i) => block("LI", fromMm + 6 * i, [item])),
      );
    expect(pagesOf([block("P", 6, letters(8)), list(54)], 57)[1]).toEqual(items);
    expect(pagesOf([block("P", 6, letters(5)), list(36)], 57)[1]).toEqual(items.slice(3));
  });

  test("do not end with a heading", () => {
    const items = [block("P", 6, letters(8)), block("H2", 54, ["Heading"]), block("P", 60, letters(4))];
    const pages = pagesOf(items, 57);
    expect(pages[0]).toEqual(letters(8));
    expect(pages[1]![0]).toBe("Heading");
  });

  test("do not begin or end with a single line of a paragraph", () => {
    const first = ["a", "b", "c", "d"];
    const second = ["e", "f", "g"];
    // Room for five lines: the cut after the first line of the second paragraph is not taken.
    const pages = pagesOf([block("P", 6, first), block("P", 30, second)], 30);
    expect(pages).toEqual([first, second]);
    // Room for six: the cut before the last line of the second paragraph is not taken either.
    expect(pagesOf([block("P", 6, first), block("P", 30, second)], 36)).toEqual([first, second]);
  });

  test("repeat the head of a table that goes on, no row alone at its end, as far below the head as the first", () => {
    const rows = ["Head", "1", "2", "3", "4", "5"].map((text, i) =>
      group("TR", [group("TD", [line(text, 6 + 6 * i)])]),
    );
    const pages = pagesOf([group("Table", rows)], 20);
    expect(pages).toEqual([
      ["Head", "1", "2"],
      ["Head", "3"],
      ["Head", "4", "5"],
    ]);
    const columns = composePages(paginate(rowsOf(chunksOf([group("Table", rows)], fonts)), 20), "test");
    for (const column of columns) {
      const [head, first] = baselines(column);
      expect(first! - head!).toBeCloseTo(6, 9);
    }
  });

  test("do not leave the head of a table alone", () => {
    const rows = ["Head", "1", "2"].map((text, i) => group("TR", [group("TD", [line(text, 18 + 6 * i)])]));
    const pages = pagesOf([block("P", 6, ["a", "b"]), group("Table", rows)], 18);
    expect(pages).toEqual([
      ["a", "b"],
      ["Head", "1", "2"],
    ]);
  });

  test("keep a picture with its caption", () => {
    const picture = group("Sect", [
      group("Figure", [{ kind: "circle", cxMm: 10, cyMm: 30, radiusMm: 8, fill: "ink" }]),
      block("P", 44, ["caption"]),
    ]);
    const pages = paginate(rowsOf(chunksOf([block("P", 6, letters(3)), picture], fonts)), 36);
    const columns = composePages(pages, "test");
    expect(columns.map(words)).toEqual([letters(3), ["caption"]]);
    expect(JSON.stringify(columns[1])).toContain("circle");
  });

  test("fill up before a picture that does not fit with the text behind it", () => {
    const items = [
      block("P", 6, ["a", "a", "b"]),
      group("Sect", [group("Figure", [{ kind: "circle", cxMm: 10, cyMm: 46, radiusMm: 20, fill: "ink" }])]),
      block("P", 76, ["c", "d", "e", "f", "g", "h", "i", "j"]),
    ];
    const rows = rowsOf(chunksOf(items, fonts));
    const columns = composePages(paginate(rows, 60), "test");
    // Six lines fit below the three, and the picture has room for the other two.
    expect(columns.map(words)).toEqual([
      ["a", "a", "b", "c", "d", "e", "f", "g", "h"],
      ["i", "j"],
    ]);
    expect(JSON.stringify(columns[0])).not.toContain("circle");
    expect(JSON.stringify(columns[1])).toContain("circle");
    const [first, second] = columns.map((column) => baselines(column));
    // As far below each other as in the column: the text below the text as it was below the picture, 10 mm.
    expect(first!.slice(4).map((y, i) => y - first![i + 3]!)).toEqual(
      [6, 6, 6, 6, 6].map((gap) => expect.closeTo(gap, 9)),
    );
    expect(second![1]! - second![0]!).toBeCloseTo(6, 9);
    // The lines behind the picture follow it as the first of them did: 10 mm below its foot, which is 40 mm down.
    expect(second![0]).toBeCloseTo(50, 9);
  });

  test("keep text behind a picture that leads to another, and headings and tables", () => {
    const circle = (cyMm: number): GroupItem =>
      group("Sect", [group("Figure", [{ kind: "circle", cxMm: 10, cyMm, radiusMm: 24, fill: "ink" }])]);
    const pages = (behind: readonly Item[]) =>
      pagesOf([block("P", 6, ["a", "b"]), circle(40), ...behind], 60)[0];
    expect(pages([block("P", 74, ["c", "d"]), circle(110)])).toEqual(["a", "b"]);
    expect(pages([block("H2", 74, ["c"]), block("P", 80, ["d", "e"])])).toEqual(["a", "b"]);
    expect(pages([block("P", 74, ["c", "d"]), block("H2", 86, ["e"])])).toEqual(["a", "b", "c", "d"]);
  });

  test("begin at the top", () => {
    const pages = paginate(rowsOf(chunksOf([block("P", 6, letters(20))], fonts)), 60);
    const [, second] = composePages(pages, "test");
    const found: TextItem[] = [];
    const look = (items: readonly Item[]) => {
      for (const item of items) {
        if (item.kind === "text") found.push(item);
        if (item.kind === "group") look(item.items);
      }
    };
    look(second!);
    expect(found[0]!.yMm).toBeGreaterThan(0);
    expect(found[0]!.yMm).toBeLessThan(6);
  });
});

test("a list item's number and its first line are one row", () => {
  const item = group("LI", [block("Lbl", 6, ["1."]), block("LBody", 6, ["one", "two"])]);
  const rows = rowsOf(chunksOf([group("L", [item])], fonts));
  expect(rows.map((row) => row.chunks.length)).toEqual([2, 1]);
});
