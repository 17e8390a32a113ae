import type { Basis } from "../basis.ts";
import { type Answer, answer, noAnswer, warning } from "../finding.ts";
import { first } from "../lists.ts";
import type { G } from "../units.ts";
import type { Line } from "./line.ts";

/** A knot between two parts of the line and the share of the line's strength it leaves. */
export interface Knot {
  readonly id: string;
  readonly title: string;
  readonly strengthShareLow: number;
  readonly strengthShareHigh: number;
  readonly basis: Basis;
}

/** Places for a knot, and the line that it weakens. */
const knotPlaces = ["hook", "hook length loop", "main line loop"] as const;
export type KnotPlace = (typeof knotPlaces)[number];

export interface TiedKnot {
  readonly where: KnotPlace;
  readonly knot: Knot;
}

/** Main line to hook, as far as it can break. */
interface LineChainInput {
  readonly mainLine: Line;
  readonly hookLine: Line;
  readonly knots: readonly TiedKnot[];
}

/** A place where the line can break, and the pull there at which it does. */
export interface ChainPart {
  readonly part: "main line" | "hook length";
  /** Null for the line between its knots. */
  readonly knot: TiedKnot | null;
  readonly lowG: G;
  readonly middleG: G;
  readonly highG: G;
}

/** The line from rod to hook as a chain. */
export interface LineChain {
  /** Weakest first, by the middle of their ranges. */
  readonly parts: readonly ChainPart[];
  readonly breaksFirst: ChainPart;
  /**
   * By how much the main line's weakest part is stronger than the hook length's [g]: with the worst main line knot
   * and the best hook length knot, with the middle of both ranges, and with the best and the worst. Below 0 the
   * main line breaks first.
   */
  readonly marginLowG: G;
  readonly marginMiddleG: G;
  readonly marginHighG: G;
}

const partOf: Readonly<Record<KnotPlace, ChainPart["part"]>> = {
  hook: "hook length",
  "hook length loop": "hook length",
  "main line loop": "main line",
};

function weakestG(parts: readonly ChainPart[], part: ChainPart["part"], bound: "lowG" | "middleG" | "highG") {
  return Math.min(...parts.filter((p) => p.part === part).map((p) => p[bound]));
}

/**
 * Which part of the line breaks first: each line at its label, and each knot at the share that it leaves of the line
 * it is tied in. Published shares disagree widely, so they are a range.
 *
 * @returns the chain, with a warning where the hook length is not its weak link; an error for a strength or share
 *   that cannot be
 */
export function lineChain({ mainLine, hookLine, knots }: LineChainInput): Answer<LineChain> {
  const lines = { "main line": mainLine, "hook length": hookLine };
  for (const [part, { strengthG }] of Object.entries(lines)) {
    if (!(strengthG > 0 && strengthG < Infinity)) return noAnswer("line-strength", { part });
  }
  const badKnot = knots.find(
    ({ knot: { strengthShareLow: low, strengthShareHigh: high } }) => !(low > 0 && low <= high && high <= 1),
  );
  if (badKnot) return noAnswer("knot-share", { knot: badKnot.knot.title });

  const bare = (["main line", "hook length"] as const).map((part): ChainPart => {
    const { strengthG } = lines[part];
    return { part, knot: null, lowG: strengthG, middleG: strengthG, highG: strengthG };
  });
  const knotted = knots.map((tied): ChainPart => {
    const part = partOf[tied.where];
    const lowG = lines[part].strengthG * tied.knot.strengthShareLow;
    const highG = lines[part].strengthG * tied.knot.strengthShareHigh;
    return { part, knot: tied, lowG, middleG: (lowG + highG) / 2, highG };
  });
  const parts = [...knotted, ...bare].sort((a, b) => a.middleG - b.middleG);
  const mainG = weakestG(parts, "main line", "middleG");
  const hookG = weakestG(parts, "hook length", "middleG");
  const chain: LineChain = {
    parts,
    breaksFirst: first(parts),
    marginLowG: weakestG(parts, "main line", "lowG") - weakestG(parts, "hook length", "highG"),
    marginMiddleG: mainG - hookG,
    marginHighG: weakestG(parts, "main line", "highG") - weakestG(parts, "hook length", "lowG"),
  };
  return answer(chain, mainG > hookG ? [] : [warning("main-line-weak-link", { mainG, hookG })]);
}

/** What the weakest part of the line holds if its knot turns out as bad as is known of it [g]. */
export function weakestAtWorstG({ parts }: LineChain): number {
  return Math.min(...parts.map(({ lowG }) => lowG));
}

/** Share of that at which the clutch gives line, so that a jerk does not part it (common practice, no source). */
const clutchShare = 0.75;

/** Water in a bottle that a clutch should just let go [ml], 1 ml to the gram, rounded down to what a jug shows. */
export function clutchWaterMl(chain: LineChain): number {
  return Math.floor((clutchShare * weakestAtWorstG(chain)) / 50) * 50;
}
