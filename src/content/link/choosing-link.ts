import type { z } from "zod";
import { type ChoosingRules, type LimitRule, neededLimits } from "../../model/choosing-rules.ts";
import type { Read, Reading } from "../reading.ts";
import type { choosingSchema } from "../schema/choosing-schema.ts";

type Typed = z.output<typeof choosingSchema>;

/** The rules for choosing a rig; a rule that stands twice, one that is missing, and limits upside down are errors. */
export function linkChoosing({ value, yaml }: Read<Typed>, reading: Reading): ChoosingRules {
  for (const list of ["rules-out", "speaks-for"] as const) {
    const names = value[list].map((rule) => ("of" in rule ? `${rule.rule}, ${rule.of}` : rule.rule));
    for (const [at, found] of names.entries()) {
      if (names.indexOf(found) < at) reading.error(yaml.placeOf([list, at]), "duplicate-name", { found });
    }
  }
  const limits = value["rules-out"];
  for (const [at, rule] of limits.entries()) {
    if (rule.rule === "depth" && rule.least > rule.most)
      reading.error(yaml.placeOf(["rules-out", at, "most"]), "band-upside-down", { key: "depth" });
  }
  for (const rule of neededLimits) {
    if (!limits.some((one) => one.rule === rule))
      reading.error(yaml.placeOf(["rules-out"]), "choosing-limit-missing", { rule });
  }
  return { basis: value.basis, limits: limits.map(limitOf), points: value["speaks-for"] };
}

function limitOf(typed: Typed["rules-out"][number]): LimitRule {
  switch (typed.rule) {
    case "distance":
      return { rule: typed.rule, fromMm: typed.from, loadEachMetreG: typed["load-each-metre"] };
    case "two points":
      return { rule: typed.rule, rodLengths: typed["rod-lengths"] };
    case "snag":
      return { rule: typed.rule, withinMm: typed.within, mainLineG: typed["main-line"] };
    case "wind":
      return { rule: typed.rule, of: typed.of, loadG: typed.load };
    default:
      return typed;
  }
}
