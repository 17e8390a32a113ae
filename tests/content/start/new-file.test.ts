import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, posix } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { solveContent } from "../../../src/build/build.ts";
import { formatReport } from "../../../src/checks/reporter.ts";
import { disk } from "../../../src/cli/disk.ts";
import { keysOf } from "../../../src/content/schema/json-schema.ts";
import { keyNotes } from "../../../src/content/schema/key-notes.ts";
import { copiedRig, newFile, pathOf, schemaLine, titleOf } from "../../../src/content/start/new-file.ts";
import { newGuide } from "../../../src/content/start/new-guide.ts";
import { linesWithDepths } from "../../../src/content/start/own-depths.ts";
import { startKinds } from "../../../src/content/start/start-values.ts";
import { starterIn } from "../../../src/content/start/starters.ts";
import { inMemory } from "../../../src/model/kept.ts";
import type { Message } from "../../../src/model/message.ts";
import { temporaryFolder, writeContent } from "../../support/cli.ts";

const library = join(import.meta.dirname, "../../../content");

const told = {
  title: 'The "Pond": # 1',
  publisher: "Makebelieve Junior Anglers",
  water: "still",
  units: "metric",
  paper: "A4",
  language: "en",
  day: "2026-11-27",
} as const;
const firstRig = await disk.readText(join(library, "rigs/first-session.md"));
const begun = Object.fromEntries(newGuide(told, firstRig!));

/** A rig of the library is solved once. */
const keep = inMemory(60);

async function checked(files: Readonly<Record<string, string>>) {
  const folder = writeContent(temporaryFolder(), { ...begun, ...files });
  const { value, messages } = await solveContent(disk, [join(folder, "content")], library, keep);
  const isBegun = ({ code }: Message) => code === "text-as-begun";
  return {
    value,
    report: formatReport(messages.filter((one) => !isBegun(one))),
    asBegun: messages.filter(isBegun).map(({ place }) => place.file.slice(folder.length + 1)),
  };
}

/** Kinds of files that are begun with sentences which ask their author for others. */
const withText = startKinds.filter((kind) => !["tub", "knot", "session", "shelf"].includes(kind));

