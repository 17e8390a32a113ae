import { toString as textOf } from "mdast-util-to-string";
import { describe, expect, it } from "vitest";
import { solveContent } from "../../src/build/build.ts";
import type { Solved } from "../../src/build/stages.ts";
import { formatReport } from "../../src/checks/reporter.ts";
import { inMemory } from "../../src/model/kept.ts";
import { borrowing } from "../support/borrowed.ts";
import { contentWith } from "../support/smallest-content.ts";

type Files = Readonly<Record<string, string>>;

const smallest = contentWith();
const rigFile = smallest["rigs/plain.md"]!;
const front = (order: number, part: string) =>
  `---\norder: ${order}\npart: ${part}\ntitle: Lesson ${order}\nsummary: For tests.\n---\n\n`;

/** A library of two rigs, two lessons and two fish. */
const library: Files = contentWith({
  "guide.yaml": `${smallest["guide.yaml"]!.replace("library: none\n", "")}units: metric\nrules:\n  licence: Ask at the gate.\n`,
  "rigs/deep.md": rigFile.replace("Plain rig", "Deep rig").replace("level: first", "level: next"),
  "lessons/first.md": `${front(1, "Start")}## Words\n\nThe [plain rig](../rigs/plain.md) needs :figure[]{rig=plain depth="1 m" of=float-to-hook}.\n\n::rig-drawing{rig=plain depth="1 m"}\n\n- One\n- :rule[]{of=licence}\n`,
  "lessons/second.md": `${front(2, "Later")}## More\n\nSee [the first](first.md), and [the fish](../species/roach.yaml).\n`,
  "species/roach.yaml": "title: Roach\nasks: A bait.\nnotes: Silver.\n",
  "species/perch.yaml": "title: Perch\nasks: A worm.\nnotes: Striped.\n",
  "changes.yaml": "- { date: 2026-11-20, title: New, summary: x, page: rigs/plain.html }\n",
});

/** A rig that is as it was is solved once. */
const keep = inMemory(20);

const mine = "title: Mine\npublisher: Me\nedition: 2026-11-21\n";

async function guide(own: Files): Promise<{ value: Solved | undefined; report: string }> {
  const { value, messages } = await solveContent(borrowing(own, library), ["content"], "library", keep);
  return { value, report: formatReport(messages) };
}

const names = ({ value }: { value: Solved | undefined }) => ({
  rigs: value!.library.rigs.map(({ id }) => id),
  lessons: value!.library.lessons.map(({ id }) => id),
  species: value!.library.species.map(({ id }) => id),
});

const liveText = ({ value }: { value: Solved | undefined }, id: string) =>
  textOf(value!.live.get(value!.library.lessons.find((lesson) => lesson.id === id)!.body)!);

const all = { rigs: ["deep", "plain"], lessons: ["first", "second"], species: ["perch", "roach"] };

describe("a guide of one's own", () => {
  it("is the library with one file dropped in, and nothing to report", async () => {
    const made = await guide({ "rigs/pond.md": rigFile.replace("Plain rig", "Our pond") });
    expect(made.report).toBe("0 errors, 0 warnings\n");
    expect(names(made)).toEqual({ ...all, rigs: ["deep", "plain", "pond"] });
  });

  it("has files of the same name in place of the library's", async () => {
    const made = await guide({ "rigs/plain.md": rigFile.replace("Plain rig", "Our rig") });
    expect(made.value!.library.rigs.map(({ title }) => title)).toEqual(["Deep rig", "Our rig"]);
  });

  it("is told of packs of a rig that it leaves out, which would have no card", async () => {
    const shelf = "title: Hut\npacks: [{ rig: deep, wanted: 1 }, { rig: plain, wanted: 1 }]\n";
    const files = { "shelves/hut.yaml": shelf, "guide.yaml": `${mine}library: { rigs: [deep] }\n` };
    const { report } = await guide(files);
    expect(report).toMatch(/hut\.yaml\n +2:\d+ {2}warning {2}packs of "plain" get labels, but .* no card/);
    expect(report).not.toContain('packs of "deep"');
    const taken = await guide({ ...files, "guide.yaml": `${mine}library: { rigs: [deep, plain] }\n` });
    expect(taken.report).not.toContain("packs of");
  });

  it("says of itself who it is, and takes every other key of guide.yaml that it does not say", async () => {
    const { value } = await guide({ "guide.yaml": `${mine}paper: Letter\n` });
    expect(value!.library.guide).toMatchObject({ title: "Mine", paper: "Letter", units: "metric" });
    expect(value!.library.guide.rules).toEqual({ licence: "Ask at the gate." });
    const { report } = await guide({ "guide.yaml": "paper: Letter\n" });
    expect(report).toContain('"title" is missing');
    expect(report).toContain('"edition" is missing');
  });

  it("leaves the rules of the library's place where it has a lead rule of its own", async () => {
    const lead =
      "lead-rule: { place: Elsewhere, allowed-up-to: 0 g, source: made up, checked: 2026-11-20 }\n";
    const made = await guide({ "guide.yaml": `${mine}${lead}` });
    expect(made.value!.library.guide.rules).toEqual({});
    expect(made.report).toMatch(/content\/guide\.yaml\n +1:1 +warning .*go without: licence/);
    expect(liveText(made, "first")).toMatch(/One$/);
  });

  it("overrides a word alone", async () => {
    const { value, report } = await guide({ "words/en.yaml": "page:\n  menu:\n    rigs: Our rigs\n" });
    expect(report).toBe("0 errors, 0 warnings\n");
    expect(value!.kit.words("page.menu.rigs")).toBe("Our rigs");
    expect(value!.kit.words("page.menu.floats")).toBe("Floats");
  });

  it("has none of the library's news", async () => {
    expect((await guide({ "guide.yaml": mine })).value!.library.changes).toEqual([]);
  });
});

