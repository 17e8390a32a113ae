import { readSources, type World } from "../content/world.ts";
import { drawPictures } from "../drawing/pictures.ts";
import type { OutputFile } from "../markup/output.ts";
import type { InOrder } from "../model/in-order.ts";
import { type Keep, makeAnew } from "../model/kept.ts";
import { hasErrors, type Staged, withoutConsequences } from "../model/message.ts";
import { stageDone } from "../model/stage-times.ts";
import { siteFiles } from "../site/site-files.tsx";
import { checkSources } from "./check-sources.ts";
import { dataFiles } from "./data.ts";
import { withPlace } from "./no-room.ts";
import { printedFiles } from "./printed-files.ts";
import { siteInput } from "./site-input.ts";
import { solveLibrary } from "./solve-library.ts";
import { type BuildSettings, buildParts, type Read, type Solved } from "./stages.ts";

// The way through the house: its picture stands at the head of DEVELOPERS.md, and a test holds it against these calls.

/**
 * Content folders → sources → library. The value is missing where the content has errors that leave too little to go on with.
 *
 * @param shipped folder of the library that comes with the tool, for a guide of one's own to borrow from
 */
export async function readContent(
  world: World,
  folders: readonly string[],
  shipped?: string,
  keep: Keep = makeAnew,
): Promise<Staged<Read | undefined>> {
  const sources = await readSources(world, folders, shipped);
  return checkSources(sources, keep);
}

/**
 * Content folders → sources → library → solved. The value is missing where the content has errors; every message of
 * every stage that could run is given, whether or not there is a value.
 */
export async function solveContent(
  world: World,
  folders: readonly string[],
  shipped?: string,
  keep: Keep = makeAnew,
): Promise<Staged<Solved | undefined>> {
  return solveChecked(await readContent(world, folders, shipped, keep), keep);
}

/**
 * Library → solved, of content that has been read and checked.
 *
 * @param told without all that is only weak where errors alone are asked for
 * @param inOrder in which the rigs are solved
 */
export async function solveChecked(
  read: Staged<Read | undefined>,
  keep: Keep = makeAnew,
  told: "all" | "errors" = "all",
  inOrder?: InOrder,
): Promise<Staged<Solved | undefined>> {
  if (!read.value) return { value: undefined, messages: read.messages };
  const { value, messages } = await solveLibrary(read.value, keep, told, inOrder);
  const all = withoutConsequences([...read.messages, ...messages]);
  return { value: hasErrors(all) ? undefined : value, messages: all };
}

/**
 * Solved → data, what is printed, and the site, one file at a time.
 *
 * @throws ContentError where something does not fit its paper, or its drawing
 */
export async function* outputFiles(solved: Solved, settings: BuildSettings): AsyncIterable<OutputFile> {
  const { parts = buildParts } = settings;
  const drawings = drawPictures(solved.source);
  if (parts.includes("data")) yield* counted("data", dataFiles(solved, settings.keep));
  if (!parts.includes("web") && !parts.includes("print")) return;
  try {
    const printables = yield* printedFiles(solved, drawings, settings);
    stageDone("print", printables.length, "printables for the site");
    if (parts.includes("web"))
      yield* counted("site", siteFiles(siteInput(solved, drawings, printables, settings)));
  } catch (error) {
    throw withPlace(error, solved);
  }
}

/** Files of a stage, which is done once they are all taken. */
async function* counted(stage: string, files: AsyncIterable<OutputFile> | Iterable<OutputFile>) {
  let count = 0;
  for await (const file of files) {
    count++;
    yield file;
  }
  stageDone(stage, count, "files");
}
