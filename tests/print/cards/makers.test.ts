import { describe, expect, test } from "vitest";
import type { Item } from "../../../src/drawing/model.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import type { CardPart } from "../../../src/model/card-content.ts";
import type { Guide } from "../../../src/model/library.ts";
import { cardFormats, cardFormatsOn } from "../../../src/print/cards/card-formats.ts";
import { type FinishedCard, layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleAvon, sampleWaggler } from "../../support/sample-rig.ts";
import { plain } from "../read-pdf.ts";
import { sampleGuide } from "../sample-print.ts";

const fonts = nodeFonts();
const logo = { id: "mark", widthPx: 300, heightPx: 100, jpeg: new Uint8Array() };
const visit = { address: "3 Withy Lane, Sallowmere", hours: ["Saturdays from 9 to 12"] };

const flat = (items: readonly Item[]): readonly Item[] =>
  items.flatMap((item) => (item.kind === "group" ? flat(item.items) : [item]));

const textOf = ({ back }: FinishedCard) =>
  plain(
    flat(back.items)
      .map((item) => (item.kind === "text" ? item.text : ""))
      .join(" "),
  ).replace(/\s+/g, " ");

const imagesOf = ({ front, back }: FinishedCard) =>
  flat([...front.items, ...back.items]).filter((item) => item.kind === "image");

/** Every card of a rig, smallest first, each with all that the smaller ones have. */
function cardsOf(
  solved: typeof sampleWaggler,
  paper: Guide["paper"],
  made: Partial<Guide>,
  mark?: typeof logo,
) {
  const guide = { ...sampleGuide, siteAddress: "https://makebelieve.example/floats/", ...made, paper };
  let least: readonly CardPart[] = [];
  return cardFormatsOn[paper].map((format) => {
    const card = layOutCard(solved, format, guide, drawingKit, fonts, {
      notes: { changeFirst: ["Bites on the drop. Spread the shot higher."], level: 1 },
      least,
      logo: mark,
    });
    least = card.taken;
    return { name: format.name, card };
  });
}

describe.each([sampleWaggler, sampleAvon].map((solved) => [solved.rig.id, solved] as const))(
  "%s",
  (_, solved) => {
    test.each(["A4", "Letter"] as const)(
      "on %s the makers' mark and address stand on the largest card",
      (paper) => {
        const cards = cardsOf(solved, paper, { visit }, logo);
        for (const { name, card } of cards.slice(-1)) {
          expect(textOf(card), name).toContain("3 Withy Lane, Sallowmere; Saturdays from 9 to 12");
          expect(imagesOf(card), name).toMatchObject([{ widthMm: 24, heightMm: 8 }]);
        }
        // What a phone makes of a rig is the pocket card that is built.
        expect(imagesOf(cards[0]!.card)).toEqual([]);
      },
    );

    test("a card is told to lack what the smaller one has, but never the makers' own", () => {
      const guide = { ...sampleGuide, visit, siteAddress: "https://makebelieve.example/floats/" };
      const wishes = { notes: { level: 1 }, logo } as const;
      const pocket = (least: readonly CardPart[]) =>
        layOutCard(solved, cardFormats["ID-1"], guide, drawingKit, fonts, { ...wishes, least });
      const [asked, alone] = [pocket(["gauge", "feed", "code", "find-us", "logo"]), pocket([])];
      const had = [...asked.taken, ...asked.lacks];
      expect(had).toEqual(expect.arrayContaining(["gauge", "code"]));
      expect([...alone.taken, ...alone.lacks]).not.toContain("gauge");
      expect(asked.lacks).not.toContain("find-us");
      expect(asked.lacks).not.toContain("logo");
    });

    test.each(["A4", "Letter"] as const)(
      "on %s they take nobody's room, however long the address",
      (paper) => {
        const without = cardsOf(solved, paper, {});
        const long = {
          ...visit,
          hours: Array.from({ length: 400 }, (_, i) => `In week ${i + 1} from 9 to 12`),
        };
        for (const made of [visit, long]) {
          const cards = cardsOf(solved, paper, { visit: made }, logo);
          for (const [i, { name, card }] of cards.entries()) {
            const bare = without[i]!.card;
            const others = card.taken.filter((part) => part !== "find-us" && part !== "logo");
            expect(others, name).toEqual(expect.arrayContaining([...bare.taken]));
            // Only the largest card has smaller type for their sake, and that of large cards still.
            if (i < cards.length - 1 || made === long) expect(card.look, name).toEqual(bare.look);
            else expect(card.look.back.wordPt, name).toBeGreaterThanOrEqual(12);
            expect(card.lacks, name).toEqual(bare.lacks);
            expect([...card.front.overflows, ...card.back.overflows], name).toEqual([]);
            expect(textOf(card).replace(/ ?3 Withy Lane.*?(?=https?:|$)/, ""), name).toContain(
              textOf(bare).slice(0, 200),
            );
          }
          if (made === long) expect(cards[0]!.card.taken).not.toContain("find-us");
        }
      },
    );
  },
);
