import { describe, expect, test } from "vitest";
import type { Item } from "../../../src/drawing/model.ts";
import { drawPictures } from "../../../src/drawing/pictures.ts";
import type { Library } from "../../../src/model/library.ts";
import { handoutFormats } from "../../../src/print/handout/handout-formats.ts";
import { named, textPages } from "../../../src/print/handout/text-handout.ts";
import { sampleLesson, samplePress } from "./sample-lesson.ts";

const visit = {
  address: "Millrace Lane 3, Makebelieve",
  hours: ["Monday to Friday, 9 to 17", "Saturday, 8 to 13"],
};
const logo = { id: "mark", widthPx: 300, heightPx: 100, jpeg: new Uint8Array() };
const foot = [visit.address, ...visit.hours];
const drawings = drawPictures({ library: {} as Library, solved: new Map(), images: new Map() });

/** What stands in a column, in the order of reading: lines of words, and pictures by their names. */
function seen(items: readonly Item[]): string[] {
  return items.flatMap((item) => {
    if (item.kind === "group") return seen(item.items);
    return item.kind === "text" ? [item.text] : item.kind === "image" ? [item.image.id] : [];
  });
}

const papers = Object.values(handoutFormats).flatMap((of) => Object.values(of));
const lines = (count: number) => Array.from({ length: count }, (_, i) => `Line ${i + 1}  \n`).join("");

describe.each(papers)("on $name with $columns columns", (format) => {
  test.each([
    ["mark and address", { visit }, logo, ["mark", ...foot]],
    ["address", { visit }, undefined, foot],
  ])("the foot of %s is never torn, and never alone on a page", (_, guide, mark, expected) => {
    const press = { ...samplePress(guide), ...(mark && { logo: mark }) };
    // So many lines that the foot of the column meets each place of the foot of the text.
    const perColumn = Math.floor(
      (format.heightMm - format.topMm - format.bottomMm) / (format.bodyPt * 0.3528 * format.lineHeight),
    );
    let pagesMore = 0;
    for (let less = 2; less < 14; less++) {
      const lesson = sampleLesson("first", 1, "First", lines(perColumn - less));
      const { columns } = textPages(named(lesson, lesson.body), format, drawings, press);
      const last = seen(columns.at(-1)!);
      expect(last.slice(-expected.length), `${less} lines less`).toEqual(expected);
      expect(last.at(-expected.length - 1), `${less} lines less`).toMatch(/^Line/);
      pagesMore += columns.length - 1;
    }
    expect(pagesMore).toBeGreaterThan(0);
    expect(pagesMore).toBeLessThan(12);
  });
});
