import type { Paragraph } from "mdast";
import { beforeAll, expect, test } from "vitest";
import type { Lesson } from "../../../src/model/library.ts";
import { uaBreaks } from "../pdf-ua-rules.ts";
import { type RawPdf, rawPdf } from "../raw-pdf.ts";
import { nodesOf, type ReadPdf, readPdf } from "../read-pdf.ts";
import { handoutsOf, sampleLesson, samplePress } from "./sample-lesson.ts";

const words = "Lower the rig in at your feet and look at the tip before you cast it anywhere. ";
const note = "† common practice, no source known";

/** A sign in the first paragraph alone, and more than one page. */
function lessonWithSign(): Lesson {
  const lesson = sampleLesson(
    "first",
    1,
    "The first lesson",
    `## One\n\nShow 20 mm\n\n${`${words}\n\n`.repeat(30)}`,
  );
  const figure = lesson.body.children.find(({ type }) => type === "paragraph") as Paragraph;
  figure.children.push(
    { type: "basisSign", sign: "†", spoken: "(common practice)", url: "../pages/about-figures.md" },
    { type: "text", value: " of tip, or 3 mm" },
    { type: "basisSign", sign: "‡", spoken: "(from memory)", url: "../pages/about-figures.md" },
    { type: "text", value: "." },
  );
  return lesson;
}

let read: ReadPdf;
let raw: RawPdf;
let booklet: ReadPdf;

beforeAll(async () => {
  const files = await handoutsOf([lessonWithSign()], samplePress());
  const bytes = files.get("handouts/first-a5.pdf")!;
  read = await readPdf(bytes);
  raw = await rawPdf(bytes);
  booklet = await readPdf(files.get("handouts/booklet.pdf")!);
}, 60_000);

test("a sign is explained at the foot of the page it stands on, and on no other", () => {
  expect(read.pages.length).toBeGreaterThan(1);
  expect(read.pages.map(({ text }) => text.includes(note))).toEqual(read.pages.map((_, i) => i === 0));
  expect(booklet.pages.filter(({ text }) => text.includes(note))).toHaveLength(1);
  const notes = nodesOf(read.pages[0]!.tree, "P").filter(({ text }) => text.includes(note));
  expect(notes).toHaveLength(1);
});

test("the notes of all signs stand on one line, no wider than the text", () => {
  const { pieces, box } = read.pages[0]!;
  const first = pieces.find(({ text }) => text.startsWith(note))!;
  const last = pieces.find(({ text }) => text.includes("‡ from memory, measure your own"))!;
  expect(last.y).toBe(first.y);
  expect(last.x + last.width).toBeLessThanOrEqual(box[2]! - box[0]! - first.x);
});

test("a sign is read out as its name, beside its figure", () => {
  // ISO 32000-1, section 14.9.4: replacement text of marked content, as UTF-16.
  const spoken = Buffer.from("\uFEFF (common practice) ", "utf16le").swap16().toString("hex").toUpperCase();
  const [before, after] = raw.pages[0]!.content.split(`/Span <</ActualText <${spoken}>>> BDC`);
  expect(after).toBeDefined();
  expect(before!.trim().endsWith("ET")).toBe(true);
  expect(after!.indexOf("EMC")).toBeGreaterThan(after!.indexOf("ET"));
  const { pieces } = read.pages[0]!;
  const at = pieces.findIndex(({ text }) => text.startsWith("†"));
  const figure = pieces[at - 1]!;
  expect(pieces[at]!.y).toBe(figure.y);
  expect(pieces[at]!.x - figure.x - figure.width).toBeLessThan(1);
});

test("pages with signs keep the rules for PDF that everybody can read", () => {
  expect(uaBreaks(raw)).toEqual([]);
});
