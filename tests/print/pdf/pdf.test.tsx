import { beforeAll, describe, expect, test } from "vitest";
import type { GroupItem, Item } from "../../../src/drawing/model.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { asPaper } from "../../../src/layout/paper.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { paintPdf } from "../../../src/print/pdf/pdf.ts";
import { paperSizes } from "../../../src/print/sheets/paper-sizes.ts";
import { type Card, sheets } from "../../../src/print/sheets/sheet.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleAvon, sampleStick, sampleWaggler } from "../../support/sample-rig.ts";
import { uaBreaks, uaRules } from "../pdf-ua-rules.ts";
import { rawPdf } from "../raw-pdf.ts";
import { readPdf } from "../read-pdf.ts";
import { printedOfTwoRigs, sampleGuide } from "../sample-print.ts";
import { pictureCornersOf } from "../segments.ts";

const fonts = nodeFonts();
const facts = { title: "Läng & <deep>", author: "Makebelieve", language: "en-GB", date: "2026-05-01" };
let files: ReadonlyMap<string, Uint8Array>;

beforeAll(async () => {
  files = await printedOfTwoRigs("A4");
}, 120_000);

const pdfs = () => [...files].filter(([path]) => path.endsWith(".pdf"));

function page(items: readonly Item[]) {
  return asPaper({ widthMm: 50, heightMm: 30, items });
}

function words(role: GroupItem["role"], text: string): GroupItem {
  const line: Item = {
    kind: "text",
    xMm: 5,
    yMm: 10,
    text,
    sizeMm: 4,
    face: "regular",
    ink: "ink",
    anchor: "start",
  };
  return { kind: "group", xMm: 0, yMm: 0, ...(role && { role }), items: [line] };
}

test("a picture lies over its box, the right way up", async () => {
  // A grey dot, as JPEG has it; what is in it is nobody's concern here.
  const image = { id: "dot", jpeg: Uint8Array.of(0xff, 0xd8, 0xff, 0xd9), widthPx: 40, heightPx: 20 };
  const box = { xMm: 12, yMm: 5, widthMm: 20, heightMm: 10 };
  const side = page([
    { kind: "group", xMm: 2, yMm: 3, artifact: true, items: [{ kind: "image", ...box, image }] },
  ]);
  const { pages } = await rawPdf(paintPdf([side], facts, fonts));
  const [corners] = pictureCornersOf(pages[0]!.content);
  // From the lower left corner of a page 30 mm high, in points.
  const inMm = [...corners!.from, ...corners!.to].map((pt) => (pt * 25.4) / 72);
  for (const [i, mm] of [14, 30 - 18, 34, 30 - 8].entries()) expect(inMm[i]).toBeCloseTo(mm, 3);
});

describe("PDF/UA-1", () => {
  test("every file keeps every rule that a program can check", async () => {
    expect(pdfs().length).toBeGreaterThan(4);
    for (const [path, bytes] of pdfs()) {
      expect({ path, breaks: uaBreaks(await rawPdf(bytes)) }).toEqual({ path, breaks: [] });
    }
  });

  test("the checks find what is wrong: headings, tables, lists", async () => {
    const wrong = page([
      words("H2", "Too deep"),
      { ...words("TR", ""), items: [words("TH", "Loose row")] },
      { ...words("Table", ""), items: [words("P", "No row")] },
      { ...words("L", ""), items: [words("LBody", "No item")] },
    ]);
    const breaks = uaBreaks(await rawPdf(paintPdf([wrong], facts, fonts)));
    const rules = [...new Set(breaks.map((line) => line.split(":")[0]))];
    expect(rules).toEqual(["7.2-3", "7.2-4", "7.2-18", "7.2-19", "7.4.2-1"]);
  });

  test("the checks find untagged content and a missing language", async () => {
    const pdf = await rawPdf(paintPdf([page([words("P", "Word")])], facts, fonts));
    const [first] = pdf.pages;
    const bare = { ...first!, pieces: first!.pieces.map((piece) => ({ ...piece, around: [] })) };
    pdf.catalog.delete((await import("@cantoo/pdf-lib")).PDFName.of("Lang"));
    const breaks = uaBreaks({ ...pdf, pages: [bare] });
    expect(breaks.map((line) => line.split(":")[0])).toEqual([
      "7.2-2, 7.2-22, 7.2-29, 7.2-33, 7.2-34",
      "7.1-3",
    ]);
  });

  test("no rule is listed twice", () => {
    const ids = uaRules.flatMap(({ id }) => id.split(", "));
    expect(new Set(ids).size).toBe(ids.length);
  });

  test("text without a role and a figure without words for it are refused", async () => {
    const text = words(undefined, "Loose");
    expect(() => paintPdf([page([text])], facts, fonts)).toThrow(/without a role/);
    const figure: GroupItem = { kind: "group", xMm: 0, yMm: 0, role: "Figure", items: [] };
    expect(() => paintPdf([page([figure])], facts, fonts)).toThrow(/alternative text/);
  });
});

