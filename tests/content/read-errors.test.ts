import { describe, expect, it } from "vitest";
import { formatReport } from "../../src/checks/reporter.ts";
import { readLibrary } from "../../src/content/read-library.ts";
import { readSources } from "../../src/content/world.ts";
import { contentWith, edited, smallestKit, sourcesOf, worldOf } from "../support/smallest-content.ts";

/** What the reader says of the smallest content with these changes. */
const report = (changes: Record<string, string | null>) =>
  formatReport(readLibrary(sourcesOf(contentWith(changes))).messages);

const rig = (from: string, to: string) => report(edited("rigs/plain.md", from, to));

describe("content that is right", () => {
  it("is read without a word", () => {
    const { value, messages } = readLibrary(sourcesOf(contentWith()));
    expect(messages).toEqual([]);
    expect(value?.rigs.map(({ rig }) => rig.id)).toEqual(["plain"]);
  });
});

describe("content that is wrong is reported with its place and what to do", () => {
  it("line for a fish that nobody knows, and strengths the wrong way round", () => {
    const lines = `basis: from memory
source: made up for tests
left-under-shot: 80 %
fish:
  - { fish: roch, main-line: [2 lb, 5 lb], hook-length: [3 lb, 1 lb] }
`;
    const species = { "species/roach.yaml": "title: Roach\nasks: A bait.\n" };
    expect(report({ ...species, "lines.yaml": lines })).toBe(`content/lines.yaml
   5:13  error    there is no fish "roch"  [unknown-name]
         hint: did you mean "roach"? — allowed: roach
   5:57  error    the second of "hook-length" is less than the first  [band-upside-down]
         hint: write the lower first, then the higher
2 errors, 0 warnings
`);
  });

  it("hooks for a bait with the smallest first", () => {
    expect(report(edited("baits/grub.yaml", "basis:", "hooks: [20, 16]\nbasis:"))).toContain(
      'baits/grub.yaml\n    4:8  error    the second of "hooks" is less than the first',
    );
  });

  it("a marking that the scale has no size for", () => {
    expect(
      report(edited("floats/waggler.yaml", "marking: 4 BB", "marking: 4 SSG")),
    ).toBe(`content/floats/waggler.yaml
   6:10  error    the scale "plain figures" has no size "SSG"; it has BB, No 4, No 6, No 8, No 10  [load.unknown-size]
1 error, 0 warnings
`);
  });

  it("a bare number", () => {
    expect(rig("length: 30 cm", "length: 30")).toBe(`content/rigs/plain.md
   7:59  error    "30" has no unit  [quantity]
         hint: say which: 30 cm or 30 m or 30 ft
1 error, 0 warnings
`);
  });

  it.each([
    ["diameter: 0.14 mm", "diameter: 0.14", "say which: 0.14 mm"],
    ["strength: 4 lb", "strength: 4", "say which: 4 lb or 4 kg"],
    ["depths: [1 m, 1.5 m]", "depths: [1, 2 m]", "a comma parts two of a list; write a point, as in 1.2 m"],
    ["depths: [1 m, 1.5 m]", "depths: [1.5, 2.5]", "say which: 1.5 m or 1.5 cm or 1.5 ft"],
    ["lock-share: 70 %", "lock-share: 70", "say which: 70 %"],
  ])("a figure without its unit, with those that are usual at its key: %s", (from, to, hint) => {
    expect(rig(from, to)).toContain(`hint: ${hint}\n`);
  });

  it("a density without its unit", () => {
    const bare = edited("baits/grub.yaml", "density: 1.02 g/cm3", "density: 1.02");
    expect(report(bare)).toContain("hint: say which: 1.02 g/cm3 or 1.02 kg/m3\n");
  });

  it("a pint that does not say whose", () => {
    expect(rig("portion: 10 ml", "portion: 2 pints")).toBe(`content/rigs/plain.md
  10:31  error    "2 pints": a pint is 568 ml in Britain and 473 ml in the USA  [quantity]
         hint: write it like 10 ml or 1 l or 2 imperial pints or 2 US pints
1 error, 0 warnings
`);
  });

  it("an unknown key", () => {
    expect(rig("hook: 16", "hok: 16")).toBe(`content/rigs/plain.md
    2:1  error    "hook" is missing  [missing-key]
         hint: add a line \`hook: …\`
    8:1  error    unknown key "hok"  [unknown-key]
         hint: did you mean "hook"? — allowed: title, purpose, water, float, main-line, hook-length, hook, bait, feed, setting, overdepth, depths, paces, whip, held-back, knots, tub, level, catches, use-when, not-when, change-first, loading
2 errors, 0 warnings
`);
  });

  it("a pattern that is not known", () => {
    expect(rig("pattern: strung out", "pattern: strungout")).toBe(`content/rigs/plain.md
  18:12  error    "pattern" cannot be strungout  [not-a-choice]
         hint: did you mean "strung out"? — allowed: strung out, bulk, spread bulk, shirt button, tapered shirt button, lift, all at the float
1 error, 0 warnings
`);
  });

  it("a key that belongs to another pattern", () => {
    expect(rig("gap: 25 cm", "gap: 25 cm\n  droppers: [No 8]")).toBe(`content/rigs/plain.md
   22:3  error    unknown key "droppers"  [unknown-key]
         hint: allowed: pattern, lock-share, size, gap, telltale
1 error, 0 warnings
`);
  });

  it("a float that is not there", () => {
    expect(rig("float: waggler", "float: wagler")).toBe(`content/rigs/plain.md
    5:8  error    there is no float "wagler"  [unknown-name]
         hint: did you mean "waggler"? — allowed: waggler
1 error, 0 warnings
`);
  });

  it("a shot size that the scale does not have, without guessing at its number", () => {
    expect(rig("telltale: { size: No 10 }", "telltale: { size: No 11 }")).toBe(`content/rigs/plain.md
  22:21  error    there is no shot in the scale "plain figures" called "No 11"  [unknown-name]
         hint: allowed: BB, No 4, No 6, No 8, No 10
1 error, 0 warnings
`);
  });

  it("names of a rig that is wrong elsewhere, too", () => {
    const broken = edited("rigs/plain.md", "hook: 16", "hook: big")["rigs/plain.md"]!;
    const told = report({ "rigs/plain.md": broken.replace("bait: grub", "bait: grup") });
    expect(told).toContain('"hook" should be a number without a unit, but is big');
    expect(told).toContain('there is no bait "grup"');
    expect(told).toContain('did you mean "grub"?');
    expect(told).toContain("2 errors, 0 warnings");
  });

  it("text that is not YAML", () => {
    expect(report({ "hooks.yaml": "- { size: 16\n" })).toContain("content/hooks.yaml\n");
    expect(report({ "hooks.yaml": "- { size: 16\n" })).toContain("{ is not closed");
  });

  it("a file without front matter", () => {
    expect(report({ "lessons/first.md": "# First\n" })).toBe(`content/lessons/first.md
    1:1  error    the file has no front matter  [no-front-matter]
         hint: start it with a line ---, then \`title: …\`, then a line ---
1 error, 0 warnings
`);
  });

  it("a guide that is missing", () => {
    expect(report({ "guide.yaml": null })).toBe(`content/guide.yaml
         error    there is no guide.yaml  [missing-file]
         hint: add it; it names the guide, its units, scale, tub and lead rule
1 error, 0 warnings
`);
  });

  it("a profile that does not rise", () => {
    expect(report(edited("floats/waggler.yaml", "at: 200 mm", "at: 0 mm"))).toContain(
      "  11:11  error    the profile's points must rise: 0 mm follows 0 mm  [falling-profile]",
    );
  });

  it("all errors of all files in one run, in order", () => {
    const all = report({
      ...edited("rigs/plain.md", "water: still", "water: wet"),
      ...edited("floats/waggler.yaml", "attachment: bottom", "attachment: top"),
      ...edited("hooks.yaml", "0.03 g", "0.03"),
    });
    expect(all.match(/^content\S+/gm)).toEqual([
      "content/floats/waggler.yaml",
      "content/hooks.yaml",
      "content/rigs/plain.md",
    ]);
    expect(all).toContain("3 errors, 0 warnings");
  });
});

