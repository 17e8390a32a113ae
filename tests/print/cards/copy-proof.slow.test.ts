import { describe, expect, test } from "vitest";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { type CardPart, cardNotes } from "../../../src/model/card-content.ts";
import type { Guide } from "../../../src/model/library.ts";
import type { SolvedRig } from "../../../src/model/solved.ts";
import type { UnitChoice } from "../../../src/model/unit-choice.ts";
import { cardFormatsOn } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import { shippedGuide } from "../../support/shipped-guide.ts";
import { codeOn, copyOfACopy, misread } from "../copying/cards.ts";
import { FigureReader, linesOn } from "../copying/reading.ts";

const fonts = nodeFonts();
const reader = new FigureReader(fonts);
const { library, rigs, kit } = shippedGuide;
const siteAddress = "https://makebelieve.example/floats/";

const cases = [
  ["metric first", "A4"],
  ["imperial", "Letter"],
] as const;

/** Every card of a rig with the address of its page, smallest first. */
function cardsOf(solved: SolvedRig, units: UnitChoice, paper: Guide["paper"]) {
  const figures = makeFigures(units, kit.words, library.guide.language);
  const told = { ...kit, figures, measure: fonts.measure };
  const guide = { ...library.guide, siteAddress };
  const entry = library.rigs.find(({ rig }) => rig.id === solved.rig.id)!;
  const { marking } = library.floats.find(({ float }) => float.id === solved.rig.float.id)!;
  let least: readonly CardPart[] = [];
  return cardFormatsOn[paper].map((format) => {
    const wishes = { notes: cardNotes(entry, marking), least };
    const card = layOutCard(solved, format, guide, told, fonts, wishes);
    least = card.taken;
    return { name: format.name, ...card };
  });
}

describe.each(cases)("told in %s units, for %s", (units, paper) => {
  test.each(rigs.map((solved) => [solved.rig.id, solved] as const))(
    "a copy of a copy of each card of %s has every figure, and the largest a code that reads, its address beside it",
    (id, solved) => {
      const cards = cardsOf(solved, units, paper);
      const address = `${siteAddress}rigs/${id}.html`;
      const coded = cards.map(({ taken }) => taken.includes("code"));
      expect(coded).toEqual([...coded].sort());
      expect(coded.at(-1)).toBe(true);
      for (const { name, front, back, taken } of cards) {
        const copies = { front: copyOfACopy(front, fonts), back: copyOfACopy(back, fonts) };
        const wrong = [...misread(front, copies.front, reader), ...misread(back, copies.back, reader)];
        expect({ name, wrong }).toEqual({ name, wrong: [] });
        if (!taken.includes("code")) continue;
        expect({ name, code: codeOn(copies.back) }).toEqual({ name, code: address });
        const words = linesOn(back.items).map(({ text }) => text.trim());
        expect(words.join(""), name).toContain(address.replace("https://", ""));
      }
    },
  );
});
