import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { wordsToFillIn } from "../../../src/content/start/new-words.ts";

const standing = {
  card: { depth: "Depth {depth}", setting: { hook: "Hook" } },
  page: { rigs: "Rigs", count: "{count, plural, one {# rig} other {# rigs}}" },
  reason: { "depth-below-draught": "{draughtMm} deep, in {depthMm}" },
};

const filled = (before?: string, language = "pl") => wordsToFillIn(before, language, standing);

/** Paths of all texts of a tree; a group without any is no text. */
const keysOf = (tree: object, path = ""): string[] =>
  Object.entries(tree).flatMap(([key, below]) =>
    typeof below === "string" ? [`${path}${key}`] : keysOf(below ?? {}, `${path}${key}.`),
  );
const all = keysOf(standing);

describe("a file of words to fill in", () => {
  it("has every key with nothing behind it, below what stands there, and says what a gap becomes", () => {
    const { text, added } = filled();
    expect(parse(text)).toEqual({
      page: { rigs: "", count: "" },
      card: { depth: "", setting: { hook: "" } },
      reason: { "depth-below-draught": "" },
    });
    expect(added).toBe(5);
    expect(text).toContain('    # Hook\n    hook: ""\n');
    expect(text).toContain("  # {draughtMm}: a length with its unit\n  # {depthMm}: a depth with its unit\n");
    // Source: Unicode CLDR, plural rules of Polish.
    expect(text).toContain("  # {count}: a number; a form for each of one, few, many, other\n  count:");
  });

  it.each<[string, string, string[]]>([
    [
      "keys in another order and deeper in",
      "page:\n      rigs: Zestawy # ours\n\nreason: {}\n# end\n",
      ["reason"],
    ],
    ["an empty group", "page:\ncard:\n  setting: # nothing yet\n  depth: G\n", []],
    [
      "a long text",
      "reason:\n  depth-below-draught: |\n    a\n    b\npage:\n  count: >-\n    {count}\n    x",
      [],
    ],
    ["comments alone", "# page:\n#   rigs: x\n", []],
    ["line ends of Windows", "page:\r\n  rigs: Z\r\n", []],
    ["a group between braces", "page: { rigs: Z }", ["page"]],
    ["everything", filled().text.replace('rigs: ""', "rigs: Z"), []],
  ])("is added to what is there, of which every line stays: %s", (_, before, inBraces) => {
    const { text, added, closed } = filled(before);
    expect(closed).toEqual(inBraces);
    const after = text.split(/\r?\n/);
    const linesBefore = before.split(/\r?\n/).filter((line) => line !== "");
    linesBefore.reduce((from, line) => {
      const at = after.indexOf(line, from);
      expect(at, line).toBeGreaterThanOrEqual(from);
      return at + 1;
    }, 0);
    // All lines end as those did that were there.
    expect(new Set(text.match(/\r?\n/g)).size).toBe(1);
    const there = keysOf(parse(before) ?? {});
    const filledIn = all.filter(
      (key) => !there.includes(key) && !closed.some((group) => key.startsWith(group)),
    );
    expect(keysOf(parse(text)).sort()).toEqual(
      [...there.filter((key) => all.includes(key)), ...filledIn].sort(),
    );
    expect(added).toBe(filledIn.length);
    expect(filled(text)).toMatchObject({ text, added: 0 });
  });
});
