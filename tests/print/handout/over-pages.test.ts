import { beforeAll, expect, test } from "vitest";
import { type RawPdf, rawPdf } from "../raw-pdf.ts";
import { elementsOf } from "../ua/rule.ts";
import { handoutsOf, sampleLesson, samplePress } from "./sample-lesson.ts";

const sentence = "Lower the rig in at your feet and look at the tip before you cast it anywhere. ";
const rows = Array.from({ length: 40 }, (_, i) => `| No ${i + 1} | 0.${i + 10} g |`).join("\n");
const markdown = `
${sentence.repeat(40)}

1. ${sentence.repeat(20)}
2. ${sentence.repeat(20)}

| Shot | Weight |
| --- | --- |
${rows}

> ${sentence.repeat(30)}
`;

let pdf: RawPdf;

beforeAll(async () => {
  const files = await handoutsOf([sampleLesson("long", 1, "Long", markdown)], samplePress());
  pdf = await rawPdf(files.get("handouts/long-a5.pdf")!);
}, 60_000);

const all = (type: string) => elementsOf(pdf).filter((element) => element.type === type);

/** Pages that the content of an element and of all below it stands on. */
function pagesOf(element: RawPdf["root"]): string[] {
  return [...new Set([...element.content.map(({ page }) => page), ...element.kids.flatMap(pagesOf)])];
}

test("what goes on over the page is one element with content on both", () => {
  // The summary, the paragraph and the one in the quotation.
  const [summary, paragraph, quoted, ...others] = all("P");
  expect(others).toEqual([]);
  expect(pagesOf(summary!)).toHaveLength(1);
  expect(paragraph!.content.length).toBeGreaterThan(1);
  expect(pagesOf(paragraph!).length).toBeGreaterThan(1);
  expect(pagesOf(quoted!).length).toBeGreaterThan(1);
  expect(all("BlockQuote")).toHaveLength(1);
  for (const [type, count] of [
    ["L", 1],
    ["LI", 2],
    ["LBody", 2],
    ["Table", 1],
  ] as const) {
    expect(all(type)).toHaveLength(count);
    for (const element of all(type)) expect(pagesOf(element).length, type).toBeGreaterThan(1);
  }
});

test("a table has its head once to a reader, whatever the eye sees", () => {
  expect(all("TR")).toHaveLength(41);
  expect(all("TH").filter(({ scope }) => scope === "Column")).toHaveLength(2);
});

test("pieces of an element are in the order of their pages", () => {
  const order = pdf.pages.map(({ ref }) => ref);
  for (const element of elementsOf(pdf)) {
    const places = element.content.map(({ page, mcid }) => 1e4 * order.indexOf(page) + mcid);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  }
});
