import { solveChecked } from "../build/build.ts";
import { checkSources } from "../build/check-sources.ts";
import { layoutProblems } from "../build/layout-problems.ts";
import type { Source } from "../content/world.ts";
import { type Keep, keeping, type OpenStore } from "../model/kept.ts";
import type { Message } from "../model/message.ts";
import { buildSettings } from "./build-settings.ts";
import type { Progress } from "./command.ts";
import { keptOf } from "./kept-on-shelf.ts";

/** All that there is to tell, and how much content is behind it where that is right. */
export interface Checked {
  readonly messages: readonly Message[];
  readonly counts: { readonly rigs: number; readonly lessons: number } | undefined;
}

/** Checks content once, with what was kept of the folders that it is in. */
export async function checkAnew(
  folders: readonly string[],
  sources: ReadonlyMap<string, Source>,
  store: OpenStore,
  progress: Progress | undefined,
): Promise<Checked> {
  const shelf = keptOf(folders, store);
  try {
    return await checkAll(sources, keeping(shelf), progress);
  } finally {
    shelf.end();
  }
}

/**
 * Reads content, does its sums and lays it out, for what there is to tell alone.
 *
 * @param keepRead keeps what is read of files; never the same object for two files of the same text, as each is known by its own
 */
export async function checkAll(
  sources: ReadonlyMap<string, Source>,
  keep: Keep,
  progress: Progress | undefined,
  keepRead = keep,
): Promise<Checked> {
  const { value: solved, messages } = await solveChecked(checkSources(sources, keepRead), keep);
  progress?.say("laying out");
  const laidOut = solved ? await layoutProblems(solved, { ...buildSettings(solved), keep }) : [];
  return {
    messages: [...messages, ...laidOut],
    counts: solved && { rigs: solved.rigs.length, lessons: solved.library.lessons.length },
  };
}
