import { describe, expect, it } from "vitest";
import type { WordKey } from "../../src/words/word-key.ts";
import { makeWords, WordsError } from "../../src/words/words.ts";

const words = makeWords({ rig: { depth: "Water {depth} deep, {count} shot" } });
const key = (path: string) => path as WordKey;

describe("words", () => {
  it("fill the gaps of a sentence, with nothing too", () => {
    expect(words(key("rig.depth"), { depth: "2 m", count: 0 })).toBe("Water 2 m deep, 0 shot");
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
