import { beforeAll, describe, expect, test, vi } from "vitest";
import { layOut } from "../../../src/layout/lay-out.ts";
import { layOutBoxes } from "../../../src/layout/lay-out-boxes.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { allCardFormats } from "../../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../../src/print/cards/lay-out-card.ts";
import { paperSizes } from "../../../src/print/sheets/paper-sizes.ts";
import { noteWidthMm } from "../../../src/print/sheets/sheet.ts";
import type { SiteInput } from "../../../src/site/input.ts";
import { makeFigures } from "../../../src/words/figures.ts";
import { SheetNote } from "../../../templates/cards/sheet-note.tsx";
import { expectSamePage } from "../../layout/same-page.ts";
import { realSite } from "../../site/real-site.ts";

/** Every page that was laid out for a card, those that did not fit too. */
const asked = vi.hoisted(() => [] as Parameters<typeof layOutBoxes>[]);

vi.mock("../../../src/layout/lay-out-boxes.ts", async (original) => {
  const { layOutBoxes: lay } = await original<{ layOutBoxes: typeof layOutBoxes }>();
  return {
    layOutBoxes: (...page: Parameters<typeof layOutBoxes>) => {
      asked.push(page);
      return lay(...page);
    },
  };
});

const fonts = nodeFonts();
let site: SiteInput;

beforeAll(async () => {
  site = await realSite();
}, 120_000);

describe.each(["metric", "imperial", "metric first"] as const)("told in %s units", (units) => {
  test("every card of every rig is laid out as satori lays it out, and all that was tried on the way", async () => {
    const { guide } = site.library;
    const kit = { ...site.kit, figures: makeFigures(units, site.kit.words, "en"), measure: fonts.measure };
    for (const solved of site.solved.values()) {
      for (const format of allCardFormats) {
        asked.length = 0;
        await layOutCard(solved, format, guide, kit, fonts);
        const tried = asked.splice(0);
        expect(tried.length).toBeGreaterThan(1);
        for (const [tree, size] of tried) {
          const name = `${solved.rig.id}, ${format.name}`;
          expectSamePage(layOutBoxes(tree, size, fonts), await layOut(tree, size, fonts), name);
        }
      }
    }
  });
});

test.each(["A4", "Letter"] as const)("what stands at the foot of a sheet of %s, too", async (paper) => {
  const { words } = site.kit;
  const tree = SheetNote({ lines: [words("card.sheet.scale"), words("card.sheet.long-edge")] });
  const size = { widthMm: noteWidthMm(paperSizes[paper]) };
  expectSamePage(layOutBoxes(tree, size, fonts), await layOut(tree, size, fonts));
});
