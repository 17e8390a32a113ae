import type { LeadRule } from "../core/tackle/lead-rule.ts";
import type { Figures } from "./figures.ts";
import type { Words } from "./words.ts";

/** Which lead weights a rule allows, as a sentence. */
export function leadRuleText(rule: LeadRule, words: Words, figures: Figures): string {
  const { place, allowedUpToG, allowedAboveG, checked } = rule;
  const upTo = figures.mass(allowedUpToG);
  if (checked === undefined) return words("rule.lead-unread", { place, upTo });
  if (allowedAboveG === undefined) return words("rule.lead-below", { place, upTo });
  return words("rule.lead-between", { place, upTo, above: figures.mass(allowedAboveG) });
}
