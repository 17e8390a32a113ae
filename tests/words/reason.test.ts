import { describe, expect, it } from "vitest";
import { readLibrary } from "../../src/content/read-library.ts";
import { checkLead, type LeadRule } from "../../src/core/tackle/lead-rule.ts";
import { makeFigures } from "../../src/words/figures.ts";
import { reasonText } from "../../src/words/reason.ts";
import { makeWords } from "../../src/words/words.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

const words = makeWords(readLibrary(sourcesOf(contentWith())).value!.words);
const figures = makeFigures("metric first", words, "en");

describe("the breach of the rule on lead", () => {
  const rule: LeadRule = { place: "Testland", allowedUpToG: 0.06, source: "made up", checked: "2026-11-20" };

  function told(massG: number) {
    const findings = checkLead([{ size: "No 8", massG, metal: "lead" }], rule);
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
});
