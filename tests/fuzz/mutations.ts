import { outputFiles, solveContent } from "../../src/build/build.ts";
import { ContentError } from "../../src/build/content-error.ts";
import type { Solved } from "../../src/build/stages.ts";
import { formatReport } from "../../src/checks/reporter.ts";
import { readLibrary } from "../../src/content/read-library.ts";
import type { Source } from "../../src/content/world.ts";
import { hasErrors, type Message } from "../../src/model/message.ts";
import { borrowing } from "../support/borrowed.ts";
import { sourcesOf } from "../support/smallest-content.ts";
import { shipped, smallGuide, wordsOfReasons } from "./content.ts";
import { mutated, oddName } from "./mutate.ts";
import { Choices } from "./random.ts";

/** What became of one changed guide; a fault has the change that led to it. */
export interface Outcome {
  readonly kind: "read" | "built" | "refused" | "fault";
  readonly case: number;
  readonly path: string;
  readonly detail: string;
}

/** A case takes the processor no longer than this [µs], however busy the machine is. */
const slowUs = 20e6;

/** One case of so many is laid out, which takes fifty times as long as to read it. */
const builtOf = 25;
/** So often such a case is changed from the start again until it can be read, as four in ten can. */
const changesToBuild = 8;

const nonsense = /\b(?:NaN|Infinity|undefined)\b|\[object/;

/** Lays out all that the guide comes to, and says what is wrong with a file of it: nonsense, or an address used twice. */
async function wrongFile(solved: Solved): Promise<string | undefined> {
  const addresses = new Set<string>();
  const settings = { date: solved.library.guide.edition, siteAssets: new Map<string, string>() };
  for await (const { path, content } of outputFiles(solved, settings)) {
    const address = path.normalize().toLowerCase();
    if (addresses.has(address)) return `two files for ${path}`;
    addresses.add(address);
    const said = typeof content === "string" ? nonsense.exec(content) : null;
    if (said) return `${path} says ${said.input.slice(said.index - 60, said.index + 60)}`;
  }
  return undefined;
}

/** A small guide of which one file was changed. */
interface Changed {
  readonly guide: ReadonlyMap<string, string>;
  readonly path: string;
}

function changedGuide(choices: Choices): Changed {
  const guide = smallGuide(choices);
  const all = [...guide.keys()];
  // Half the time a text: most of the files are small tables, which layout hardly sees.
  const path = choices.of(choices.below(2) === 0 ? all.filter((one) => one.endsWith(".md")) : all);
  const text = guide.get(path)!;
  if (choices.below(20) === 0) guide.set(oddName(path, choices), text);
  else if (choices.below(50) === 0) guide.delete(path);
  else guide.set(path, mutated(text, choices));
  return { guide, path };
}

type Became = Pick<Outcome, "kind" | "detail">;

/** Files as they were in cases before: what was read of them is known by then, as in a preview after a save. */
const known = new Map<string, Source>();

function withKnown(sources: ReadonlyMap<string, Source>, changed: string): ReadonlyMap<string, Source> {
  return new Map(
    [...sources].map(([path, source]) => {
      if (path === changed) return [path, source];
      const before = known.get(`${path}\n${source.text}`) ?? source;
      known.set(`${path}\n${source.text}`, before);
      return [path, before];
    }),
  );
}

/** Reads a guide; its words are those of reasons alone, unless they are what was changed. */
async function readChanged({ guide, path }: Changed): Promise<Became> {
  const words = path.startsWith("words/") ? [] : [["words/en.yaml", wordsOfReasons]];
  const files = Object.fromEntries([...guide, ...words]);
  const { value, messages } = readLibrary(withKnown(sourcesOf(files), path));
  return faultOf(value, messages) ?? { kind: value ? "read" : "refused", detail: formatReport(messages) };
}

/** Does the sums of a guide, checks it and lays out all that it comes to; fixed words it may borrow, as every guide. */
async function buildChanged({ guide }: Changed): Promise<Became> {
  const world = borrowing(Object.fromEntries(guide), { "words/en.yaml": shipped.get("words/en.yaml")! });
  const { value, messages } = await solveContent(world, ["content"], "library");
  const fault = faultOf(value, messages);
  if (fault) return fault;
  const wrong = value && (await wrongFile(value));
  if (wrong !== undefined) return { kind: "fault", detail: wrong };
  return { kind: value ? "built" : "refused", detail: formatReport(messages) };
}

/** What is wrong with what is said of a guide: nonsense, an error without a place, or no error of one that is not read. */
function faultOf(value: unknown, messages: readonly Message[]): Became | undefined {
  if ((value === undefined) !== hasErrors(messages)) return { kind: "fault", detail: formatReport(messages) };
  const report = formatReport(messages);
  const said = nonsense.exec(report.replace(/"[^"]*"/g, ""));
  if (said) return { kind: "fault", detail: report.split("\n").find((line) => line.includes(said[0]))! };
  const placeless = messages.find(({ severity, place }) => severity === "error" && place.file === "");
  return placeless && { kind: "fault", detail: `no place for ${placeless.code}` };
}

/** What becomes of a guide, where nothing is thrown but an error of its content, and in time. */
async function inTime(changed: Changed, become: (changed: Changed) => Promise<Became>): Promise<Became> {
  const start = process.cpuUsage();
  try {
    const became = await become(changed);
    const { user, system } = process.cpuUsage(start);
    return user + system > slowUs ? { kind: "fault", detail: `took ${(user + system) / 1e6} s` } : became;
  } catch (error) {
    if (error instanceof ContentError) return { kind: "refused", detail: error.message };
    return { kind: "fault", detail: String(error instanceof Error ? error.stack : error) };
  }
}

/** Changes one file of a small guide as the case's number says, and reads it; one case in so many is built too. */
export async function tryMutation(seed: number, number: number): Promise<Outcome> {
  const choices = new Choices(seed * 1_000_003 + number);
  const isBuilt = number % builtOf === 0;
  for (let left = isBuilt ? changesToBuild : 1; ; left--) {
    const changed = changedGuide(choices);
    const told = ({ kind, detail }: Became) => ({ kind, case: number, path: changed.path, detail });
    const read = await inTime(changed, readChanged);
    if (read.kind === "read" && isBuilt) return told(await inTime(changed, buildChanged));
    if (read.kind === "fault" || left === 1) return told(read);
  }
}
