import { outputFiles, solveChecked } from "../build/build.ts";
import { checkSources } from "../build/check-sources.ts";
import { ContentError } from "../build/content-error.ts";
import type { BuildSettings, Solved } from "../build/stages.ts";
import type { OutputFile } from "../markup/output.ts";
import { keeping, type Store } from "../model/kept.ts";
import type { Message } from "../model/message.ts";
import { buildSettings } from "./build-settings.ts";
import { type Building, type Built, type Options, partsOf } from "./building.ts";
import { type Progress, UsageError } from "./command.ts";
import { noSuch } from "./no-such.ts";
import { tell } from "./tell.ts";

/**
 * Makes a guide and writes it; what is wrong with it is told, and then nothing is written.
 *
 * @param store has what is kept of the guide, and what others make of it meanwhile
 */
export async function buildAnew(building: Building, store: Store): Promise<Built | undefined> {
  const { sources, options, terminal, progress, output } = building;
  const keep = keeping(store);
  const { value: solved, messages } = await solveChecked(checkSources(sources, keep), keep);
  progress?.end();
  const stops = messages.length > 0 && tell(messages, options, terminal);
  if (stops || !solved) return undefined;
  const found: Message[] = [];
  const settings = {
    ...buildSettings(solved),
    keep,
    sheets: sheetChoice(options, solved),
    parts: partsOf(options),
    keepGoing: options.keepGoing === true,
    tell: (told: readonly Message[]) => {
      found.push(...told);
      // Nothing is written yet: an earlier output stays whole.
      if (options.strict && !options.keepGoing && found.length > 0) throw new ContentError(found);
    },
  };
  progress?.say("writing");
  const count = await output.replace(counted(outputFiles(solved, settings), progress));
  return { count, list: output.list() ?? new Map(), messages, found };
}

/** Files on their way, counted for whoever waits. */
async function* counted(files: AsyncIterable<OutputFile>, progress: Progress | undefined) {
  let count = 0;
  for await (const file of files) {
    progress?.say(`writing file ${++count}: ${file.path}`);
    yield file;
  }
}

/** The cards asked for on the sheets. */
function sheetChoice({ rigs, copies }: Options, solved: Solved): NonNullable<BuildSettings["sheets"]> {
  const names = rigs === undefined ? undefined : String(rigs).split(",");
  const known = solved.rigs.map(({ rig }) => rig.id);
  const unknown = names?.find((name) => !known.includes(name));
  if (unknown !== undefined) throw noSuch("rig", unknown, known);
  if (copies !== undefined && !/^[1-9]\d{0,2}$/.test(String(copies))) {
    throw new UsageError(`--copies ${copies} is not understood; write a number from 1 to 999`);
  }
  return { ...(names && { rigs: names }), ...(copies !== undefined && { copies: Number(copies) }) };
}
