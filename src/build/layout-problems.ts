import { drawPictures } from "../drawing/pictures.ts";
import type { Message } from "../model/message.ts";
import { tryPages } from "../site/site-files.tsx";
import { outputFiles } from "./build.ts";
import { ContentError } from "./content-error.ts";
import { siteInput } from "./site-input.ts";
import type { BuildSettings, Solved } from "./stages.ts";

/** What keeps cards, handouts and pages from being laid out, or what they lack, each once. */
export async function layoutProblems(solved: Solved, given: BuildSettings): Promise<readonly Message[]> {
  const found = new Map<string, Message>();
  const tell = (told: readonly Message[]) => {
    for (const one of told) found.set(JSON.stringify(one), one);
  };
  const settings: BuildSettings = { ...given, keepGoing: true, tell };
  try {
    // What is of paper is told before the first file is given.
    for await (const _ of outputFiles(solved, { ...settings, parts: ["print"] })) break;
  } catch (error) {
    if (!(error instanceof ContentError)) throw error;
    tell(error.messages);
  }
  tryPages(siteInput(solved, drawPictures(solved.source), [], { ...settings, siteAssets: new Map() }));
  return [...found.values()];
}
