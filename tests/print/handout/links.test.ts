import { beforeAll, describe, expect, test } from "vitest";
import { sectionsOf } from "../../../src/print/handout/booklet.ts";
import { uaBreaks } from "../pdf-ua-rules.ts";
import { type RawPdf, rawPdf } from "../raw-pdf.ts";
import { nodesOf, readPdf } from "../read-pdf.ts";
import { elementsOf } from "../ua/rule.ts";
import { handoutsOf, sampleLesson, samplePress } from "./sample-lesson.ts";

const first = `See [the second
lesson](second.md), [a part of it](second.html#part), [a **rig**](../rigs/stick.md#notes-a), [here](#here),
[a float](../floats/stick.yaml), [a source](https://source.example/a_(b)) and [the same][source].

[source]: https://source.example/again
`;
const lessons = () => [
  sampleLesson("first", 1, "The first lesson", `## Here\n\n${first}`),
  sampleLesson("second", 2, "The second lesson", "## Part\n\nWords, and [back](first.md)."),
];

const site = "https://makebelieve.example/guide";
let alone: Map<string, Uint8Array>;
let published: Map<string, Uint8Array>;

beforeAll(async () => {
  alone = await handoutsOf(lessons(), samplePress());
  published = await handoutsOf(lessons(), samplePress({ siteAddress: site }));
}, 60_000);

const raw = (files: Map<string, Uint8Array>, name: string) => rawPdf(files.get(`handouts/${name}.pdf`)!);

/** Where the links of a file lead: an address, or the number of a page from 1. */
function leads(pdf: RawPdf): (string | number)[] {
  const numbers = new Map(pdf.pages.map(({ ref }, i) => [ref, i + 1]));
  return pdf.pages.flatMap(({ annotations }) =>
    annotations.map(({ address, target }) => address ?? numbers.get(target!)!),
  );
}

const outside = ["https://source.example/a_%28b%29", "https://source.example/again"];

describe("links of a lesson alone", () => {
  test("lead outside, and the rest are plain words where no site is known", async () => {
    const pdf = await raw(alone, "first-a5");
    expect(leads(pdf)).toEqual(outside);
    const { pages } = await readPdf(alone.get("handouts/first-a5.pdf")!);
    expect(pages[0]!.text).toContain("See the second lesson, a part of it, a rig, here, a float, a source");
  });

  test("lead to the site where the guide states its address", async () => {
    const found = new Set(leads(await raw(published, "first-a5")));
    expect([...found]).toEqual([
      `${site}/lessons/second.html`,
      `${site}/lessons/second.html#part`,
      `${site}/rigs/stick.html#notes-a`,
      `${site}/lessons/first.html#here`,
      `${site}/floats.html#stick`,
      ...outside,
    ]);
  });

  test("lie on their words on the enlarged page too", async () => {
    for (const name of ["first-a5", "first-a4"]) {
      const bytes = published.get(`handouts/${name}.pdf`)!;
      const { pages } = await rawPdf(bytes);
      const last = pages[0]!.annotations.at(-1)!;
      // An independent reader finds the words inside the place of the link.
      const [words] = (await readPdf(bytes)).pages[0]!.pieces.filter(({ text }) => text.includes("the same"));
      const [left, bottom, right, top] = last.rect as [number, number, number, number];
      expect(words!.x).toBeCloseTo(left, 0);
      expect(words!.x + words!.width).toBeCloseTo(right, 0);
      expect(words!.y).toBeGreaterThan(bottom);
      expect(words!.y).toBeLessThan(top);
    }
  });
});

describe("links of the booklet", () => {
  test("lead to the page of the lesson: from the text and from the contents", async () => {
    const bytes = alone.get("handouts/booklet.pdf")!;
    const read = await readPdf(bytes);
    const page = (title: string) =>
      1 + read.pages.findIndex(({ tree }) => nodesOf(tree, "H1").some(({ text }) => text === title));
    const [one, two] = [page("The first lesson"), page("The second lesson")];
    expect([one, two]).toEqual([3, 4]);
    const found = leads(await rawPdf(bytes)).filter((lead, i, all) => lead !== all[i - 1]);
    expect(found).toEqual([one, two, one, ...outside, one]);
  });

  test("lead to the single pages too, which come after the lessons", async () => {
    const lesson = sampleLesson(
      "first",
      1,
      "The first lesson",
      "Read how to [stay safe](../pages/safety.md).",
    );
    const safety = { ...sampleLesson("safety", 1, "Stay safe", "Look up."), path: "pages/safety.md" };
    const files = await handoutsOf([lesson], samplePress(), [safety]);
    expect([...files.keys()].filter((path) => path.includes("safety"))).toEqual([
      "handouts/page-safety-a5.pdf",
      "handouts/page-safety-a4.pdf",
    ]);
    // Title, contents, lesson, page: from the contents to both, from the lesson to the page.
    expect(leads(await raw(files, "booklet"))).toEqual([3, 4, 4]);
  });

  test("say in words where they lead", async () => {
    const pdf = await raw(alone, "booklet");
    const said = pdf.pages.flatMap(({ annotations }) => annotations.map(({ contents }) => contents));
    expect(said).toContain("Go to page 4");
    expect(said).toContain("On the web: https://source.example/again");
  });

  test("are left out of the one to fold, whose pages are in no order", async () => {
    const pdf = await raw(published, "booklet-to-fold");
    expect(pdf.pages.length).toBe(2 * sectionsOf(4).reduce((sum, { sheets }) => sum + sheets, 0));
    expect(leads(pdf)).toEqual([]);
  });
});

describe("PDF/UA-1", () => {
  test("a link over two lines or in two faces is one element with a place for each piece", async () => {
    const pdf = await raw(published, "first-a5");
    const links = elementsOf(pdf).filter(({ type }) => type === "Link");
    expect(links).toHaveLength(7);
    for (const link of links) expect(link.objects.length).toBeGreaterThanOrEqual(1);
    // The rig's name is bold within its link.
    expect(links[2]!.objects).toHaveLength(2);
    expect(uaBreaks(pdf)).toEqual([]);
  });

  test("the checks find annotations that are not tied in, say nothing or are no links", async () => {
    const pdf = await raw(published, "first-a5");
    const [page, ...others] = pdf.pages;
    const [a, b, c, ...rest] = page!.annotations;
    const spoilt = [
      { ...a!, subtype: "Text" },
      { ...b!, contents: undefined },
      { ...c!, structParent: undefined },
      ...rest,
    ];
    const breaks = uaBreaks({ ...pdf, pages: [{ ...page!, tabs: "R", annotations: spoilt }, ...others] });
    expect(breaks.map((line) => line.split(":")[0]!.split(",")[0])).toEqual([
      "7.18.1-1",
      "7.18.1-2",
      "7.18.3-1",
      "7.18.5-1",
    ]);
  });
});
