import { rigInScene } from "../../../src/drawing/scenes/draw-scene.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { asTheyStand } from "../../../src/model/in-order.ts";
import { inMemory, makeAnew } from "../../../src/model/kept.ts";
import type { Prose } from "../../../src/model/library.ts";
import { handoutPieces, layOutHandouts } from "../../../src/print/handout/handout-files.ts";
import type { SiteInput } from "../../../src/site/input.ts";
import { readPdf } from "../../print/read-pdf.ts";
import { leafedThrough } from "./leaf-through.ts";
import { readHandout, type ToldRigs } from "./read-handout.ts";
import type { Statement } from "./statement.ts";

const fonts = nodeFonts();

/**
 * What the handouts of some lessons and pages, and the booklet of them, say of rigs once they are printed. Sheets that are
 * laid out to fold are read when they are leafed through.
 */
export async function* printedHandouts(
  site: SiteInput,
  isWanted: (text: Prose) => boolean,
): AsyncIterable<{ readonly path: string; readonly told: readonly (readonly [rig: string, Statement])[] }> {
  const { guide, lessons, pages } = site.library;
  const input = {
    lessons: lessons.filter(isWanted),
    pages: pages.filter(isWanted),
    drawings: site.drawings,
    liveBody: site.liveBody,
    cards: new Map(),
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
    keep: makeAnew,
    inOrder: asTheyStand,
    parts: makeAnew,
    pictures: makeAnew,
    marks: inMemory(Number.POSITIVE_INFINITY),
    textsFrom: "",
    from: "",
  };
  const inOrder = [...input.lessons.toSorted((a, b) => a.order - b.order), ...input.pages];
  const { rigs: entries, kits } = site.library;
  const rigs: ToldRigs = {
    byTitle: new Map([...site.solved.values()].map(({ rig }) => [rig.title, rig.id])),
    made: rigInScene("make-up", entries)!.rig.id,
    ofKit: (kit) => kits.find(({ id }) => id === kit)!.rigIds,
  };
  for (const piece of handoutPieces(layOutHandouts(input, press), press)) {
    for await (const { path, content } of piece()) {
      const pdf = await readPdf(content as Uint8Array);
      const isFolded = path.endsWith("to-fold.pdf");
      const texts = /booklet(?:-to-fold)?\.pdf$/.test(path)
        ? inOrder
        : inOrder.filter(({ id }) => new RegExp(`/(?:page-)?${id}-a\\d(?:-to-fold)?\\.pdf$`).test(path));
      yield { path, told: readHandout(isFolded ? leafedThrough(pdf) : pdf, texts, rigs, path) };
    }
  }
}
