import { beforeAll, describe, expect, test } from "vitest";
import type { Lesson } from "../../../src/model/library.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";
import { uaBreaks } from "../pdf-ua-rules.ts";
import { rawPdf } from "../raw-pdf.ts";
import { nodesOf, plain, type ReadPdf, readPdf } from "../read-pdf.ts";
import { sampleGuide } from "../sample-print.ts";
import { elementsOf } from "../ua/rule.ts";
import { handoutsOf, sampleLesson, samplePress } from "./sample-lesson.ts";

const paragraph = "Lower the rig in at your feet and look at the tip before you cast it anywhere. ";
const markdown = `
## Before you cast

${paragraph.repeat(6)}

1. Pinch the shot **lightly**.
2. Lower it in.

- one
- two

| Shot | Weight |
| --- | --- |
${Array.from({ length: 30 }, (_, i) => `| No ${i + 1} | 0.${i + 10} g |`).join("\n")}

## After

${paragraph.repeat(4)}
`;

function lesson(id: string, order: number, title: string): Lesson {
  const made = sampleLesson(id, order, title, markdown);
  made.body.children.splice(1, 0, {
    type: "picture",
    reference: { picture: "rig-drawing", rig: sampleWaggler.rig.id, depthMm: 1500, variant: "set" },
  });
  return made;
}

let files: Map<string, Uint8Array>;
let small: ReadPdf;

beforeAll(async () => {
  const lessons = [lesson("second", 2, "The second lesson"), lesson("first", 1, "The first lesson")];
  files = await handoutsOf(lessons, samplePress());
  small = await readPdf(files.get("handouts/first-a5.pdf")!);
}, 120_000);

const pagePt = (pdf: ReadPdf) => pdf.pages.map(({ box }) => [box[2]! - box[0]!, box[3]! - box[1]!]);

describe("a lesson", () => {
  test("comes in A5 and, in two columns, in A4", async () => {
    const large = await readPdf(files.get("handouts/first-a4.pdf")!);
    for (const [width, height] of pagePt(small)) {
      expect(width).toBeCloseTo((148 * 72) / 25.4, 2);
      expect(height).toBeCloseTo((210 * 72) / 25.4, 2);
    }
    for (const [width, height] of pagePt(large)) {
      expect(width).toBeCloseTo((210 * 72) / 25.4, 2);
      expect(height).toBeCloseTo((297 * 72) / 25.4, 2);
    }
    const words = (pdf: ReadPdf) =>
      plain(pdf.pages.flatMap(({ tree }) => nodesOf(tree, "P").map(({ text }) => text)).join(" "));
    expect(words(large)).toBe(words(small));
    // UKAAF G003 (2019): clear print from 12 pt; header and footer are not for reading.
    const body = (pdf: ReadPdf) =>
      Math.min(...pdf.pages.flatMap(({ sizes }) => sizes.filter((size) => size > 9.5)));
    expect(body(small)).toBeGreaterThanOrEqual(11.99);
    expect(body(large)).toBeGreaterThanOrEqual(10.99);
    expect(body(large)).toBeLessThanOrEqual(12);
    // 11 pt on A4 take less than half the sides of 12 pt on A5.
    expect(large.pages.length).toBeLessThanOrEqual(Math.ceil(small.pages.length / 2));
  });

  test("reads down the left column of a page, then down the right", async () => {
    const large = await readPdf(files.get("handouts/first-a4.pdf")!);
    const names = large.pages
      .flatMap(({ tree }) => nodesOf(tree, "TR"))
      .map(({ children }) => children[0]!.text)
      .filter((name) => /^No /.test(name));
    expect(names).toEqual(Array.from({ length: 30 }, (_, i) => `No ${i + 1}`));
  });

  test("has one column where a table is wider than half the sheet", async () => {
    const long = "Incomprehension";
    const wide = sampleLesson(
      "wide",
      1,
      "Wide",
      `\n| ${long} | ${long} | ${long} |\n| --- | --- | --- |\n| a | b | c |\n`,
    );
    const made = await readPdf((await handoutsOf([wide], samplePress())).get("handouts/wide-a4.pdf")!);
    expect(made.pages[0]!.sizes).toContain(12);
    expect(small.pages[0]!.sizes).not.toContain(11);
  });

  test("has all its words in order, headings in the outline, and pages numbered", () => {
    const paragraphs = small.pages.flatMap(({ tree }) => nodesOf(tree, "P").map((p) => p.text));
    const text = plain(paragraphs.join(" "));
    expect(text).toContain(plain(paragraph.repeat(6)));
    expect(text).toContain(plain(paragraph.repeat(4)));
    expect(small.outline).toEqual(["The first lesson"]);
    small.pages.forEach((page, i) => {
      expect(page.text).toContain(`${i + 1} of ${small.pages.length}`);
      expect(page.text.includes(sampleGuide.title)).toBe(true);
      expect(page.text.startsWith(sampleGuide.title)).toBe(i > 0);
    });
  });

  test("has lines on its first page for a name, a place and a telephone number, which readers skip", () => {
    const [first, ...others] = small.pages;
    for (const label of ["Name", "Where we meet", "Telephone"]) {
      expect(first!.text).toContain(label);
      expect(
        nodesOf(first!.tree, "P")
          .map(({ text }) => text)
          .join(" "),
      ).not.toContain(label);
      for (const { text } of others) expect(text).not.toContain(label);
    }
  });

  test("has lists with numbers, and a table that repeats its head", () => {
    const labels = small.pages.flatMap(({ tree }) => nodesOf(tree, "Lbl").map((label) => label.text));
    expect(labels).toEqual(["1.", "2.", "•", "•"]);
    const withRows = small.pages.filter(({ tree }) => nodesOf(tree, "TR").length > 0);
    expect(withRows.length).toBeGreaterThan(1);
    for (const { text } of withRows) expect(text).toContain("Shot Weight No");
    // Only the first head is one to a reader: the others are there for the eye. Rows of other pages come without words.
    const rows = withRows
      .flatMap(({ tree }) => nodesOf(tree, "TR"))
      .filter(({ children }) => children[0]!.text !== "");
    expect(rows[0]!.children.map((cell) => [cell.role, cell.text])).toEqual([
      ["TH", "Shot"],
      ["TH", "Weight"],
    ]);
    const names = rows.slice(1).map((row) => row.children[0]!.text);
    expect(names).toEqual(Array.from({ length: 30 }, (_, i) => `No ${i + 1}`));
  });

  test("has its drawing as a figure with words for it", () => {
    const figures = small.pages.flatMap(({ tree }) => nodesOf(tree, "Figure"));
    expect(figures).toHaveLength(1);
    expect(figures[0]!.alt!.length).toBeGreaterThan(20);
    for (const { operators } of small.pages)
      expect(operators.filter((name) => /image/i.test(name))).toEqual([]);
  });
});

