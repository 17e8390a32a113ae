import type { Message } from "../model/message.ts";
import { type Building, type Built, partsOf } from "./building.ts";
import { exitCodes } from "./command.ts";
import { startCrew } from "./crew/crew.ts";
import { fromSources } from "./from-sources.ts";
import { keptOf } from "./kept-on-shelf.ts";
import { clearUpOften, isLarge } from "./large-guide.ts";

/**
 * Builds a guide. Where the output is what a build made of the same, nothing is made, and the same is told; what making it needs is
 * not even loaded then.
 *
 * @returns the exit code
 */
export async function buildOnce(building: Building): Promise<number> {
  const { sources, options, output, store } = building;
  const { rigs, copies, keepGoing, strict, for: part } = options;
  const from = fromSources(sources, [rigs, copies, keepGoing, strict, part]);
  const before = store.find("built", from)?.value as Built | undefined;
  if (before && output.holds(before.list)) {
    if (before.messages.length > 0) await tellOf(before.messages, building);
    return end(before, building);
  }
  const built = await buildShared(building);
  if (!built) return exitCodes.contentErrors;
  store.put("built", from, built);
  return end(built, building);
}

/** Builds it with the help of others, who load what they need while this thread does. */
async function buildShared(building: Building): Promise<Built | undefined> {
  const { sources, options, folders, store, workers } = building;
  if (isLarge(sources.size)) clearUpOften();
  const shelf = keptOf(folders, store);
  // What was kept is sooner found than workers are started.
  const kept = { shelf, disk: store };
  const crew = startCrew({ sources, parts: partsOf(options) }, kept, shelf.isBare ? workers : 1);
  try {
    const { buildAnew } = await import("./build-anew.ts");
    return await buildAnew(building, crew.store);
  } finally {
    await crew.end();
    shelf.end();
  }
}

const inWords = (names: readonly string[]) => new Intl.ListFormat("en-GB").format(names);

/** What the paper brought up, and how much was made. */
async function end({ count, found, list }: Built, building: Building): Promise<number> {
  const { options, terminal, progress } = building;
  progress?.end();
  if (found.length > 0 && (await tellOf(found, building))) return exitCodes.contentErrors;
  if (options.quiet || options.json) return exitCodes.fine;
  const { out } = options;
  const parts = partsOf(options);
  const paths = [...list.keys()];
  const papers = paths.filter((path) => path.endsWith(".pdf") && !path.startsWith("site/"));
  const folders = [...new Set(papers.map((path) => `${out}/${path.split("/")[0]}`))].sort();
  const open = parts.includes("web") ? `; open ${out}/site/index.html` : "";
  const print = parts.includes("print") ? `; print from ${inWords(folders)}` : "";
  const orders = paths.some((path) => /^(?:sessions|shelves)\//.test(path)) && !parts.includes("data");
  const data = orders ? "; --for data writes what to order" : "";
  terminal.result(`${count} files in ${out}${open}${print}${data}\n`);
  return exitCodes.fine;
}

async function tellOf(messages: readonly Message[], { options, terminal }: Building): Promise<boolean> {
  const { tell } = await import("./tell.ts");
  return tell(messages, options, terminal);
}
