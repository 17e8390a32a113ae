import { setImmediate as turn } from "node:timers/promises";
import { findingTable, type Subject } from "../core/finding-table.ts";
import type { Library } from "../model/library.ts";
import type { Message, Staged } from "../model/message.ts";
import type { SolvedRig } from "../model/solved.ts";
import { withWater } from "../solve/in-water.ts";
import { solveRig } from "../solve/solve-rig.ts";
import type { Figures } from "../words/figures.ts";
import { findingMessage, severityOf } from "../words/reason.ts";
import type { Words } from "../words/words.ts";

/** Front matter that a finding is about. */
const frontMatter: Readonly<Record<Subject, readonly string[]>> = {
  float: ["float"],
  depth: ["depths"],
  setting: ["overdepth"],
  bait: ["bait"],
  feed: ["feed"],
  line: ["main-line"],
  loading: ["loading"],
  rig: [],
};

/**
 * The sums of every rig; what they found stands at the part of the rig's file that it is about. Between two rigs the
 * process may turn to what else it is asked, such as to stop.
 */
export async function solveLibrary(
  library: Library,
  words: Words,
  figures: Figures,
): Promise<Staged<readonly SolvedRig[]>> {
  const messages: Message[] = [];
  const solved: SolvedRig[] = [];
  for (const entry of library.rigs) {
    await turn();
    const dry = solveRig(entry.rig);
    const rig = dry.ok ? withWater(dry.value) : dry;
    const told = new Map(
      [...dry.findings, ...rig.findings].map((finding) => [JSON.stringify(finding), finding]),
    );
    for (const finding of told.values()) {
      const place = entry.placeOf(frontMatter[findingTable[finding.code].subject]);
      messages.push({
        ...findingMessage(finding, place, words, figures),
        severity: severityOf(finding, library.guide),
      });
    }
    if (rig.ok) solved.push(rig.value);
  }
  return { value: solved, messages };
}
