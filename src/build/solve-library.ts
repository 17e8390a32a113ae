import type { Finding } from "../core/finding.ts";
import type { Library, RigEntry } from "../model/library.ts";
import type { Message, Staged } from "../model/message.ts";
import type { SolvedRig } from "../model/solved.ts";
import { withWater } from "../solve/in-water.ts";
import { solveRig } from "../solve/solve-rig.ts";
import type { Figures } from "../words/figures.ts";
import { findingMessage } from "../words/reason.ts";
import type { Words } from "../words/words.ts";

/** Front matter that a reason is about; the loading where nothing else is named. */
const placeOfReason: readonly (readonly [RegExp, string])[] = [
  [/^(float|capacity)-/, "float"],
  [/^(depth|sliding)-/, "depths"],
  [/^setting-/, "overdepth"],
  [/^feed-/, "feed"],
  [/^main-line-/, "main-line"],
];

/** The sums of every rig; what they found stands at the part of the rig's file that it is about. */
export function solveLibrary(library: Library, words: Words, figures: Figures): Staged<readonly SolvedRig[]> {
  const messages: Message[] = [];
  const solved = library.rigs.flatMap((entry) => {
    const dry = solveRig(entry.rig);
    const rig = dry.ok ? withWater(dry.value) : dry;
    const told = new Map(
      [...dry.findings, ...rig.findings].map((finding) => [JSON.stringify(finding), finding]),
    );
    for (const finding of told.values()) {
      const message = findingMessage(finding, placeOf(entry, finding), words, figures);
      const breach = finding.code === "lead-not-allowed";
      messages.push(breach ? { ...message, severity: library.guide.leadBreach } : message);
    }
    return rig.ok ? [rig.value] : [];
  });
  return { value: solved, messages };
}

function placeOf(entry: RigEntry, { code }: Finding) {
  const key = placeOfReason.find(([pattern]) => pattern.test(code))?.[1] ?? "loading";
  return entry.placeOf([key]);
}
