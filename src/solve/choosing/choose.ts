import type { Answer, Finding } from "../../core/finding.ts";
import { first } from "../../core/lists.ts";
import type {
  Choice,
  ChoosableRig,
  Conditions,
  OfferedRig,
  RigShelf,
  RuledOutBy,
} from "../../model/choosing.ts";
import type { ChoosingRules } from "../../model/choosing-rules.ts";
import { levels } from "../../model/library.ts";
import type { Rig } from "../../model/rig.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { fromBox } from "../from-box.ts";
import { rigAt } from "../rig-at.ts";
import { solveRig } from "../solve-rig.ts";
import { quickLimits } from "./limits.ts";
import { spokenFor } from "./points.ts";

/** As much of a rig's sums as it may be ruled out by, and all of them for whoever is to make it up. */
export interface Tried {
  readonly verdict: Verdict;
  readonly made: SolvedRig;
}

/** Of the depth that it is made up for. */
type Verdict = Pick<SolvedDepth, "whip" | "findings">;

/** Does the sums of a rig, or knows what came of them. */
export type Try = (rig: Rig) => Answer<Tried>;

/** What of a rig's sums it may be ruled out by. */
export function verdictOf({ depths }: SolvedRig): Verdict {
  const { whip, findings } = first(depths);
  return { ...(whip && { whip }), findings };
}

const inFull = (made: SolvedRig): Tried => ({ verdict: verdictOf(made), made });

function tryAnew(rig: Rig): Answer<Tried> {
  const solved = solveRig(rig);
  return solved.ok ? { ...solved, value: inFull(solved.value) } : solved;
}

/** A rig as it would be fished under some conditions. */
function rigFor(rig: Rig, { depthMm, paceMs, rodLengthMm }: Conditions): Rig {
  return {
    ...rigAt(rig, depthMm, paceMs),
    ...(rodLengthMm !== undefined && rig.outfit !== "whip" && { rodLengthMm }),
  };
}

/**
 * Rigs for some conditions, the most points first, each made up for them; and of every other rig all that rules it out.
 * Sums are done of those alone that nothing else rules out.
 */
export function chooseRigs(
  rules: ChoosingRules,
  conditions: Conditions,
  shelf: RigShelf,
  tryOut: Try = tryAnew,
): Choice {
  const tried = shelf.rigs.map((entry) => {
    const quick = quickLimits(rules.limits, entry, conditions, shelf.lines);
    if (quick.length > 0) return { entry, because: quick };
    const tried = triedFor(entry.rig, conditions, tryOut);
    return "because" in tried ? { entry, because: tried.because } : { entry, tried };
  });
  return {
    offered: tried
      .flatMap((one) => (one.tried ? [offer(one.entry, one.tried, rules, conditions, shelf)] : []))
      .sort(byPoints),
    ruledOut: tried.flatMap(({ entry, because }) => (because ? [{ entry, because }] : [])),
  };
}

function offer(
  entry: ChoosableRig,
  tried: Tried,
  { points }: ChoosingRules,
  conditions: Conditions,
  shelf: RigShelf,
): OfferedRig {
  const because = spokenFor(points, entry, conditions, shelf);
  return {
    entry,
    get made() {
      return tried.made;
    },
    because,
    points: because.reduce((sum, one) => sum + one.points, 0),
  };
}

/** Of rigs with the same points the one that asks for less comes first, then by name. */
function byPoints(a: OfferedRig, b: OfferedRig): number {
  const level = ({ entry }: OfferedRig) => levels.indexOf(entry.level);
  return b.points - a.points || level(a) - level(b) || (a.entry.id < b.entry.id ? -1 : 1);
}

/** Findings of the sums with which a rig is none to fish with, by what they are told under. */
const refusing: Readonly<Record<string, "rod" | "sums">> = {
  "sliding-float-needed": "rod",
  "sliding-float-too-light": "rod",
  "whip-too-short": "rod",
  "whip-sliding-float": "rod",
  "lock-does-not-cock": "sums",
  "load-sinks-float": "sums",
  "pattern.anchor-too-light": "sums",
  "lead-not-allowed": "sums",
  "lead-rule-unread": "sums",
};

/** The rig made up for the conditions, or what of its sums rules it out. */
function triedFor(
  rig: Rig,
  conditions: Conditions,
  tryOut: Try,
): Tried | { readonly because: readonly RuledOutBy[] } {
  const asked = rigFor(rig, conditions);
  const { box } = conditions;
  if (box) {
    const boxed = fromBox(asked, box);
    if (!boxed.ok) return { because: refusedBy(boxed.findings, "box") };
    return checked(inFull(boxed.value.made), conditions);
  }
  const tried = tryOut(asked);
  return tried.ok ? checked(tried.value, conditions) : { because: refusedBy(tried.findings, "sums") };
}

function refusedBy(findings: readonly Finding[], rule: "box" | "sums"): readonly RuledOutBy[] {
  return findings.filter(({ severity }) => severity === "error").map((finding) => ({ rule, finding }));
}

function checked(
  tried: Tried,
  { fromBankMm }: Conditions,
): Tried | { readonly because: readonly RuledOutBy[] } {
  const { whip, findings } = tried.verdict;
  const because: RuledOutBy[] = findings.flatMap((finding) => {
    const rule = refusing[finding.code];
    return rule ? [{ rule, finding }] : [];
  });
  if (whip && whip.reachMm < fromBankMm) because.push({ rule: "reach", reachMm: whip.reachMm, fromBankMm });
  return because.length > 0 ? { because } : tried;
}