describe("the choice of the library", () => {
  it.each<[string, Partial<typeof all>]>([
    ["rigs: [deep]", { rigs: ["deep"] }],
    ["rigs: [next, plain]", {}],
    ["rigs: [next]", { rigs: ["deep"] }],
    ["lessons: none", { lessons: [] }],
    ["lessons: [Later]", { lessons: ["second"] }],
    ["species: [perch]", { species: ["perch"] }],
    ["floats: none", {}],
  ])("%s leaves out the rest, but not what rigs are made of", async (choice, some) => {
    const made = await guide({ "guide.yaml": `${mine}library: { ${choice} }\n` });
    expect(made.report).toBe("0 errors, 0 warnings\n");
    expect(names(made)).toEqual({ ...all, ...some });
    expect(made.value!.library.floats.map(({ id }) => id)).toEqual(["waggler"]);
  });

  it("keeps own files whatever it says", async () => {
    const own = rigFile.replace("Plain rig", "Our pond");
    const made = await guide({ "guide.yaml": `${mine}library: { rigs: none }\n`, "rigs/pond.md": own });
    expect(names(made).rigs).toEqual(["pond"]);
  });

  it("of nothing refuses the library, but for the fixed words, which are the tool's", async () => {
    const { value, report } = await guide({ "guide.yaml": `${mine}library: none\n` });
    expect(value).toBeUndefined();
    expect(report).toContain("there is no hooks.yaml");
    expect(report).not.toContain("library/");
  });

  it.each([
    [
      "library: { rigs: [ploin] }",
      'there is no name or tag in the library\'s rigs "ploin"',
      'did you mean "plain"',
    ],
    ["library: { rigs: some }", '"rigs" should be all, none, or a list of names and tags', ""],
    ["library: [rigs]", '"library" should be none, or a group of choices by lessons, rigs', ""],
    ["library: { rig: none }", 'unknown key "rig"', 'did you mean "rigs"'],
  ])("is told where it is not understood: %s", async (line, reason, hint) => {
    const { report } = await guide({ "guide.yaml": `${mine}${line}\n` });
    expect(report).toMatch(/content\/guide\.yaml\n +4:\d+ {2}error/);
    expect(report).toContain(reason);
    expect(report).toContain(hint);
  });
});

describe("a lent text about what is left out", () => {
  const without = "library: { rigs: [deep], species: [perch], lessons: all }\n";

  it("keeps its figures and pictures, and its links become plain words", async () => {
    const made = await guide({ "guide.yaml": `${mine}${without}` });
    expect(made.report).toBe("0 errors, 0 warnings\n");
    expect(liveText(made, "first")).toMatch(/^WordsThe plain rig needs \d+(\.\d+)? c?m\./);
    const bodies = [...made.value!.live.values()].map((body) => JSON.stringify(body));
    expect(bodies.join("")).not.toContain("rigs/plain.md");
    expect(bodies.join("")).not.toContain("species/roach");
    expect(bodies.join("")).toContain('"picture":"rig-drawing","rig":"plain"');
  });

  it("is an error in a text of one's own, at its place", async () => {
    const own = `${front(3, "Own")}## Ours\n\nTake the [plain rig](../rigs/plain.md).\n`;
    const { report } = await guide({ "guide.yaml": `${mine}${without}`, "lessons/third.md": own });
    expect(report).toMatch(
      /content\/lessons\/third\.md\n +10:10 {2}error {4}there is no page in rigs "plain"/,
    );
  });
});

describe("a file of the library that does not go with the guide", () => {
  it("is left out with one line, and stops nothing", async () => {
    const tub = "title: box\nscale: plain\nsizes:\n  - { size: BB, metal: tin, count: 1 }\n";
    const made = await guide({ "tubs/box.yaml": tub });
    expect(made.value, made.report).toBeDefined();
    expect(names(made).rigs).toEqual([]);
    expect(made.report.match(/lent-left-out/g)).toHaveLength(2);
    expect(liveText(made, "first")).not.toContain("needs");
  });

  it("is still an error where it is one's own", async () => {
    const { value, report } = await guide({ "rigs/pond.md": rigFile.replace("No 8", "No 7") });
    expect(value).toBeUndefined();
    expect(report).toContain('called "No 7"');
  });
});