describe("the booklet", () => {
  test("begins with title and contents, whose page numbers are right", async () => {
    const booklet = await readPdf(files.get("handouts/booklet.pdf")!);
    expect(booklet.pages[0]!.text).toContain(sampleGuide.title);
    const rows = nodesOf(booklet.pages[1]!.tree, "TOCI");
    const entries = rows.map((row) =>
      row.children.map(
        (cell) =>
          cell.text +
          nodesOf(cell, "Link")
            .map((link) => link.text)
            .join(""),
      ),
    );
    expect(entries.map(([title]) => title)).toEqual(["The first lesson", "The second lesson"]);
    for (const [title, page] of entries) {
      expect(nodesOf(booklet.pages[Number(page) - 1]!.tree, "H1").map((h) => h.text)).toEqual([title]);
    }
  });

  test("to fold has half as many sides, twice as wide", async () => {
    const [pages, folded] = await Promise.all(
      ["booklet", "booklet-to-fold"].map((name) => readPdf(files.get(`handouts/${name}.pdf`)!)),
    );
    expect(folded!.pages).toHaveLength(Math.ceil(pages!.pages.length / 4) * 2);
    for (const [width] of pagePt(folded!)) expect(width).toBeCloseTo((2 * 148 * 72) / 25.4, 2);
    expect(folded!.viewerPreferences).toMatchObject({ Duplex: "DuplexFlipShortEdge" });
  });
});

describe("a handout to fold", () => {
  test("has its half sheets two to a side, in the order of folding, read in the order of its pages", async () => {
    const names = [...files.keys()].filter((path) => /-a5-to-fold\.pdf$/.test(path));
    expect(names.length).toBeGreaterThan(0);
    for (const name of names) {
      const plainName = name.replace("-to-fold", "");
      const [pages, folded] = await Promise.all([plainName, name].map((one) => readPdf(files.get(one)!)));
      expect(pages!.pages.length, name).toBeGreaterThan(1);
      expect(folded!.pages).toHaveLength(Math.ceil(pages!.pages.length / 4) * 2);
      for (const [width, height] of pagePt(folded!)) {
        expect(width).toBeCloseTo((2 * 148 * 72) / 25.4, 2);
        expect(height).toBeCloseTo((210 * 72) / 25.4, 2);
      }
      expect(folded!.viewerPreferences).toMatchObject({ Duplex: "DuplexFlipShortEdge" });
      const [read, readFolded] = await Promise.all(
        [plainName, name].map(async (one) =>
          elementsOf(await rawPdf(files.get(one)!))
            .filter(({ type }) => type !== "Link")
            .map(({ type, alt }) => [type, alt]),
        ),
      );
      expect(readFolded).toEqual(read);
    }
  });
});

test("the booklet to fold is read in the order of its pages, whatever the order of its paper", async () => {
  const order = async (name: string) => {
    const pdf = await rawPdf(files.get(`handouts/${name}.pdf`)!);
    return elementsOf(pdf).map(({ type, alt }) => [type, alt]);
  };
  expect(await order("booklet-to-fold")).toEqual(
    (await order("booklet")).filter(([type]) => type !== "Link"),
  );
  const [folded, pages] = await Promise.all(
    ["booklet-to-fold", "booklet"].map((name) => readPdf(files.get(`handouts/${name}.pdf`)!)),
  );
  expect(folded!.outline).toEqual(pages!.outline);
});

test("every handout keeps the rules of PDF/UA-1 that a program can check", async () => {
  expect(files.size).toBe(8);
  for (const [path, content] of files) {
    const pdf = await rawPdf(content);
    expect({ path, breaks: uaBreaks(pdf) }).toEqual({ path, breaks: [] });
  }
});

test("a handout ends with where the guide's makers are found, and when they are open", async () => {
  const visit = { address: "1 Made Lane", hours: ["Mondays, 9 to 5"] };
  const press = samplePress();
  const made = await handoutsOf([lesson("first", 1, "The first lesson")], {
    ...press,
    guide: { ...press.guide, visit },
  });
  const text = (await readPdf(made.get("handouts/first-a5.pdf")!)).pages.map((page) => plain(page.text));
  expect(text.at(-1)).toContain("1 Made Lane");
  expect(text.at(-1)).toContain("Mondays, 9 to 5");
  expect(text.join(" ").split("1 Made Lane")).toHaveLength(2);
  const [title] = (await readPdf(made.get("handouts/booklet.pdf")!)).pages;
  expect(plain(title!.text)).toContain("1 Made Lane");
});
