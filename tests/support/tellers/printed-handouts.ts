import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import type { Prose } from "../../../src/model/library.ts";
import { handoutFiles, layOutHandouts } from "../../../src/print/handout/handout-files.ts";
import type { SiteInput } from "../../../src/site/input.ts";
import { readPdf } from "../../print/read-pdf.ts";
import { readHandout } from "./read-handout.ts";
import type { Statement } from "./statement.ts";

const fonts = nodeFonts();

/**
 * What the handouts of some lessons and pages, and the booklet of them, say of rigs once they are printed. Sheets that are
 * laid out to fold have the booklet's pages in another order and are left out.
 */
export async function* printedHandouts(
  site: SiteInput,
  isWanted: (text: Prose) => boolean,
): AsyncIterable<{ readonly path: string; readonly told: readonly (readonly [rig: string, Statement])[] }> {
  const { guide, lessons, pages } = site.library;
  const input = {
    lessons: lessons.filter(isWanted),
    pages: pages.filter(isWanted),
    pictures: site.pictures,
    liveBody: site.liveBody,
  };
  const press = {
    guide,
    fonts,
    kit: { ...site.kit, measure: fonts.measure },
    facts: (title: string) => ({
      title,
      author: guide.publisher,
      language: guide.language,
      date: "2026-05-01",
    }),
  };
  const inOrder = [...input.lessons.toSorted((a, b) => a.order - b.order), ...input.pages];
  const rigByTitle = new Map([...site.solved.values()].map(({ rig }) => [rig.title, rig.id]));
  for await (const { path, content } of handoutFiles(await layOutHandouts(input, press), press)) {
    if (path.endsWith("to-fold.pdf")) continue;
    const texts = path.endsWith("booklet.pdf")
      ? inOrder
      : inOrder.filter(({ id }) => new RegExp(`/(?:page-)?${id}-a\\d\\.pdf$`).test(path));
    yield { path, told: readHandout(await readPdf(content as Uint8Array), texts, rigByTitle, path) };
  }
}
