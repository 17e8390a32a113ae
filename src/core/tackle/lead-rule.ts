import { type Finding, warning } from "../finding.ts";
import type { G } from "../units.ts";
import type { Shot } from "./shot.ts";

/** The rule on lead weights in force where the guide is used. */
export interface LeadRule {
  readonly place: string;
  /** Lead shot up to this mass may be used. */
  readonly allowedUpToG: G;
  /** Lead weights heavier than this may be used; none where lead is not allowed at all above the small shot. */
  readonly allowedAboveG?: G;
  readonly source: string;
  /** ISO date on which somebody last read the rule; none where nobody has, and the limit is one of caution. */
  readonly checked?: string;
}

/**
 * Whether a rule lets a lead weight be used. The stated mass counts: a No 8 may be used where its scale says 0.06 g,
 * and not where it says 0.0635 g.
 *
 * @param massG stated mass [g]; at the lower bound itself it may be used, at the upper bound itself it may not
 */
export function leadAllowed(massG: G, { allowedUpToG, allowedAboveG }: LeadRule): boolean {
  return massG <= allowedUpToG || (allowedAboveG !== undefined && massG > allowedAboveG);
}

/** Each size of lead shot that the rule forbids, heaviest first. */
export function forbiddenLead(
  shot: readonly Shot[],
  rule: LeadRule,
): readonly Pick<Shot, "size" | "massG">[] {
  const forbidden = new Map(
    shot
      .filter(({ metal, massG }) => metal === "lead" && !leadAllowed(massG, rule))
      .map(({ size, massG }) => [`${size} ${massG}`, { size, massG }] as const),
  );
  return [...forbidden.values()].sort((a, b) => b.massG - a.massG);
}

/** A warning for each size of lead shot that the rule forbids, or caution as long as nobody has read it, heaviest first. */
export function checkLead(shot: readonly Shot[], rule: LeadRule): readonly Finding[] {
  const { allowedUpToG, place, checked } = rule;
  const code = checked === undefined ? "lead-rule-unread" : "lead-not-allowed";
  return forbiddenLead(shot, rule).map(({ size, massG }) =>
    warning(code, { size, massG, allowedUpToG, place }),
  );
}
