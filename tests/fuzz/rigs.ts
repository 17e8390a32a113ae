import type { Rig } from "../../src/model/rig.ts";
import { withWater } from "../../src/solve/in-water.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { makeFigures } from "../../src/words/figures.ts";
import { reasonText } from "../../src/words/reason.ts";
import { makeWords } from "../../src/words/words.ts";
import { endless } from "../support/endless.ts";
import { shippedLibrary } from "../support/shipped-library.ts";
import { Choices } from "./random.ts";

const words = makeWords(shippedLibrary.words);
const figures = makeFigures("metric first", words, "en");

const extremes: readonly ((value: number) => number)[] = [
  () => 0,
  () => -0,
  () => -1,
  () => Number.NaN,
  () => Number.POSITIVE_INFINITY,
  () => Number.NEGATIVE_INFINITY,
  () => 1e-300,
  () => 1e300,
  () => Number.MAX_SAFE_INTEGER,
  () => Number.MIN_VALUE,
  (value) => -value,
  (value) => value * 1000,
  (value) => value / 1000,
  (value) => value * 30,
  (value) => value / 30,
  (value) => value * 3,
  (value) => value / 3,
  (value) => value + 1,
];

type Path = readonly (string | number)[];

/** Where the figures of a rig stand. */
function figuresOf(value: unknown, path: Path = []): Path[] {
  if (typeof value === "number") return [path];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => figuresOf(inner, [...path, key]));
}

function withFigure<T>(value: T, [key, ...rest]: Path, change: (before: number) => number): T {
  if (key === undefined) return change(value as number) as T;
  const copy = (Array.isArray(value) ? [...value] : { ...value }) as Record<string | number, unknown>;
  copy[key] = withFigure(copy[key], rest, change);
  return copy as T;
}

/** In so many cases once the rig goes into the water too, which takes a hundred times as long. */
const inWaterOf = 40;
const slowUs = 20e6;

export interface RigOutcome {
  readonly kind: "solved" | "refused" | "fault";
  readonly case: number;
  readonly detail: string;
}

/** Sets one to four figures of a shipped rig out of all sense, as the case's number says, and does its sums. */
export function tryRig(seed: number, number: number): RigOutcome {
  const choices = new Choices(seed * 1_000_003 + number);
  let rig: Rig = choices.of(shippedLibrary.rigs).rig;
  const changed: string[] = [rig.id];
  for (let count = 1 + choices.below(4); count > 0; count--) {
    const path = choices.of(figuresOf(rig));
    rig = withFigure(rig, path, choices.of(extremes));
    changed.push(`${path.join(".")} = ${path.reduce<unknown>((at, key) => (at as never)[key], rig)}`);
  }
  const outcome = (kind: RigOutcome["kind"], detail: string) => ({
    kind,
    case: number,
    detail: `${changed.join(", ")}: ${detail}`,
  });
  const start = process.cpuUsage();
  try {
    const dry = solveRig(rig);
    const solved = dry.ok && number % inWaterOf === 0 ? withWater(dry.value) : dry;
    const { user, system } = process.cpuUsage(start);
    if (user + system > slowUs) return outcome("fault", `took ${(user + system) / 1e6} s`);
    const said = [...dry.findings, ...solved.findings].map((finding) => reasonText(finding, words, figures));
    const nonsense = said.find((sentence) => /NaN|Infinity|∞|undefined/.test(sentence));
    if (nonsense !== undefined) return outcome("fault", `says "${nonsense}"`);
    const bad = endless(solved);
    if (bad !== undefined) return outcome("fault", `no end to ${bad}`);
    return outcome(solved.ok ? "solved" : "refused", "");
  } catch (error) {
    return outcome("fault", String(error instanceof Error ? error.stack : error));
  }
}
