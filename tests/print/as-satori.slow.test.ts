import { beforeAll, describe, expect, test, vi } from "vitest";
import { printedFiles } from "../../src/build/printed-files.ts";
import { drawPictures } from "../../src/drawing/pictures.ts";
import { layOut } from "../../src/layout/lay-out.ts";
import { nodeFonts } from "../../src/layout/node-fonts.ts";
import { cardFormatsOn } from "../../src/print/cards/card-formats.ts";
import { layOutCard } from "../../src/print/cards/lay-out-card.ts";
import { paperSizes } from "../../src/print/sheets/paper-sizes.ts";
import { noteWidthMm } from "../../src/print/sheets/sheet.ts";
import { sheetFigures } from "../../src/print/sheets/sheet-note.ts";
import type { SiteInput } from "../../src/site/input.ts";
import { makeFigures } from "../../src/words/figures.ts";
import { SheetNote } from "../../templates/cards/sheet-note.tsx";
import { expectSamePage } from "../layout/same-page.ts";
import { realSite } from "../site/real-site.ts";
import { layOutBySatori } from "../support/satori/lay-out-by-satori.ts";
import { withLoneWords } from "../support/satori/lone-words.ts";
import { shippedGuide } from "../support/shipped-guide.ts";

/** Every page that was laid out, those that did not fit too. */
const asked = vi.hoisted(() => [] as Parameters<typeof layOut>[]);

vi.mock("../../src/layout/lay-out.ts", async (original) => {
  const { layOut: lay } = await original<{ layOut: typeof layOut }>();
  return {
    layOut: (...page: Parameters<typeof layOut>) => {
      asked.push(page);
      return lay(...page);
    },
  };
});

const fonts = nodeFonts();
let site: SiteInput;

beforeAll(async () => {
  site = await realSite();
});

describe.each(["metric", "imperial", "metric first"] as const)("told in %s units", (units) => {
  test("every card of every rig is laid out as satori lays it out, and all that was tried on the way", async () => {
    const { guide } = site.library;
    const kit = { ...site.kit, figures: makeFigures(units, site.kit.words, "en"), measure: fonts.measure };
    for (const solved of site.solved.values()) {
      for (const format of cardFormatsOn.A4) {
        asked.length = 0;
        layOutCard(solved, format, guide, kit, fonts);
        const tried = asked.splice(0);
        expect(tried.length).toBeGreaterThan(1);
        for (const [tree, size] of tried) {
          const name = `${solved.rig.id}, ${format.name}`;
          const ours = layOut(withLoneWords(tree), size, fonts);
          expectSamePage(ours, await layOutBySatori(tree, size, fonts), name);
        }
      }
    }
  });
});

test.each(["A4", "Letter"] as const)("what stands at the foot of a sheet of %s, too", async (paper) => {
  const { words } = site.kit;
  const tree = SheetNote({
    lines: [words("card.sheet.scale", sheetFigures(site.kit.figures)), words("card.sheet.long-edge")],
  });
  const size = { widthMm: noteWidthMm(paperSizes[paper]) };
  expectSamePage(layOut(tree, size, fonts), await layOutBySatori(tree, size, fonts));
});

test("every handout and every page at its true size, too", async () => {
  asked.length = 0;
  const settings = { date: "2026-05-01", siteAssets: new Map() };
  // All is laid out before the first file.
  await printedFiles(shippedGuide, drawPictures(shippedGuide.source), settings).next();
  const pages = asked.splice(0).filter(([{ props }]) => props.field !== undefined);
  expect(pages.length).toBeGreaterThan(2 * shippedGuide.library.lessons.length);
  for (const [tree, size] of pages) {
    expectSamePage(
      layOut(tree, size, fonts),
      await layOutBySatori(tree, size, fonts),
      String(tree.props.field),
    );
  }
});
