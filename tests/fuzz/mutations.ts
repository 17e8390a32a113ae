import { outputFiles, type Solved, solveContent } from "../../src/build/build.ts";
import { ContentError } from "../../src/build/content-error.ts";
import { formatReport } from "../../src/checks/reporter.ts";
import { readLibrary } from "../../src/content/read-library.ts";
import { sourcesOf, worldOf } from "../support/smallest-content.ts";
import { smallGuide, wordsOfReasons } from "./content.ts";
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

/** One case of so many goes on to sums, links, layout, papers and pages; to read takes a hundredth of their time. */
const builtOf = 20;

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

/** Changes one file of a small guide as the case's number says, and reads it. */
export async function tryMutation(seed: number, number: number): Promise<Outcome> {
  const choices = new Choices(seed * 1_000_003 + number);
  const guide = smallGuide(choices);
  const path = choices.of([...guide.keys()]);
  const text = guide.get(path)!;
  if (choices.below(20) === 0) guide.set(oddName(path, choices), text);
  else if (choices.below(50) === 0) guide.delete(path);
  else guide.set(path, mutated(text, choices));
  const outcome = (kind: Outcome["kind"], detail: string) => ({ kind, case: number, path, detail });
  const start = process.cpuUsage();
  const tooSlow = () => {
    const { user, system } = process.cpuUsage(start);
    return user + system > slowUs ? outcome("fault", `took ${(user + system) / 1e6} s`) : undefined;
  };
  try {
    const isBuilt = number % builtOf === 0;
    if (!isBuilt && !path.startsWith("words/")) guide.set("words/en.yaml", wordsOfReasons);
    const files = Object.fromEntries(guide);
    const { value, messages } = isBuilt
      ? await solveContent(worldOf(files), ["content"])
      : readLibrary(sourcesOf(files));
    const report = formatReport(messages);
    const said = nonsense.exec(report.replace(/"[^"]*"/g, ""));
    if (said) return outcome("fault", report.split("\n").find((line) => line.includes(said[0]))!);
    const placeless = messages.find(({ severity, place }) => severity === "error" && place.file === "");
    if (placeless) return outcome("fault", `no place for ${placeless.code}`);
    if (!value) return tooSlow() ?? outcome("refused", report);
    if (!("live" in value)) return tooSlow() ?? outcome("read", report);
    const wrong = await wrongFile(value);
    return wrong === undefined ? (tooSlow() ?? outcome("built", report)) : outcome("fault", wrong);
  } catch (error) {
    if (error instanceof ContentError) return tooSlow() ?? outcome("refused", error.message);
    return outcome("fault", String(error instanceof Error ? error.stack : error));
  }
}