describe("of an error in one file nothing else is told", () => {
  const kit = { "kits/box.yaml": smallestKit };

  it.each([
    ["floats/waggler.yaml", "attachment: bottom", "attachment: top"],
    ["baits/grub.yaml", "density: 1.02 g/cm3", "density: much"],
    ["knots/half-blood.yaml", "joins:", "join:"],
    ["tubs/box.yaml", "metal: lead, count: plenty", "metal: gold, count: plenty"],
    ["shot/plain.yaml", "mass: 0.4 g", "mass: 0.4"],
    ["rigs/plain.md", "water: still", "water: wet"],
  ])("%s", (path, from, to) => {
    const said = report({ ...kit, ...edited(path, from, to) });
    expect(said.match(/^content\/\S+$/gm)).toEqual([`content/${path}`]);
  });

  it("a fish whose file has an error may be what a table means", () => {
    const lines =
      "basis: from memory\nsource: x\nleft-under-shot: 80 %\nfish:\n  - { fish: roach, main-line: [2 lb, 5 lb], hook-length: [1 lb, 3 lb] }\n";
    const said = report({ "lines.yaml": lines, "species/roach.yaml": "titel: Roach\nasks: A bait.\n" });
    expect(said.match(/^content\/\S+$/gm)).toEqual(["content/species/roach.yaml"]);
  });

  it("but a name in another file that is wrong itself is told", () => {
    const both = {
      ...edited("floats/waggler.yaml", "attachment: bottom", "attachment: top"),
      ...edited("rigs/plain.md", "bait: grub", "bait: worm"),
    };
    expect(report(both)).toContain('there is no bait "worm"');
  });
});

