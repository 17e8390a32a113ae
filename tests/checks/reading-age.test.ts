import { describe, expect, it } from "vitest";
import { countsOf, readingAge } from "../../src/checks/reading-age.ts";
import { lesson, toldBy } from "./checked.ts";

const told = (body: string) => toldBy(readingAge, lesson(body));

// Expected grades are reckoned by hand from the formula in Kincaid, Fishburne, Rogers and Chissom 1975, Research Branch
// Report 8-75: 0.39 words/sentence + 11.8 syllables/word − 15.59.
describe("reading age", () => {
  it("counts sentences, words and syllables as one does by hand", () => {
    expect(countsOf("The cat sat on the mat.")).toEqual({ sentence: 1, word: 6, syllable: 6 });
    const platypus = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.";
    expect(countsOf(platypus)).toEqual({ sentence: 1, word: 13, syllable: 26 });
  });

  it("warns of a lesson at or above the seventh grade, at its hardest paragraph", () => {
    const hard = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.";
    // Alone: 5.07 + 23.6 − 15.59 = 13.1. With the cat's sentence: 20 words in 2 sentences, 33 syllables, 7.8.
    const values = { code: "hard-to-read", gradeBelow: 7, ageBelow: 12 };
    expect(told(hard)).toEqual([{ at: "content/lessons/first.md:8:1", grade: "13.1", age: 18, ...values }]);
    expect(told(`The black cat sat on the mat.\n\n${hard}`)).toEqual([
      { at: "content/lessons/first.md:10:1", grade: "7.8", age: 12, ...values },
    ]);
  });

  it("draws the line at seven", () => {
    // 10 words: 16 syllables are 3.9 + 18.88 − 15.59 = 7.2, 15 syllables are 6.0.
    expect(told("Water runs over clean gravel under two low river bridges.")).toMatchObject([
      { grade: "7.2", age: 12 },
    ]);
    expect(told("Water runs over clean gravel under two low river banks.")).toEqual([]);
  });

  it("does not judge headings, tables, short lists or a lesson without sentences", () => {
    const long = "Australian reptilian interpretation";
    expect(told(`## ${long}\n\n- ${long}\n\n| ${long} |\n|---|\n| ${long} |`)).toEqual([]);
    expect(told(`The cat sat on the mat.\n\n- ${long}.`)).toHaveLength(1);
  });
});
