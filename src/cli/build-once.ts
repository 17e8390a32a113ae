import { outputFiles, solveChecked } from "../build/build.ts";
import { checkSources } from "../build/check-sources.ts";
import { ContentError } from "../build/content-error.ts";
import { type BuildSettings, buildParts, type Solved } from "../build/stages.ts";
import type { Source } from "../content/world.ts";
import type { OutputFile } from "../markup/output.ts";
import { type Keep, keeping, type Store } from "../model/kept.ts";
import type { Message } from "../model/message.ts";
import { buildSettings } from "./build-settings.ts";
import { exitCodes, type Progress, type Terminal, UsageError } from "./command.ts";
import { startCrew } from "./crew/crew.ts";
import { fromSources } from "./from-sources.ts";
import type { FileList } from "./output/file-list.ts";
import type { ClaimedOutput } from "./output/with-output.ts";
import { tell } from "./report-options.ts";

interface Building {
  readonly sources: ReadonlyMap<string, Source>;
  readonly options: Options;
  readonly terminal: Terminal;
  readonly progress: Progress | undefined;
  readonly output: ClaimedOutput;
  readonly store: Store;
  /** How many are at work, this one among them. */
  readonly workers: number;
}

/** What a build wrote, as many files as it says, and what it had to tell of the content and of the paper. */
interface Built {
  readonly count: number;
  readonly list: FileList;
  readonly messages: readonly Message[];
  readonly found: readonly Message[];
}

/**
 * Builds a guide. Where the output is what a build made of the same, nothing is made, and the same is told.
 *
 * @returns the exit code
 */
export async function buildOnce(building: Building): Promise<number> {
  const { sources, options, terminal, output, store } = building;
  const { rigs, copies, keepGoing, strict, for: part } = options;
  const from = fromSources(sources, [rigs, copies, keepGoing, strict, part]);
  const before = store.find("built", from)?.value as Built | undefined;
  if (before && output.holds(before.list)) {
    if (before.messages.length > 0) tell(before.messages, options, terminal);
    return end(before, building);
  }
  const built = await buildAnew(building);
  if (!built) return exitCodes.contentErrors;
  store.put("built", from, built);
  return end(built, building);
}

/** What the paper brought up, and how much was made. */
function end({ count, found }: Built, { options, terminal, progress }: Building): number {
  progress?.end();
  if (found.length > 0 && tell(found, options, terminal)) return exitCodes.contentErrors;
  if (options.quiet || options.json) return exitCodes.fine;
  const open = partsOf(options).includes("web") ? `; open ${options.out}/site/index.html` : "";
  terminal.result(`${count} files in ${options.out}${open}\n`);
  return exitCodes.fine;
}

async function buildAnew(building: Building): Promise<Built | undefined> {
  const crew = startCrew(
    building.workers,
    { sources: building.sources, parts: partsOf(building.options) },
    building.store,
  );
  return buildWith(keeping(crew.store), building).finally(crew.end);
}

async function buildWith(keep: Keep, building: Building): Promise<Built | undefined> {
  const { sources, options, terminal, progress, output } = building;
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

const partsOf = (options: Options) =>
  buildParts.filter((part) => options.for === undefined || options.for === part);

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
  if (unknown !== undefined)
    throw new UsageError(`there is no rig "${unknown}"; there are ${known.join(", ")}`);
  if (copies !== undefined && !/^[1-9]\d{0,2}$/.test(String(copies))) {
    throw new UsageError(`--copies ${copies} is not understood; write a number from 1 to 999`);
  }
  return { ...(names && { rigs: names }), ...(copies !== undefined && { copies: Number(copies) }) };
}

type Options = Readonly<Record<string, unknown>>;
