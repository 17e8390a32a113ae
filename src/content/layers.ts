import type { WordTree } from "../model/word-tree.ts";
import type { Source } from "./world.ts";
import { readYaml, type YamlSource } from "./yaml-source.ts";

type Sources = ReadonlyMap<string, Source>;
type Group = Readonly<Record<string, unknown>>;
type Path = readonly (string | number)[];

const isGroup = (value: unknown): value is Group =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/**
 * The sources without those of the library, where the guide's own `guide.yaml` says `library: none`. Fixed words stay:
 * they are the tool's. Lessons, to which nothing else leads, and their plans
 * are not even read where it takes none.
 */
export function withoutRefused(given: Sources): Sources {
  const sources = new Map([...given].filter(([, source]) => !(source.fromLibrary && isOfOnePlace(source))));
  const { library } = topOf(sources);
  if (isGroup(library) && library.lessons === "none") {
    const isRefused = (source: Source) => source.fromLibrary && /^(?:lessons|plans)\//.test(source.path);
    return new Map([...sources].filter(([, source]) => !isRefused(source)));
  }
  if (library !== "none") return sources;
  const own = [...sources.values()].flatMap((source) =>
    source.path.startsWith("words/") ? source : (withoutLibrary(source) ?? []),
  );
  return new Map(own.map((source) => [source.path, source]));
}

/** What is of one water, one shop or one day, which no library lends. */
const isOfOnePlace = ({ path }: Source) => /^(?:swims|notes|shelves|sessions)\//.test(path);

/** The source itself where nothing of the library is below it: what was read of it is still known. */
function withoutLibrary(source: Source): Source | undefined {
  if (source.fromLibrary) return undefined;
  const { under, ...rest } = source;
  const below = under && withoutLibrary(under);
  return below === under ? source : { ...rest, ...(below && { under: below }) };
}

/** What was read of each `guide.yaml` before anything is held against it. */
const read = new WeakMap<Source, unknown>();

function dataOf(source: Source): unknown {
  if (!read.has(source)) read.set(source, readYaml(source.text, source.file).data);
  return read.get(source);
}

/** What the uppermost `guide.yaml` of the guide's own that has a key says there, before anything is held against it. */
export function firstSaid(sources: Sources, key: string): unknown {
  for (let source = sources.get("guide.yaml"); source && !source.fromLibrary; source = source.under) {
    const data = dataOf(source);
    if (isGroup(data) && Object.hasOwn(data, key)) return data[key];
  }
  return undefined;
}

/** What stands in the uppermost `guide.yaml`, before anything is held against it. */
function topOf(sources: Sources): Group {
  const source = sources.get("guide.yaml");
  const data = source && dataOf(source);
  return isGroup(data) ? data : {};
}

/** The language that the guide is in, as its uppermost `guide.yaml` that names one does. */
export function languageOf(sources: Sources): string {
  for (let source = sources.get("guide.yaml"); source; source = source.under) {
    const data = dataOf(source);
    if (isGroup(data) && typeof data.language === "string") return data.language;
  }
  return "en";
}

/** What each guide says of itself, and no library for it. */
const itsOwn = [
  "title",
  "publisher",
  "site-address",
  "edition",
  "look",
  "visit",
  "club-number",
  "access-point",
];
/** What goes with the law of a place. */
const ofThePlace = ["rules", "contacts"];

/** One `guide.yaml` over another, key by key. Who has a lead rule of their own is elsewhere: other rules go with it. */
export function guideOver(over: YamlSource, under: YamlSource): YamlSource {
  const isElsewhere = isGroup(over.data) && "lead-rule" in over.data;
  const left = new Set([...itsOwn, ...(isElsewhere ? ofThePlace : [])]);
  const kept = (data: Group) => Object.fromEntries(Object.entries(data).filter(([key]) => !left.has(key)));
  return laidOver(over, { ...under, data: isGroup(under.data) ? kept(under.data) : under.data }, 1);
}

/** One file of words over another, word by word. */
export function wordsOver(over: YamlSource, under: YamlSource): YamlSource {
  return laidOver({ ...over, data: filledIn(over.data) }, under, Number.POSITIVE_INFINITY);
}

/** Words without those that are still to be filled in: their keys are there, with nothing behind them. */
export function filledIn(words: unknown): unknown {
  if (!isGroup(words)) return words;
  const kept = Object.entries(words).filter(([, said]) => said !== null && said !== "");
  return Object.fromEntries(kept.map(([key, said]) => [key, filledIn(said)]));
}

/** The words of one language over those of another, where it lacks some. */
export function wordTreeOver(over: WordTree, under: WordTree): WordTree {
  if (Object.keys(over).length === 0) return under;
  return mixed(over, under, Number.POSITIVE_INFINITY) as WordTree;
}

/** One YAML text over another; groups of keys are laid into each other down to a level. */
function laidOver(over: YamlSource, under: YamlSource, levels: number): YamlSource {
  const upper = over.data ?? {};
  if (!isGroup(upper) || !isGroup(under.data)) return over;
  const ofPath = (path: Path) => {
    const told = path.slice(0, levels);
    return has(upper, told) || !has(under.data, told) ? over : under;
  };
  return {
    data: mixed(upper, under.data, levels),
    messages: [...under.messages, ...over.messages],
    warnings: over.warnings,
    placeOf: (path) => ofPath(path).placeOf(path),
    noteBehind: (path) => ofPath(path).noteBehind(path),
    typed: (path) => ofPath(path).typed(path),
    placeOfKey: (path, key) => ofPath([...path, key]).placeOfKey(path, key),
  };
}

function mixed(over: Group, under: Group, levels: number): Group {
  const both: Record<string, unknown> = { ...under };
  for (const [key, value] of Object.entries(over)) {
    const below = Object.hasOwn(under, key) ? under[key] : undefined;
    both[key] = levels > 1 && isGroup(value) && isGroup(below) ? mixed(value, below, levels - 1) : value;
  }
  return both;
}

function has(data: unknown, path: Path): boolean {
  const [step, ...rest] = path;
  if (step === undefined) return true;
  return isGroup(data) && Object.hasOwn(data, step) && has(data[step], rest);
}
