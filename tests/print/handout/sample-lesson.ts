import type { Root } from "mdast";
import { readMarkdown } from "../../../src/content/markdown-source.ts";
import { drawPictures } from "../../../src/drawing/pictures.ts";
import { nodeFonts } from "../../../src/layout/node-fonts.ts";
import { asTheyStand } from "../../../src/model/in-order.ts";
import { inMemory, makeAnew } from "../../../src/model/kept.ts";
import type { Lesson, Library, Prose } from "../../../src/model/library.ts";
import { handoutPieces, handoutProblems, layOutHandouts } from "../../../src/print/handout/handout-files.ts";
import type { RigCards } from "../../../src/print/handout/rig-cards.ts";
import type { Press } from "../../../src/print/press.ts";
import { drawingKit } from "../../support/drawing-kit.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";
import { sampleGuide } from "../sample-print.ts";

const fonts = nodeFonts();

/** A press for the sample guide, some of it changed. */
export function samplePress(guide: Partial<Press["guide"]> = {}): Press {
  return {
    guide: { ...sampleGuide, ...guide },
    kit: { ...drawingKit, measure: fonts.measure },
    fonts,
    facts: (title) => ({ title, author: sampleGuide.publisher, language: "en", date: "2026-05-01" }),
    keep: makeAnew,
    inOrder: asTheyStand,
    parts: makeAnew,
    pictures: makeAnew,
    marks: inMemory(Number.POSITIVE_INFINITY),
    textsFrom: "",
    from: "",
  };
}

export function sampleLesson(id: string, order: number, title: string, markdown: string): Lesson {
  const { body } = readMarkdown(`---\n---\n${markdown}`, `lessons/${id}.md`);
  return { id, path: `lessons/${id}.md`, title, summary: "What to do first.", body, order, part: "Start" };
}

/** All handouts of some lessons and pages, by path, with nothing that does not fit. */
export async function handoutsOf(
  lessons: readonly Lesson[],
  press: Press,
  pages: readonly Prose[] = [],
  cards: RigCards = new Map(),
): Promise<Map<string, Uint8Array>> {
  const input = {
    lessons,
    pages,
    drawings: drawPictures({
      library: {} as Library,
      solved: new Map([[sampleWaggler.rig.id, sampleWaggler]]),
      images: new Map(),
    }),
    liveBody: ({ body }: { body: Root }) => body,
    cards,
  };
  const laid = await layOutHandouts(input, press);
  const problems = handoutProblems(laid);
  if (problems.length > 0) throw new Error(JSON.stringify(problems));
  const files = new Map<string, Uint8Array>();
  for (const piece of handoutPieces(laid, press))
    for await (const { path, content } of piece()) files.set(path, content as Uint8Array);
  return files;
}
