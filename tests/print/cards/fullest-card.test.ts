import { describe, expect, it } from "vitest";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { cardParts, makersParts } from "../../../src/model/card-content.ts";
import { hasPart, makeComposer } from "../../../src/print/cards/card-composer.ts";
import { cardContent } from "../../../src/print/cards/card-content.ts";
import { cardFormats } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleRigs } from "../../support/sample-rig.ts";
import { sampleAddress, sampleGuide } from "../sample-print.ts";

const fonts = nodeFonts();
const guide = { ...sampleGuide, siteAddress: sampleAddress };
const notes = { marking: "2 AAA", changeFirst: ["Move the telltale."], level: 1 };
const makers: readonly string[] = makersParts;

describe.each(Object.values(cardFormats))("a card of format $name", (format) => {
  describe.each(["metric", "imperial"] as const)("in %s units", (units) => {
    const figures = makeFigures(units, drawingKit.words, "en");
    const kit = { ...drawingKit, figures, measure: fonts.measure };
    const composed = sampleRigs.map((solved) => {
      const content = cardContent(solved, guide, { ...kit, figures: figures.compact }, notes);
      const composer = makeComposer(solved, format, content, kit, fonts, undefined);
      const parts = cardParts.filter((part) => hasPart(content, part) && !makers.includes(part));
      return { solved, composer, parts };
    });

    it("goes without nothing that it has room for", () => {
      for (const { solved, composer, parts } of composed) {
        const { taken, look } = layOutCard(solved, format, guide, kit, fonts, { notes });
        for (const part of parts.filter((one) => !taken.includes(one))) {
          const page = composer.back(look.back, [...taken, part], look.front.tackleOn === "back");
          expect(page.overflows, `${solved.rig.id}, ${part}`).not.toEqual([]);
        }
      }
    });

    it("takes more room on its back in each look than in the next, which is tried before it", () => {
      for (const { solved, composer, parts } of composed) {
        const spareMm = format.backs.map((look) => composer.back(look, parts, false).spareMm ?? Number.NaN);
        expect(spareMm, solved.rig.id).toEqual(spareMm.toSorted((a, b) => a - b));
      }
    });

    it.each([true, false])(
      "takes at least as much room for a part as it is said to (tackle: %s)",
      (tackle) => {
        for (const { solved, composer, parts } of composed) {
          for (const look of format.backs) {
            const spareMm = (some: typeof parts) => composer.back(look, some, tackle).spareMm ?? Number.NaN;
            let beforeMm = spareMm([]);
            parts.forEach((part, at) => {
              const taken = parts.slice(0, at);
              const afterMm = spareMm([...taken, part]);
              const saidMm = composer.takes(look, part, taken, tackle);
              expect(beforeMm - afterMm, `${solved.rig.id}, ${part}`).toBeGreaterThanOrEqual(saidMm - 1e-6);
              beforeMm = afterMm;
            });
          }
        }
      },
    );
  });
});
