import { describe, expect, it } from "vitest";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { levels } from "../../../src/model/library.ts";
import type { WordTree } from "../../../src/model/word-tree.ts";
import { cardFormatsOn } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import { makeWords } from "../../../src/words/words.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";

const fonts = nodeFonts();

/** A sentence with every word a fifth longer; gaps stay as they are. */
function longer(sentence: string): string {
  let owed = 0;
  return sentence
    .split(/(\{[^{}]*(?:\{[^{}]*\}[^{}]*)*\})/)
    .map((part, i) => (i % 2 === 1 ? part : part.replace(/\p{L}+/gu, stretched)))
    .join("");
  function stretched(word: string): string {
    owed += word.length / 5;
    const more = Math.floor(owed);
    owed -= more;
    return word + "n".repeat(more);
  }
}

const allLonger = (tree: WordTree): WordTree =>
  Object.fromEntries(
    Object.entries(tree).map(([key, node]) => [
      key,
      typeof node === "string" ? longer(node) : allLonger(node),
    ]),
  );

describe("words a fifth longer than the English ones", () => {
  const { library, rigs, kit } = shippedGuide;
  const words = makeWords(allLonger(library.words));
  const figures = makeFigures("metric", words, "en");
  const long = { ...kit, words, figures, measure: fonts.measure };
  const some = rigs.filter(({ rig }) =>
    ["first-session", "stick-shirt-button", "lift-method"].includes(rig.id),
  );

  it("are that much longer, with the same gaps", () => {
    expect(longer("Hold the float to {what}, {n, plural, one {#} other {#}}.")).toMatch(
      /^\w+ \w+ \w+ \w+ \{what\}, \{n, plural, one \{#\} other \{#\}\}\.$/,
    );
    const card = JSON.stringify(library.words.card).replace(/\{\w+\}|[^\p{L}]/gu, "");
    expect(longer(card).length / card.length).toBeCloseTo(1.2, 2);
  });

  it.each(some.map((solved) => [solved.rig.id, solved] as const))(
    "fit every card of %s, and larger cards lack nothing",
    (id, solved) => {
      const { changeFirst, level } = library.rigs.find((entry) => entry.id === id)!;
      const { marking } = library.floats.find(({ float }) => float.id === solved.rig.float.id)!;
      const notes = { marking, changeFirst, level: levels.indexOf(level) + 1 };
      for (const format of cardFormatsOn.A4) {
        const card = layOutCard(solved, format, library.guide, long, fonts, { notes });
        expect([...card.front.overflows, ...card.back.overflows], format.name).toEqual([]);
        if (format.name !== "ID-1") expect(card.lacks, format.name).toEqual([]);
      }
    },
  );
});
