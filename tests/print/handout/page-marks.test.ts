import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import { parse } from "yaml";
import { hyphenating } from "../../../src/layout/hyphens.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { makeWords } from "../../../src/words/words.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";
import { type ReadPage, readPdf } from "../read-pdf.ts";
import { handoutsOf, sampleLesson, samplePress } from "./sample-lesson.ts";

const { id } = sampleWaggler.rig;

/** Sentences ever a little longer, so that a line's end meets each place of the mark behind the link, and words behind it. */
const sentences = Array.from(
  { length: 40 },
  (_, i) => `Wer ${"l".repeat(20 + i)} sagt, nimmt auch [diese **Montage**](../rigs/${id}.html), sagt sie.`,
);
const lesson = sampleLesson("first", 1, "Die Montage", sentences.join("\n\n"));

const german = parse(readFileSync("content/words/de.yaml", "utf8"));
const own = structuredClone(german);
own.handout["at-page"] = "(Seitenangabe-Heft: {page})";

/** The pages of a lesson's text, by an independent reader, in the guide's words. */
async function pagesIn(words: object): Promise<readonly ReadPage[]> {
  const press = samplePress();
  const kit = { ...press.kit, words: makeWords(words as typeof german, "de") };
  const inGerman = { ...press, kit, fonts: hyphenating(nodeFonts(), "de") };
  const card = layOutCard(sampleWaggler, cardFormats["ID-1"], press.guide, press.kit, press.fonts);
  const files = await handoutsOf([lesson], inGerman, [], new Map([[id, { ...card, from: "" }]]));
  return (await readPdf(files.get("handouts/first-a5.pdf")!)).pages;
}

describe.each([
  ["(S. #)", german],
  ["(Seitenangabe-Heft: #)", own],
])("the mark %s", (mark, words) => {
  let pages: readonly ReadPage[];
  beforeAll(async () => {
    pages = await pagesIn(words);
  }, 60_000);

  test("has its number wherever a line ends, and stands on one line", () => {
    const lines = pages.flatMap(({ pieces }) => {
      const ys = [...new Set(pieces.map(({ y }) => y))];
      return ys.map((y) =>
        pieces
          .filter((piece) => piece.y === y)
          .map(({ text }) => text)
          .join(""),
      );
    });
    expect(lines.join("\n")).not.toContain("000");
    const filled = mark.replace("#", String(pages.length));
    expect(lines.filter((line) => line.replace(/\s+/g, " ").includes(filled))).toHaveLength(sentences.length);
  });

  test("leaves no gap before what follows it", () => {
    const gaps = pages.flatMap(({ pieces }) =>
      pieces.flatMap(({ text, x, y }, i) => {
        const before = pieces[i - 1];
        return text.startsWith(",") && before?.y === y ? [x - before.x - before.width] : [];
      }),
    );
    expect(gaps.length).toBeGreaterThan(sentences.length / 2);
    // In points: less than a tenth of a millimetre.
    expect(gaps.filter((gap) => Math.abs(gap) > 0.28)).toEqual([]);
  });
});
