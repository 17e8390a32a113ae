import { expect, test } from "vitest";
import type { Item } from "../../../src/drawing/model.ts";
import { makeFonts } from "../../../src/layout/fonts.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { asPaper } from "../../../src/layout/paper.ts";
import { paintPdf } from "../../../src/print/pdf/pdf.ts";
import { signCode } from "../../../src/print/pdf/pdf-signs.ts";
import { rawPdf } from "../raw-pdf.ts";
import { readPdf } from "../read-pdf.ts";

const facts = { title: "Signs", author: "Makebelieve", language: "en", date: "2026-05-01" };
const rod = "\u{1F3A3}";
const { files } = nodeFonts();
/** Our faces, with the sign of a rod, as a font of the guide's own lends it, drawn as the letter o. */
const fonts = makeFonts({
  ...files,
  regular: {
    ...files.regular,
    glyphOf: (code) => files.regular.glyphOf(code === rod.codePointAt(0) ? 0x6f : code),
  },
});

function page(...texts: readonly string[]) {
  const lines = texts.map((text, i): Item => {
    return {
      kind: "text",
      xMm: 5,
      yMm: 10 * (i + 1),
      text,
      sizeMm: 4,
      face: "regular",
      ink: "ink",
      anchor: "start",
    };
  });
  const paragraph: Item = { kind: "group", xMm: 0, yMm: 0, role: "P", items: lines };
  return asPaper({ widthMm: 50, heightMm: 30, items: [paragraph] });
}

// Source of the codes: the Unicode Standard; a plane has 65,536 of them.
test("a sign's code is its own in its plane, and no sign's is that of a glyph for several", () => {
  expect(signCode("A")).toMatchObject({ plane: 0, number: 0x41, code: "0041" });
  expect(signCode("–")).toMatchObject({ plane: 0, code: "2013" });
  expect(signCode(rod)).toMatchObject({ plane: 1, number: 0xf3a3, code: "F3A3" });
  // Control characters end below the space.
  expect(signCode("fi").number).toBeLessThan(0x20);
  expect(signCode("fi").number).not.toBe(signCode("fl").number);
  expect(() => signCode("st")).toThrow(/no code/);
});

test("text with joined glyphs and signs of another plane is read as it was written", async () => {
  const written = [`a ${rod} on a reel`, "fine fish"];
  const bytes = paintPdf([page(...written)], facts, fonts);
  const { pages } = await readPdf(bytes);
  const read = pages[0]!.text;
  for (const text of written) expect(read).toContain(text);
  const raw = await rawPdf(bytes);
  const used = raw.pages[0]!.fonts;
  expect([...used.keys()].sort()).toEqual(["R", "R1"]);
  expect(used.get("R1")!.unicode.get(0xf3a3)).toBe(rod);
  expect(used.get("R")!.unicode.get(signCode("fi").number)).toBe("fi");
});

test("a text is written alike whatever else its document holds", async () => {
  const content = async (...sides: ReturnType<typeof page>[]) =>
    (await rawPdf(paintPdf(sides, facts, fonts))).pages.at(-1)!.pieces.map(({ codes }) => codes);
  expect(await content(page("zebra float"), page("a float"))).toEqual(await content(page("a float")));
});
