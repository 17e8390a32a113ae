import type { Library } from "../content/library.ts";
import { readLibrary } from "../content/read-library.ts";
import { readSources, type World } from "../content/world.ts";
import { measureText } from "../drawing/font-metrics.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import type { OutputFile } from "../markup/output.ts";
import { DoesNotFitError } from "../print/does-not-fit.ts";
import { printFiles } from "../print/print-files.ts";
import { makeFigures } from "../report/figures.ts";
import { hasErrors, type Staged } from "../report/message.ts";
import { makeWords } from "../report/words.ts";
import type { SolvedRig } from "../solve/solved.ts";
import { dataFiles } from "./data.ts";
import { solveLibrary } from "./solve-library.ts";

/** Content with its sums done: all that pages, cards and data are made from. */
export interface Solved {
  readonly library: Library;
  readonly rigs: readonly SolvedRig[];
  readonly kit: DrawingKit;
}

/**
 * Content folders → sources → library → solved rigs. The value is missing where the content has errors; every message
 * of every stage that could run is given, whether or not there is a value.
 */
export async function solveContent(
  world: World,
  folders: readonly string[],
): Promise<Staged<Solved | undefined>> {
  const sources = await readSources(world, folders);
  const { value: library, messages } = readLibrary(sources);
  if (!library) return { value: undefined, messages };
  const words = makeWords(library.words);
  const kit: DrawingKit = { words, figures: makeFigures(library.guide.units, words), measure: measureText };
  const solved = solveLibrary(library, words, kit.figures);
  const all = [...messages, ...solved.messages];
  return { value: hasErrors(all) ? undefined : { library, rigs: solved.value, kit }, messages: all };
}

/** Something in the content that only shows when pages and cards are laid out. */
export class ContentError extends Error {}

/**
 * Solved rigs → data, cards and pages, one file at a time.
 *
 * @param date day the files are dated, `2026-11-20`
 * @throws ContentError where something does not fit its card
 */
export async function* outputFiles({ library, rigs, kit }: Solved, date: string): AsyncIterable<OutputFile> {
  const { guide, lessons } = library;
  yield* dataFiles(rigs, library.scales, guide);
  const entries = new Map(library.rigs.map((entry) => [entry.rig.id, entry]));
  const printed = rigs.map((solved) => ({ solved, entry: entries.get(solved.rig.id)! }));
  try {
    yield* printFiles({ guide, rigs: printed, lessons, kit, date });
  } catch (error) {
    throw error instanceof DoesNotFitError ? new ContentError(error.message) : error;
  }
}