describe("metadata", () => {
  test("title, author, language and day are what they were given", async () => {
    const { info, marked } = await readPdf(paintPdf([page([words("P", "Word")])], facts, fonts));
    expect(info).toMatchObject({
      Title: "Läng & <deep>",
      Author: "Makebelieve",
      CreationDate: "D:20260501000000Z",
      ModDate: "D:20260501000000Z",
      Language: "en-GB",
      IsAcroFormPresent: false,
    });
    expect(marked).toBe(true);
  });

  test("the metadata stream is well-formed where the title holds signs of XML", async () => {
    const { xmp } = await rawPdf(paintPdf([page([words("P", "Word")])], facts, fonts));
    expect(xmp).toContain("Läng &amp; &lt;deep&gt;");
  });

  test("the outline lists the headings", async () => {
    const sides = [page([words("H1", "One"), words("H2", "One and a half")]), page([words("H1", "Two")])];
    const { outline } = await readPdf(paintPdf(sides, facts, fonts));
    expect(outline).toEqual(["One", "Two"]);
  });

  test("sheets say how they are to be printed", async () => {
    const { viewerPreferences } = await readPdf(files.get("cards/sheet.pdf")!);
    expect(viewerPreferences).toMatchObject({ PrintScaling: "None", Duplex: "DuplexFlipLongEdge" });
  });
});

describe("fonts", () => {
  test("are subsets with a tag, one for each face used", async () => {
    for (const [, bytes] of pdfs()) {
      const { pages } = await rawPdf(bytes);
      const names = new Set(pages.flatMap(({ fonts: used }) => [...used.values()].map((f) => f.baseFont)));
      expect([...names].sort()).toEqual(["DOTAAA+IBMPlexSans-Regular", "DOTAAB+IBMPlexSans-SemiBold"]);
      for (const { fonts: used } of pages) {
        for (const { programWidths } of used.values()) expect(programWidths.length).toBeLessThan(150);
      }
    }
  });
});

describe("bytes", () => {
  test("another date or title makes another file and another identifier", async () => {
    const side = [page([words("P", "Word")])];
    const id = async (over: object) => {
      const text = new TextDecoder("latin1").decode(paintPdf(side, { ...facts, ...over }, fonts));
      return /\/ID \[<([0-9A-F]{32})>/.exec(text)?.[1];
    };
    const ids = [await id({}), await id({ date: "2026-05-02" }), await id({ title: "B" })];
    expect(ids.every((one) => one !== undefined)).toBe(true);
    expect(new Set(ids).size).toBe(3);
  });

  test("each further card on a sheet adds less than 4.2 kB", async () => {
    const cards: Card[] = [];
    for (const solved of [sampleWaggler, sampleStick, sampleAvon]) {
      cards.push((await layOutCard(solved, cardFormats["ID-1"], sampleGuide, drawingKit, fonts)).alone);
    }
    const note = { widthMm: 100, heightMm: 5, items: [] };
    const sizes: number[] = [];
    for (const count of [1, 2, 3]) {
      const sides = sheets(cards.slice(0, count), paperSizes.A4, "long edge", "apart", {
        front: note,
        back: note,
      });
      sizes.push(paintPdf(sides, facts, fonts).length);
    }
    expect(sizes[1]! - sizes[0]!).toBeLessThan(4200);
    expect(sizes[2]! - sizes[1]!).toBeLessThan(4200);
  });
});