describe("files as editors leave them", () => {
  it("may begin with a byte order mark and end their lines either way", async () => {
    const files = contentWith();
    const marked = Object.fromEntries(
      Object.entries(files).map(([path, text]) => [path, `\uFEFF${text.replaceAll("\n", "\r\n")}`]),
    );
    const { messages } = readLibrary(await readSources(worldOf(marked), ["content"]));
    expect(messages).toEqual([]);
  });

  it("must be UTF-8", () => {
    expect(report(edited("hooks.yaml", "from memory", "from \uFFFDemory"))).toBe(`content/hooks.yaml
   1:41  error    a sign here is not UTF-8  [not-utf-8]
         hint: save the file as UTF-8
1 error, 0 warnings
`);
  });

  it("cannot blow up by aliases of aliases", () => {
    const tens = (of: string) => `[${Array.from({ length: 10 }, () => of).join(", ")}]`;
    const bomb = `a: &a ${tens("x")}\nb: &b ${tens("*a")}\nc: &c ${tens("*b")}\nd: ${tens("*c")}\n`;
    expect(report({ "hooks.yaml": bomb })).toContain("this is not YAML: Excessive alias count");
  });
});

describe("places are kept through anchors and merged keys", () => {
  it("points at the anchored value, once", () => {
    const floats = edited(
      "floats/waggler.yaml",
      "  - { at: 0 mm, diameter: 4.5 mm }\n  - { at: 200 mm, diameter: 4.5 mm }",
      "  - &end { at: 0 mm, diameter: 4.5 }\n  - { <<: *end, at: 200 mm }",
    );
    expect(report(floats).match(/error {4}/g)?.length).toBeGreaterThan(0);
    expect(report(floats)).toContain('  10:32  error    "4.5" has no unit');
  });
});
