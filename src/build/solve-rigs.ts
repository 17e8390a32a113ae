import { setImmediate as turn } from "node:timers/promises";
import { findingTable, type Subject } from "../core/finding-table.ts";
import { known } from "../core/lists.ts";
import { asTheyStand, type InOrder } from "../model/in-order.ts";
import { type Keep, makeAnew } from "../model/kept.ts";
import type { Library, RigEntry } from "../model/library.ts";
import { type Message, message, type Place, type Staged } from "../model/message.ts";
import type { SolvedRig } from "../model/solved.ts";
import type { Figures } from "../words/figures.ts";
import { findingMessage, severityOf } from "../words/reason.ts";
import type { Words } from "../words/words.ts";
import { wholly } from "./kept-rig.ts";

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
 * process may turn to what else it is asked, such as to stop. A rig of the library that cannot be made up as the guide
 * would have it is left out.
 */
export async function solveRigs(
  library: Library,
  words: Words,
  figures: Figures,
  keep: Keep = makeAnew,
  inOrder: InOrder = asTheyStand,
): Promise<Staged<readonly SolvedRig[]> & { readonly leftOut: readonly string[] }> {
  const lent = new Set(library.lent.values());
  const leftOut: string[] = [];
  const messages: Message[] = [];
  const solved: SolvedRig[] = [];
  const made = new Map<RigEntry, ReturnType<typeof wholly>>();
  for (const entry of inOrder(library.rigs)) {
    await turn();
    made.set(entry, wholly(entry.rig, keep));
  }
  for (const entry of library.rigs) {
    const { value, findings } = known(made, entry);
    const told = new Map(findings.map((finding) => [JSON.stringify(finding), finding]));
    const found: Message[] = [];
    for (const finding of told.values()) {
      const place = placeOfSubject(findingTable[finding.code].subject, entry);
      found.push({
        ...findingMessage(finding, place, words, figures),
        severity: severityOf(finding, library.guide),
      });
    }
    const wrong = lent.has(entry.path) && found.find(({ severity }) => severity === "error");
    messages.push(...(wrong ? [message("lent-left-out", wrong.place, { of: wrong })] : found));
    if (wrong) leftOut.push(`rigs/${entry.id}`);
    else if (value) solved.push(value);
  }
  return { value: solved, leftOut, messages };
}

/** How far over depth a rig is may be said by its setting alone. */
function placeOfSubject(subject: Subject, { placeOf, rig }: RigEntry): Place {
  return placeOf(subject === "setting" && rig.overdepthMm === 0 ? ["setting"] : frontMatter[subject]);
}
