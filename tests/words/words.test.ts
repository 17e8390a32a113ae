import { describe, expect, it } from "vitest";
import type { WordKey } from "../../src/words/word-key.ts";
import { makeWords, WordsError } from "../../src/words/words.ts";

const words = makeWords({ rig: { depth: "Water {depth} deep, {count} shot" } });
/** Source: Unicode CLDR, plural rules of `en` and `pl`. */
const shot = { shot: "{n, plural, one {# śrucina} few {# śruciny} many {# śrucin} other {# śruciny}}" };

const key = (path: string) => path as WordKey;

describe("words", () => {
  it("fill the gaps of a sentence, with nothing too", () => {
    expect(words(key("rig.depth"), { depth: "2 m", count: 0 })).toBe("Water 2 m deep, 0 shot");
  });

  it("take the plural that the language asks for", () => {
    const polish = makeWords(shot, "pl");
    expect([1, 2, 5, 22, 25].map((n) => polish(key("shot"), { n }))).toEqual([
      "1 śrucina",
      "2 śruciny",
      "5 śrucin",
      "22 śruciny",
      "25 śrucin",
    ]);
    expect(polish(key("shot"), { n: 1.5 })).toBe("1,5 śruciny");
  });

  it("have what stands for all others where a plural is left out", () => {
    const few = makeWords({ a: "{n, plural, one {ein Blei} other {# Bleie}}" }, "de");
    expect([few(key("a"), { n: 1 }), few(key("a"), { n: 0 })]).toEqual(["ein Blei", "0 Bleie"]);
  });

  // Source: Deutsche Rechtschreibung 2024, § 103: the stop of an abbreviation is the stop of its sentence, too; common practice in English.
  it("end a sentence with one stop where an abbreviation brings it", () => {
    const foot = makeWords({ foot: "{who}. Edition of {day}." });
    expect(foot(key("foot"), { who: "Anglers Ltd.", day: "May" })).toBe("Anglers Ltd. Edition of May.");
    expect(foot(key("foot"), { who: "Anglers e. V.", day: "Sept." })).toBe("Anglers e. V. Edition of Sept.");
    expect(foot(key("foot"), { who: "Anglers", day: "May" })).toBe("Anglers. Edition of May.");
  });

  it("never tell a gap that nothing fills", () => {
    for (const values of [{ depth: "2 m" }, { depth: "2 m", count: undefined }, undefined])
      expect(() => words(key("rig.depth"), values as never)).toThrow(WordsError);
  });

  it.each(["rig", "rig.depths", "rig.depth.more", "rigs.depth", "toString"])(
    "have no sentence called %s",
    (path) => {
      expect(() => words(key(path))).toThrow(WordsError);
    },
  );
});