describe("a new guide", () => {
  it("shows what a group that is left out may hold: without its # it is what it says", () => {
    const yaml = begun["content/guide.yaml"]!;
    const [look] = /^# look:\n(?:# {3}.*\n)+/m.exec(yaml)!;
    expect(parse(look.replace(/^# /gm, ""))).toEqual({
      look: { logo: "logo.svg", font: "signs.ttf", colours: { main: "#0a4d57", accent: "#a8330c" } },
    });
    expect(yaml).toContain("# contacts: [{ when: …, who: …, number: … }]");
    expect(newFile("species", "chub")).toContain("# looks: { … }");
  });

  it("is ten small files at most, builds as it is, and is called what it was told", async () => {
    expect(Object.keys(begun).length).toBeLessThanOrEqual(10);
    const { value, report, asBegun } = await checked({});
    expect(report).toBe("0 errors, 0 warnings\n");
    expect(asBegun).toEqual([]);
    expect(value!.library.guide).toMatchObject({ title: told.title, units: "metric", edition: told.day });
    expect(value!.library.rigs.map(({ id, title }) => [id, title])).toEqual([
      ["our-first-rig", "Our first rig"],
    ]);
    expect(value!.library.lessons.map(({ id }) => id)).toEqual(["welcome"]);
    expect(value!.library.pages.map(({ id }) => id)).toEqual(["about-figures", "safety"]);
  });

  it("has the lead rule of the place it was told, and not the library's law", () => {
    const law = { place: "Makebelieve", upTo: "0 g" };
    const guide = parse(newGuide({ ...told, law }, firstRig!).get("content/guide.yaml")!);
    expect(guide["lead-rule"]).toEqual({
      place: "Makebelieve",
      "allowed-up-to": "0 g",
      source: expect.stringContaining("Not looked up yet."),
    });
  });
});

/** What the command says of the guide that it writes into. */
const ofTheGuide = {
  session: { swims: "[{ swim: my-swim, spot: Close in }]" },
  shelf: { packs: "[{ rig: our-first-rig, wanted: 5 }]" },
};

describe("a new file", () => {
  it("of any kind builds as it is, beside the others", async () => {
    const files = startKinds.map((kind) => [
      `content/${pathOf(kind, `my-${kind}`)}`,
      newFile(
        kind,
        `my-${kind}`,
        kind in ofTheGuide ? { values: ofTheGuide[kind as keyof typeof ofTheGuide] } : {},
      ),
    ]);
    const { value, report, asBegun } = await checked(Object.fromEntries(files));
    expect(report).toBe("0 errors, 0 warnings\n");
    const begunFiles = withText.map((kind) => `content/${pathOf(kind, `my-${kind}`)}`);
    expect(asBegun.sort()).toEqual(begunFiles.sort());
    expect(value!.library.rigs.map(({ id }) => id)).toContain("my-rig");
    expect(value!.library.species.map(({ title }) => title)).toContain("My species");
  });

  it("leads editors to the schema of its kind, where the command writes it, and so does a new guide", () => {
    const files = {
      ...begun,
      ...Object.fromEntries(
        startKinds.map((kind) => [`content/${pathOf(kind, "mine")}`, newFile(kind, "mine")]),
      ),
    };
    const kindOf = new Map<string, string>(startKinds.map((kind) => [dirname(pathOf(kind, "mine")), kind]));
    for (const [path, text] of Object.entries(files)) {
      if (!path.startsWith("content/") || path.startsWith("content/words/")) continue;
      const [, to] = /^(?:---\n)?# yaml-language-server: \$schema=(\S+)\n/.exec(text)!;
      const kind = kindOf.get(dirname(path).replace(/^content\/?/, "")) ?? "guide";
      expect(posix.join(dirname(path), to!), path).toBe(`schemas/${kind}.schema.json`);
    }
  });

  it.each(startKinds)("has every key of a %s, set or as a comment", (kind) => {
    const lines = newFile(kind, "mine").split("\n");
    const top = keysOf(kind).filter(({ path }) => !path.includes("."));
    for (const { path } of top)
      expect(lines.filter((line) => new RegExp(`^(?:# )?${path}:`).test(line))).toHaveLength(1);
  });

  it("tells units and choices beside each key", () => {
    const text = newFile("rig", "our-pond");
    expect(text).toMatch(/# .*Write still or flowing\.\nwater: still\n/);
    expect(text).toMatch(/# .*such as 4 lb, 1\.8 kg\.\n {2}strength: 4 lb\n/);
    expect(text.replaceAll(/\n +# /g, " ")).toMatch(/strung out, bulk, spread bulk, shirt button/);
    expect(text).not.toMatch(/[ \t]$/m);
  });
});

describe("a file of a guide in German", () => {
  const { comments } = starterIn("de-AT");
  const guide = newGuide({ ...told, language: "de", law: { place: "Nirgends", upTo: "0 g" } }, firstRig!);
  const files = [
    ["guide", guide.get("content/guide.yaml")!],
    ...startKinds.map((kind) => [kind, newFile(kind, "x", { words: comments })] as const),
  ] as const;

  it.each(files)(
    "has no English in what it says of the keys of a %s, nor in what it says at first",
    (kind, text) => {
      const said = text.replaceAll(/\n *# /g, " ");
      expect(Object.values(keyNotes[kind]).filter((note: string) => said.includes(note))).toEqual([]);
      expect(said).not.toMatch(/\b(?:Say|Write|such as|left out|your|here)\b/);
    },
  );
});

describe("a copied rig", () => {
  const text = `---\ntitle: Old\n---\n\nIt is :figure[]{rig=old of=tip} and :figure[]{of=tip rig="old"}.\n\n::pattern-chart{rigs="old older" depth="1 m"}\n\nSee [the\nother](older.html), [safety](../pages/safety.md).\n`;

  it("speaks of itself, and has no link that leads nowhere", () => {
    expect(copiedRig(text, "old", "our-new", (url) => url.includes("safety"))).toBe(
      text
        .replace("title: Old", `${schemaLine("rig")}\ntitle: Our new`)
        .replaceAll("rig=old", "rig=our-new")
        .replace('rig="old"', 'rig="our-new"')
        .replace('"old older"', '"our-new older"')
        .replace("[the\nother](older.html)", "the\nother"),
    );
  });

  it("sends nobody to a lesson that is not there", () => {
    const told =
      "---\ntitle: Old\n---\n\nFollow [one](../lessons/one.html) at 1.2 m. It\nis [two](../rigs/two.html).\n\n[Three](../lessons/three.html) shows how.\n\n## End\n";
    expect(copiedRig(told, "old", "our-new", () => false)).toContain("---\n\nIt\nis two.\n\n## End\n");
    expect(copiedRig(told, "old", "our-new", () => true)).toContain("Follow [one](../lessons/one.html) at");
  });

  it("keeps what else a list with a link to such a lesson says, and all of its own front matter", () => {
    const told =
      "---\ntitle: Old\nuse-when:\n  - Windy. See [one](../lessons/one.html).\n\nnot-when: []\n---\n\n- Cast. See [one](../lessons/one.html).\n- See [two](../lessons/two.html).\n- Wait.\n\n1. Go.\n2. Read [one](../lessons/one.html).\n";
    expect(copiedRig(told, "old", "our-new", () => false)).toMatch(
      /use-when:\n {2}- Windy\. See one\.\n\nnot-when: \[\]\n---\n\n- Cast\.\n- Wait\.\n\n1\. Go\.\n?$/,
    );
  });

  it("has its figures at its own first depth, and says which depths its text still names", () => {
    const told = `---\ntitle: Old\npurpose: For 3 m of water.\ndepths: [1 m, 1.2 m]\nuse-when:\n  - It is 2 m deep.\n---\n\nAt 1.2 m it is :figure[]{rig=old depth="1.2 m" of=tip}, and 1.2 m of line. At 1.2 m or 11.2 m others differ.\n\n::rig-drawing{rig=old depth="1.2 m"}\n`;
    const copied = copiedRig(told, "old", "our-new", () => true);
    const depth = ":figure[]{rig=our-new depth=first of=depth}";
    expect(copied).toContain(
      `At ${depth} it is :figure[]{rig=our-new depth=first of=tip}, and ${depth} of line. At 1.2 m or 11.2 m others`,
    );
    expect(copied).toContain("::rig-drawing{rig=our-new depth=first}");
    expect(linesWithDepths(copied).map(({ text }) => text.slice(0, 16))).toEqual([
      "purpose: For 3 m",
      "- It is 2 m deep",
      "At :figure[]{rig",
    ]);
    const two = told.replace('::rig-drawing{rig=old depth="1.2 m"}', '::rig-drawing{rig=old depth="1 m"}');
    expect(copiedRig(two, "old", "our-new", () => true)).toContain(
      'At 1.2 m it is :figure[]{rig=our-new depth="1.2 m"',
    );
  });

  it("of each third rig of the library can be given other depths, and builds", async () => {
    const rigs = readdirSync(join(library, "rigs"))
      .map((name) => name.replace(/\.md$/, ""))
      .filter((_, at) => at % 3 === 0);
    const copies = rigs.map((rig) => {
      const text = readFileSync(join(library, `rigs/${rig}.md`), "utf8");
      const copied = copiedRig(text, rig, `our-${rig}`, () => false);
      const [, first] = /^depths: \[([\d.]+) m/m.exec(copied)!;
      return [
        `content/rigs/our-${rig}.md`,
        copied.replace(/^depths: .*$/m, `depths: [${(Number(first) + 0.05).toFixed(2)} m]`),
      ];
    });
    const { report } = await checked(Object.fromEntries(copies));
    expect(report).not.toContain("there is no depth of");
  });

  it("has a title from its name", () => {
    expect(titleOf("our-big_pond")).toBe("Our big pond");
  });
});
