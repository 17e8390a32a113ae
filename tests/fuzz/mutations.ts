import { solveContent } from "../../src/build/build.ts";
import { formatReport } from "../../src/checks/reporter.ts";
import { readLibrary } from "../../src/content/read-library.ts";
import { sourcesOf, worldOf } from "../support/smallest-content.ts";
import { smallGuide, wordsOfReasons } from "./content.ts";
import { mutated, oddName } from "./mutate.ts";
import { Choices } from "./random.ts";

/** What became of one changed guide; a fault has the change that led to it. */
export interface Outcome {
  readonly kind: "read" | "refused" | "fault";
  readonly case: number;
  readonly path: string;
  readonly detail: string;
}

/** A case takes the processor no longer than this [µs], however busy the machine is. */
const slowUs = 20e6;

/** One case of so many goes on to the sums, the live figures and the links; to read takes a tenth of their time. */
const solvedOf = 8;

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
  try {
    const isSolved = number % solvedOf === 0;
    if (!isSolved && !path.startsWith("words/")) guide.set("words/en.yaml", wordsOfReasons);
    const files = Object.fromEntries(guide);
    const { value, messages } = isSolved
      ? await solveContent(worldOf(files), ["content"])
      : readLibrary(sourcesOf(files));
    const report = formatReport(messages);
    const { user, system } = process.cpuUsage(start);
    if (user + system > slowUs) return outcome("fault", `took ${(user + system) / 1e6} s`);
    const nonsense = /\b(?:NaN|Infinity|undefined)\b|\[object/.exec(report.replace(/"[^"]*"/g, ""));
    if (nonsense) return outcome("fault", report.split("\n").find((line) => line.includes(nonsense[0]))!);
    const placeless = messages.find(({ severity, place }) => severity === "error" && place.file === "");
    if (placeless) return outcome("fault", `no place for ${placeless.code}`);
    return outcome(value ? "read" : "refused", report);
  } catch (error) {
    return outcome("fault", String(error instanceof Error ? error.stack : error));
  }
}
