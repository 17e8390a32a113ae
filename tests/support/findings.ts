import type { Finding, FindingCode, FindingValues } from "../../src/core/finding.ts";

/** The values of the first finding with this code; fails where there is none. */
export function valuesOf<C extends FindingCode>(findings: readonly Finding[], code: C): FindingValues<C> {
  const found = findings.find((finding) => finding.code === code);
  if (!found)
    throw new Error(`no finding "${code}" among ${findings.map((one) => one.code).join(", ") || "none"}`);
  return found.values as FindingValues<C>;
}
