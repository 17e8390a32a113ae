import { known } from "../core/lists.ts";
import { NoRoomError } from "../drawing/no-room.ts";
import type { Drawings } from "../drawing/pictures.ts";
import type { OutputFile } from "../markup/output.ts";
import { movedTo } from "../model/fingerprint.ts";
import { makeAnew } from "../model/kept.ts";
import { message } from "../model/message.ts";
import type { Printable } from "../model/printable.ts";
import {
  type CardLacks,
  type DoesNotFit,
  DoesNotFitError,
  doesNotFitText,
  lacksText,
} from "../print/does-not-fit.ts";
import { type PrintInput, printFiles } from "../print/print-files.ts";
import { toldOfFile } from "../site/file-hash.ts";
import { paperWords } from "../words/paper-words.ts";
import { makeWords, type Words } from "../words/words.ts";
import { ContentError } from "./content-error.ts";
import { rigJson } from "./data.ts";
import { drawingsWithRoom } from "./no-room.ts";
import { type BuildSettings, buildParts, liveBodyIn, type Solved } from "./stages.ts";

/**
 * What is printed, and the site's own copies of it. Where it is to keep going, drawings that have no room are left out: all is
 * laid out before the first file is given, so that it can begin anew, and then takes nothing from what is kept.
 *
 * @returns what the site offers to print
 * @throws ContentError where something does not fit its paper
 */
export async function* printedFiles(
  solved: Solved,
  drawings: Drawings,
  settings: BuildSettings,
): AsyncGenerator<OutputFile, readonly Printable[]> {
  let files = filesOf(solved, drawings, settings);
  const begun = files.next().catch((error) => {
    if (!settings.keepGoing || !(error instanceof NoRoomError)) throw error;
    const withRoom = drawingsWithRoom(drawings, solved, settings);
    files = filesOf(solved, withRoom, { ...settings, keep: makeAnew });
    return files.next();
  });
  for (let next = await begun; ; next = await files.next()) {
    if (next.done) return next.value;
    yield next.value;
  }
}

async function* filesOf(
  solved: Solved,
  drawings: Drawings,
  settings: BuildSettings,
): AsyncGenerator<OutputFile, readonly Printable[]> {
  const { kit } = solved;
  const { parts = buildParts } = settings;
  const tell = settings.tell ?? (() => {});
  const keepGoing = settings.keepGoing
    ? { without: (problems: readonly DoesNotFit[]) => tell(problems.map(unfit(kit.words))) }
    : {};
  const lacking = (lacks: readonly CardLacks[]) =>
    tell(lacks.map((one) => message("card-lacks", one.place, { reason: lacksText(one, kit.words) })));
  const printables: Printable[] = [];
  try {
    for await (const file of printFiles({
      ...printInput(solved, drawings, settings),
      lacking,
      ...keepGoing,
    })) {
      const { path, printable } = file;
      if (parts.includes(path.startsWith("site/") ? "web" : "print")) yield file;
      if (!printable || !parts.includes("web")) continue;
      // The site has its own copy: served alone, or kept on a phone, it reaches nothing outside its folder.
      const copy = movedTo(`site/${path}`, file);
      printables.push({ ...printable, path: copy.path, ...toldOfFile(file) });
      yield copy;
    }
  } catch (error) {
    if (!(error instanceof DoesNotFitError)) throw error;
    throw new ContentError(error.problems.map(unfit(kit.words)));
  }
  return printables;
}

/** What the site offers to print, where all of that is kept. */
export async function printablesOf(
  solved: Solved,
  drawings: Drawings,
  settings: BuildSettings,
): Promise<readonly Printable[]> {
  const files = filesOf(solved, drawings, settings);
  for (;;) {
    const next = await files.next();
    if (next.done) return next.value;
  }
}

/** What printing is made from. */
export function printInput(solved: Solved, drawings: Drawings, settings: BuildSettings): PrintInput {
  const { library, source, rigs, kit } = solved;
  const { guide, lessons, pages } = library;
  const entries = new Map(library.rigs.map((entry) => [entry.rig.id, entry]));
  const words = paperWords(library.words);
  return {
    ...settings,
    ...(settings.keep && { kept: { keep: settings.keep, words: JSON.stringify(words) } }),
    guide,
    images: source.images,
    ...(library.font && { font: library.font }),
    rigs: rigs.map((one) => ({ solved: one, entry: known(entries, one.rig.id) })),
    markings: new Map(library.floats.map(({ float, marking }) => [float.id, marking])),
    handouts: { lessons, pages, drawings, liveBody: liveBodyIn(solved) },
    plans: library.plans,
    swims: solved.swims,
    shelves: solved.shelves,
    sessions: solved.sessions,
    // Were a word missing here, paper would not know of its change.
    kit: { ...kit, words: makeWords(words, guide.language) },
    dataOf: rigJson,
  };
}

const unfit = (words: Words) => (problem: DoesNotFit) =>
  message("does-not-fit", problem.place ?? { file: "guide.yaml" }, {
    reason: doesNotFitText(problem, words),
    ...(problem.shorten && { shorten: problem.shorten }),
  });
