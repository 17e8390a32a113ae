import { SheetNote } from "../../templates/cards/sheet-note.tsx";
import type { Guide, Lesson, RigEntry } from "../content/library.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { layOut } from "../layout/lay-out.ts";
import { nodeFonts } from "../layout/node-fonts.ts";
import { drawingToPng } from "../layout/png.ts";
import type { OutputFile } from "../markup/output.ts";
import type { SolvedRig } from "../solve/solved.ts";
import { cardSides } from "./card-sides.ts";
import { type DoesNotFit, DoesNotFitError } from "./does-not-fit.ts";
import { type Id1Faces, id1Card, layOutId1 } from "./id1-card.ts";
import { type PaperName, paperSizes } from "./paper-sizes.ts";
import { paintPdf } from "./pdf.ts";
import type { DocumentFacts } from "./pdf-metadata.ts";
import { noteWidthMm, sheets, type Turning, turnings } from "./sheet.ts";

export interface PrintInput {
  readonly guide: Guide;
  readonly rigs: readonly { readonly entry: RigEntry; readonly solved: SolvedRig }[];
  readonly lessons: readonly Lesson[];
  readonly kit: DrawingKit;
  /** Day the files are dated, `2026-05-01`. */
  readonly date: string;
}

/** Dots to the inch of the previews. */
export const previewDpi = 300;

const sheetNames: Readonly<Record<Turning, string>> = {
  "long edge": "cards/sheet.pdf",
  "short edge": "cards/sheet-short-edge.pdf",
  fold: "cards/sheet-fold.pdf",
};

/**
 * Everything that is printed: a card a rig, the sheets of all cards, and previews.
 *
 * @throws DoesNotFitError before the first file, with everything that does not fit
 */
export async function* printFiles(input: PrintInput): AsyncIterable<OutputFile> {
  const fonts = nodeFonts();
  const kit: DrawingKit = { ...input.kit, measure: fonts.measure };
  const { guide } = input;
  const { words } = kit;
  const facts = (title: string): DocumentFacts => ({
    title,
    author: guide.publisher,
    language: guide.language,
    date: input.date,
  });

  const faces: { solved: SolvedRig; faces: Id1Faces }[] = [];
  for (const { solved } of input.rigs) {
    faces.push({ solved, faces: await layOutId1(solved, guide, kit, fonts) });
  }
  const problems = faces.flatMap(({ solved, faces: { front, back } }) => [
    ...front.overflows.map((o): DoesNotFit => ({ ...o, of: solved.rig.id, format: "ID-1", side: "front" })),
    ...back.overflows.map((o): DoesNotFit => ({ ...o, of: solved.rig.id, format: "ID-1", side: "back" })),
  ]);
  if (problems.length > 0) throw new DoesNotFitError(problems, words);

  const cards = faces.map(({ solved, faces: both }) => id1Card(solved.rig.id, both));
  for (const [i, card] of cards.entries()) {
    const { solved, faces: both } = faces[i]!;
    const title = words("card.document", { rig: solved.rig.title });
    yield { path: `cards/${card.id}.pdf`, content: await paintPdf(cardSides(card), facts(title), fonts) };
    for (const side of ["front", "back"] as const) {
      yield {
        path: `site/previews/${card.id}-${side}.png`,
        content: drawingToPng(both[side], previewDpi, fonts),
      };
    }
  }

  const paper = paperSizes[guide.paper satisfies PaperName];
  for (const turning of turnings) {
    const key = turning.replace(" ", "-");
    const note = (name: string) =>
      layOut(
        SheetNote({ lines: [words("card.sheet.scale"), words(`card.sheet.${name}`)] }),
        { widthMm: noteWidthMm(paper) },
        fonts,
      );
    const notes = { front: await note(key), back: await note("back") };
    const duplex = turning === "fold" ? "one side" : turning;
    const sides = sheets(cards, paper, turning, notes);
    yield {
      path: sheetNames[turning],
      content: await paintPdf(
        sides,
        { ...facts(words("card.sheet.document", { guide: guide.title })), duplex },
        fonts,
      ),
    };
  }
}
