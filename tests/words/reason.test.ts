import { describe, expect, it } from "vitest";
import { readLibrary } from "../../src/content/read-library.ts";
import type { Finding, FindingCode, FindingValues } from "../../src/core/finding.ts";
import { checkLead, type LeadRule } from "../../src/core/tackle/lead-rule.ts";
import type { WordTree } from "../../src/model/word-tree.ts";
import { makeFigures } from "../../src/words/figures.ts";
import { reasonText } from "../../src/words/reason.ts";
import { makeWords } from "../../src/words/words.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

const words = makeWords(readLibrary(sourcesOf(contentWith())).value!.words);
const figures = makeFigures("metric first", words, "en");

describe("a value in a sentence", () => {
  /** A finding in a sentence of one gap. */
  function told(finding: Finding, gap: string) {
    const parts = ["reason", ...finding.code.split(".")];
    const tree = parts.reduceRight<WordTree | string>((inner, part) => ({ [part]: inner }), `{${gap}}`);
    return reasonText(finding, makeWords(tree as WordTree), figures);
  }
  const found = <C extends FindingCode>(code: C, values: FindingValues<C>) =>
    ({ code, severity: "warning", values }) as Finding;

  const belowDraught = { depthMm: 150, draughtMm: 180, lengthMm: 200 };

  it.each([
    ["a pace", found("flow-pace", { paceMs: 0.4, heldBackShare: 0.1 }), "paceMs", "10 m in 25 s"],
    ["a share", found("flow-pace", { paceMs: 0.4, heldBackShare: 0.1 }), "heldBackShare", "10 %"],
    ["a time", found("feed-too-seldom", { pattern: "bulk", everyS: 90 }), "everyS", "1 min 30 s"],
    ["a text", found("feed-too-seldom", { pattern: "bulk", everyS: 90 }), "pattern", "bulk"],
    [
      "a load",
      found("box.other-lock", {
        used: [{ size: "BB", massG: 0.4 }],
        own: ["No 8", "AAA", "No 8"].map((size) => ({ size, massG: size === "AAA" ? 0.8 : 0.06 })),
      }),
      "own",
      "AAA\u00A0+ 2\u00A0×\u00A0No\u00A08",
    ],
    ["no load", found("box.other-line-shot", { used: [], own: [] }), "used", "none"],
    ["a temperature", found("loading.bad-water", { tempC: 12, salinity: 0.5 }), "tempC", "12 °C"],
    ["a number", found("loading.bad-water", { tempC: 12, salinity: 0.5 }), "salinity", "0.5"],
    ["a density", found("fall-floats", { densityKgM3: 950 }), "densityKgM3", "0.95 g/cm³"],
    ["a length", found("pattern.bad-length", { what: "gap", lengthMm: 1500 }), "lengthMm", "150 cm"],
    ["a length", found("pattern.bad-length", { what: "gap", lengthMm: 300 }), "lengthMm", "30 cm"],
    ["a length", found("pattern.bad-length", { what: "gap", lengthMm: 4.5 }), "lengthMm", "4.5 mm"],
    ["a depth", found("depth-below-draught", belowDraught), "depthMm", "0.15 m"],
    ["a tip", found("tip-off-mark", { tipMm: 15, wantedMm: 25, missingG: 0.3 }), "tipMm", "15 mm"],
    ["a mass", found("tip-off-mark", { tipMm: 15, wantedMm: 25, missingG: 0.3 }), "missingG", "0.3 g"],
  ])("%s is told as such", (_, finding, gap, expected) => {
    expect(told(finding, gap)).toContain(expected);
  });
});

describe("the breach of the rule on lead", () => {
  const rule: LeadRule = { place: "Testland", allowedUpToG: 0.06, source: "made up", checked: "2026-11-20" };

  function told(massG: number, of = rule) {
    const findings = checkLead([{ size: "No 8", massG, metal: "lead" }], of);
    return findings.map((finding) => reasonText(finding, words, figures));
  }

  // J. Spencer 2001, English shot-gun sizes in lead: No 8 is 0.98 grain.
  it("shows by which figure a shot is too heavy, however close it is to what is allowed", () => {
    const [text] = told(0.0635);
    expect(text).toContain("0.0635 g");
    expect(text).toContain("0.06 g in Testland");
  });

  it("is none at the figure itself", () => {
    expect(told(0.06)).toEqual([]);
  });

  it("is one of caution alone as long as nobody has read the rule", () => {
    const { checked: _, ...unread } = rule;
    const [text] = told(0.0635, unread);
    expect(text).toContain("has not been looked up yet");
    expect(text).toContain("cautious limit");
    expect(text).not.toMatch(/\bmay\b/);
    expect(told(0.06, unread)).toEqual([]);
  });
});
