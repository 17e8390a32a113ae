import type { Finding } from "../../core/finding.ts";
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
import type { SolvedRig } from "../../model/solved.ts";
import { fromBox } from "../from-box.ts";
import { rigAt } from "../rig-at.ts";
import { solveRig } from "../solve-rig.ts";
import { quickLimits } from "./limits.ts";
import { spokenFor } from "./points.ts";

/** The sums of a rig. */
export type Solve = (rig: Rig) => ReturnType<typeof solveRig>;

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
 *
 * @param solve does them, or knows them
 */
export function chooseRigs(
  rules: ChoosingRules,
  conditions: Conditions,
  shelf: RigShelf,
  solve: Solve = solveRig,
): Choice {
  const tried = shelf.rigs.map((entry) => {
    const quick = quickLimits(rules.limits, entry, conditions, shelf.lines);
    if (quick.length > 0) return { entry, because: quick };
    const made = madeFor(entry.rig, conditions, solve);
    return "because" in made ? { entry, because: made.because } : { entry, made: made.made };
  });
  return {
    offered: tried
      .flatMap((one) => (one.made ? [offer(one.entry, one.made, rules, conditions, shelf)] : []))
      .sort(byPoints),
    ruledOut: tried.flatMap(({ entry, because }) => (because ? [{ entry, because }] : [])),
  };
}

function offer(
  entry: ChoosableRig,
  made: SolvedRig,
  { points }: ChoosingRules,
  conditions: Conditions,
  shelf: RigShelf,
): OfferedRig {
  const because = spokenFor(points, entry, conditions, shelf);
  return { entry, made, because, points: because.reduce((sum, one) => sum + one.points, 0) };
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
};

/** The rig made up for the conditions, or what of its sums rules it out. */
function madeFor(
  rig: Rig,
  conditions: Conditions,
  solve: Solve,
): { readonly made: SolvedRig } | { readonly because: readonly RuledOutBy[] } {
  const asked = rigFor(rig, conditions);
  const { box } = conditions;
  if (box) {
    const boxed = fromBox(asked, box);
    if (!boxed.ok) return { because: refusedBy(boxed.findings, "box") };
    return checked(boxed.value.made, conditions);
  }
  const solved = solve(asked);
  return solved.ok ? checked(solved.value, conditions) : { because: refusedBy(solved.findings, "sums") };
}

function refusedBy(findings: readonly Finding[], rule: "box" | "sums"): readonly RuledOutBy[] {
  return findings.filter(({ severity }) => severity === "error").map((finding) => ({ rule, finding }));
}

function checked(
  made: SolvedRig,
  { fromBankMm }: Conditions,
): { readonly made: SolvedRig } | { readonly because: readonly RuledOutBy[] } {
  const { whip, findings } = first(made.depths);
  const because: RuledOutBy[] = findings.flatMap((finding) => {
    const rule = refusing[finding.code];
    return rule ? [{ rule, finding }] : [];
  });
  if (whip && whip.reachMm < fromBankMm) because.push({ rule: "reach", reachMm: whip.reachMm, fromBankMm });
  return because.length > 0 ? { because } : { made };
}
