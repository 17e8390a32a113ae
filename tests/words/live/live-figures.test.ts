import { readFileSync } from "node:fs";
import type { Paragraph, Root, Table, Text } from "mdast";
import { toString as textOf } from "mdast-util-to-string";
import { describe, expect, it } from "vitest";
import { makeFigures } from "../../../src/words/figures.ts";
import { withLiveFigures } from "../../../src/words/live/live-figures.ts";
import { makeWords } from "../../../src/words/words.ts";
import { checkedOf, lesson } from "../../checks/checked.ts";
import { edited, smallestKit } from "../../support/smallest-content.ts";

/** The first lesson with this text made live; its first line is line 8 of the file. */
function live(body: string, others: Readonly<Record<string, string>> = {}) {
  const { library, rigs } = checkedOf({ ...lesson(body), ...others });
  const words = makeWords(library.words);
  return withLiveFigures(library.lessons[0]!, {
    library,
    solved: new Map(rigs.map((solved) => [solved.rig.id, solved])),
    words,
    figures: makeFigures("metric first", words, "en"),
  });
}

/** The guide with a line more. */
const guideWith = (line: string) => edited("guide.yaml", "edition:", `${line}\nedition:`);

/** What stands in each cell of a table that is all there is of the text. */
const cells = ({ children: [table] }: Root) =>
  (table as Table).children.map((row) => row.children.map((cell) => textOf(cell).replaceAll("\u00a0", " ")));

const told = (body: string, others?: Readonly<Record<string, string>>) =>
  live(body, others).messages.map(({ place: { line, column }, code, values }) => ({
    at: `${line}:${column}`,
    code,
    ...values,
  }));

describe("live figures in a text", () => {
  it("puts figures where a sentence asks for them", () => {
    const { value, messages } = live(
      'It is marked :marking[]{float=waggler}, so :weight[]{load="4 BB"} or :marked-weight[]{float=waggler}.',
    );
    expect(messages).toEqual([]);
    const sentence = (value.children[0] as Paragraph).children
      .map((node) => "value" in node && node.value)
      .join("");
    // Four of the smallest content's BB of 0.4 g.
    expect(sentence).toBe("It is marked 4 BB, so 1.6 g or 1.6 g.");
  });

  it("says nothing of a rig that cannot be made up, which is told at the rig's own file", () => {
    const tooShallow = edited("rigs/plain.md", "depths: [1 m, 1.5 m]", "depths: [10 cm]");
    expect(told('It is :figure[]{rig=plain depth="1 m" of=tip}.', tooShallow)).toEqual([]);
    expect(told("::shot-table{rig=plan}", tooShallow)).toMatchObject([
      { code: "unknown-name", found: "plan" },
    ]);
  });

  it("puts figures of a whole rig, which need no depth", () => {
    const { value, messages } = live(
      "Feed :figure[]{rig=plain of=feed} in :figure[]{rig=plain of=session}. A knot may hold only " +
        ":figure[]{rig=plain of=weakest}, so let :figure[]{rig=plain of=clutch} of water go.",
    );
    expect(messages).toEqual([]);
    // 10 ml every 45 s are 800 ml an hour; 3 lb of hook length at 70 % in its worst knot, and three quarters of those
    // 953 g.
    expect(textOf(value)).toBe(
      "Feed 3.2 l (5.6 imperial pints) in 4 h. A knot may hold only 2.1 lb (1 kg), so let 700 ml (1.2 imperial pints) of water go.",
    );
    expect(told("It is :figure[]{rig=plain of=tip}.")).toMatchObject([
      { code: "missing-attribute", name: "depth", of: ":figure" },
    ]);
  });

  it("puts what a float carries and is not used by the shot, the hook and the bait", () => {
    const { rigs } = checkedOf({});
    const [{ floatPullG, hookAndBaitPullG, depths }] = rigs as [(typeof rigs)[number]];
    const spareG = floatPullG - hookAndBaitPullG - depths[0]!.pullG;
    const { value } = live('It has :figure[]{rig=plain depth="1 m" of=spare} to spare.');
    const [, told, sign] = /^It has ([\d.]+)( g) to spare\.$/.exec(textOf(value))!;
    expect(sign).toBe(" g");
    // To what the bank tells of a mass.
    expect(Math.abs(Number(told) - spareG)).toBeLessThanOrEqual(0.005 + 1e-9);
  });

  const aboutFigures = {
    "pages/about-figures.md":
      "---\ntitle: Figures\nsummary: Where they come from.\n---\n\n## Common practice\n\nMany do it.\n",
  };

  it("puts a sign for where a figure comes from, read out as its name, and leads to what it means", () => {
    const { value, messages } = live(
      "Lay on 5 cm to 30 cm:basis[]{of=practice}, or 50 cm:basis[]{of=memory}.",
      aboutFigures,
    );
    expect(messages).toEqual([]);
    expect((value.children[0] as Paragraph).children).toMatchObject([
      { type: "text", value: "Lay on 5 cm to 30 cm" },
      {
        type: "basisSign",
        sign: "†",
        spoken: "(common practice)",
        url: "../pages/about-figures.md#common-practice",
      },
      { type: "text", value: ", or 50 cm" },
      { type: "basisSign", sign: "‡", spoken: "(from memory)", url: "../pages/about-figures.md#from-memory" },
      { type: "text", value: "." },
    ]);
  });

  it("has no sign for a basis that needs none, nor without the page that explains it", () => {
    expect(told("It is 5 cm:basis[]{of=measured} long.", aboutFigures)).toEqual([
      {
        at: "8:11",
        code: "unknown-name",
        what: "basis that has a sign",
        found: "measured",
        allowed: ["practice", "memory"],
      },
    ]);
    expect(told("It is 5 cm:basis[]{of=practice} long.")).toEqual([
      { at: "8:11", code: "unknown-name", what: "page", found: "about-figures", allowed: [] },
    ]);
  });

  it("tells the tip with one more shot on, and only of a size that the rig's tub has", () => {
    // A bare tube of 4.5 mm: one No 8 of 0.06 g of lead pulls 0.0547 g, which is 3.4 mm of 15.9 mm².
    const shown = (directive: string) => textOf(live(directive).value);
    const figure = (directive: string) => Number.parseFloat(shown(directive));
    const asSet = figure(':figure[]{rig=plain depth="1 m" of=tip}');
    const more = figure(':one-more[]{rig=plain depth="1 m" size="No 8"}');
    expect(asSet - more).toBeGreaterThanOrEqual(0);
    expect(asSet - more).toBeLessThanOrEqual(5);
    // 0.36 g are 23 mm of it, more than shows.
    expect(shown(':one-more[]{rig=plain depth="1 m" size=BB}')).toBe("under");
    expect(told(':one-more[]{rig=plain depth="1 m" size=SSG}')).toMatchObject([{ found: "SSG" }]);
  });

  it("says what the guide's rules say, the one on lead from its figures", () => {
    const { value, messages } = live(
      "So: :rule[]{of=lead} It is the rule of :rule[]{of=place}. :rule[]{of=season}",
      guideWith("rules: { season: Rest in May. }"),
    );
    expect(messages).toEqual([]);
    // The smallest content's rule: up to 0.06 g or above 28.35 g.
    expect(textOf(value)).toBe(
      "So: In Testland lead weights may be used only up to 0.06 g or above 28.35 g. Everything between must be of another metal. It is the rule of Testland. Rest in May.",
    );
  });

  it("lists whom to ring, with room for a number that is local", () => {
    const contacts = "contacts: [{ when: Fire, who: Help, number: '112' }, { when: Oil, who: The owner }]";
    const { value } = live("::contacts{}", guideWith(contacts));
    const cells = (value.children[0] as Table).children.map((row) =>
      row.children.map((cell) => textOf(cell)),
    );
    expect(cells[1]).toEqual(["Fire", "Help", "112"]);
    expect(cells[2]).toEqual(["Oil", "The owner", expect.stringMatching(/_{10}/)]);
    // The club's own two lines have room to write, too, where the guide does not say them.
    expect(cells.slice(3).map(([, , number]) => number)).toEqual(
      Array(2).fill(expect.stringMatching(/_{10}/)),
    );
    const own = guideWith(`${contacts}\nclub-number: 00 12 34\naccess-point: The gate`);
    const told = (live("::contacts{}", own).value.children[0] as Table).children.map((row) => textOf(row));
    expect(told.slice(3)).toEqual([expect.stringMatching(/00 12 34$/), expect.stringMatching(/The gate$/)]);
  });

  it("tells what a group uses up and what to buy, in whole packets and tubs", () => {
    const box = edited(
      "tubs/box.yaml",
      "size: No 8, metal: lead, count: plenty",
      "size: No 8, metal: lead, count: 25",
    );
    const kit = `${smallestKit}group:
  spares: 50 %
  hook-lengths: 2
  line-for-each: 50 cm
  line-on-reel: 80 m
  hooks-in-packet: 10
  hook-line-on-spool: 20 m
  main-line-on-spool: 100 m
`;
    const { rigs } = checkedOf(box);
    const no8 = Math.max(
      ...rigs[0]!.depths.map(
        ({ lineShot, lockShot }) => [...lineShot, ...lockShot].filter(({ size }) => size === "No 8").length,
      ),
    );
    const { value, messages } = live("::group-kit{kit=box learners=7}", { ...box, "kits/box.yaml": kit });
    expect(messages).toEqual([]);
    const [, ...rows] = cells(value);
    // Seven learners and half as much again: 10.5 floats, so 11; 2 · 10.5 = 21 hooks, three packets of ten; 2 · 0.5 m ·
    // 10.5 = 10.5 m, so 11 m of a spool of 20 m; 80 m · 10.5 = 840 m, nine spools of 100 m. Sizes that nobody counted
    // in the tub are not counted here.
    const needed = Math.ceil(no8 * 10.5);
    expect(rows).toEqual([
      ["Floats: Test waggler", "11", "singly", "11 pieces"],
      ["Shot: box", `${needed} × No 8`, "by the tub", `${Math.ceil(needed / 25)} tubs`],
      ["Hooks: 16", "21", "packets of 10", "3 packets"],
      ["Hook length: 3 lb (1.4 kg)", "11 m", "spools of 20 m", "1 spool"],
      ["Main line: 4 lb (1.8 kg)", "840 m", "spools of 100 m", "9 spools"],
    ]);
    expect(told("::group-kit{kit=box learners=0.5}", { "kits/box.yaml": kit })).toEqual([
      { at: "8:1", code: "kit-learners", reason: "The kit needs a whole number of learners, one or more." },
    ]);
    expect(told("::group-kit{kit=box learners=7}", { "kits/box.yaml": smallestKit })).toMatchObject([
      { code: "unknown-name", what: "kit with a group", found: "box", allowed: [] },
    ]);
  });

  it("tells what to mix for balls of groundbait, as kitchen scales show it, and warns of too much", () => {
    const { value, messages } = live('::groundbait-mix{balls="3, 12" size="5 cm"}');
    expect(messages).toEqual([]);
    // A ball of 5 cm holds π/6 · 5³ = 65.45 ml, three 196.3 ml. Dry from 196.3 · 1.1/1.6 = 135 g with 0.4 times as much
    // water, 54 ml, to 196.3 · 1.4/1.4 = 196.3 g with 0.6 times as much, 118 ml; a quarter of 196.3 g is 49 g.
    expect(cells(value)).toEqual([
      ["Balls of 5 cm", "Dry mix", "Keep back dry", "Water"],
      ["3", "130 to 200 g", "50 g", "50 to 120 ml"],
      ["12", "540 to 790 g", "200 g", "220 to 470 ml"],
    ]);
    const tooMuch = live('::groundbait-mix{balls="40" size="5 cm"}');
    expect(tooMuch.messages).toMatchObject([{ code: "groundbait-too-much", severity: "warning" }]);
    expect(cells(tooMuch.value)).toHaveLength(2);
    expect(told('::groundbait-mix{balls="few" size="5 cm"}')).toMatchObject([{ code: "groundbait-balls" }]);
    expect(told('::groundbait-mix{balls="3" size="5 cm, 6 cm"}')).toMatchObject([{ code: "quantity" }]);
  });

  it("shares out a whip's line at each depth, and says so of a whip alone", () => {
    const { value, messages } = live(
      "::whip-line{rig=plain}",
      edited("rigs/plain.md", "water: still", "water: still\nwhip: 4 m"),
    );
    expect(messages).toEqual([]);
    const cells = (value.children[0] as Table).children.map((row) =>
      row.children.map((cell) => textOf(cell)),
    );
    // 3.7 m of line: 2.7 m above 1 m of water, and 4 m of whip beyond that.
    expect(cells.map(([depth, , above, reach]) => [depth, above, reach]).slice(1)).toEqual(
      [
        ["1 m", "2.7 m", "6.7 m"],
        ["1.5 m", "2.2 m", "6.2 m"],
      ].map((row) => row.map((cell) => cell.replace(" ", "\u00a0"))),
    );
    expect(told("::whip-line{rig=plain}")).toMatchObject([{ what: "rig for a whip", found: "plain" }]);
  });

  it("keeps words that have another sense here, and marks them for the pages", () => {
    const { value } = live("Wait for the :plain[lock].");
    expect(textOf(value)).toBe("Wait for the lock.");
    expect((value.children[0] as Paragraph).children[1]).toMatchObject({
      value: "lock",
      data: { hName: "span" },
    });
  });

  it.each([
    [
      '::rig-drawing{rig=plain depth="1.5 m"}',
      { picture: "rig-drawing", rig: "plain", depthMm: 1500, variant: "set" },
    ],
    [
      '::rig-drawing{rig=plain depth="1.5 m" variant="over depth"}',
      { picture: "rig-drawing", rig: "plain", depthMm: 1500, variant: "over depth" },
    ],
    ['::float-chart{floats="waggler, waggler"}', { picture: "float-chart", floats: ["waggler", "waggler"] }],
    ["::float-states{rig=plain show=depth}", { picture: "float-states", rig: "plain", show: "depth" }],
    [
      '::pattern-chart{rigs="plain plain" depth="1 m"}',
      { picture: "pattern-chart", rigs: ["plain", "plain"], depthMm: 1000 },
    ],
    ["::knot{knot=half-blood}", { picture: "knot", knot: "half-blood" }],
    ["::scene{scene=mend}", { picture: "scene", scene: "mend" }],
  ])("makes %s a reference to a picture", (directive, reference) => {
    const { value, messages } = live(directive);
    expect(messages).toEqual([]);
    expect(value.children[0]).toEqual({ type: "picture", reference });
  });

  it.each([
    [
      '::feed-places{bait=grub paces="10 m in 50 s, 10 m in 25 s" depths="1 m, 2 m"}',
      ["Surface pace", "10 m in 50 s", "10 m in 25 s"],
    ],
    ['::groundbait-fall{paces="10 m in 50 s" depths="1 m, 2 m, 3 m"}', ["Depth", "1 m", "2 m", "3 m"]],
  ])("makes %s a table", (directive, names) => {
    const { value, messages } = live(directive);
    expect(messages).toEqual([]);
    const rows = (value.children[0] as Table).children;
    const cells = rows.map((row) => (row.children[0]!.children[0] as Text).value);
    expect(cells.map((cell) => cell.replaceAll("\u00a0", " "))).toEqual(names);
  });

  it("breaks no cell of a table inside a figure with its unit or a size", () => {
    const { value } = live("::shot-table{rig=plain}");
    const cells = (value.children[0] as Table).children
      .slice(1)
      .flatMap((row) => row.children.map((cell) => (cell.children[0] as Text).value));
    expect(cells).toContain("1.5\u00a0m");
    expect(cells.some((cell) => /No\u00a08/.test(cell))).toBe(true);
    for (const cell of cells) expect(cell).not.toMatch(/\d (m|cm|mm)\b|No \d|× /);
  });

  it("says at its place what a table asks for that cannot be had", () => {
    expect(told('::feed-places{bait=grub paces="0.5" depths="1 m"}')).toMatchObject([
      { at: "8:1", code: "quantity", kind: "pace", found: "0.5", problem: "no unit" },
    ]);
    expect(told('::feed-places{bait=grab paces="10 m in 50 s" depths="1 m"}')).toMatchObject([
      { what: "bait", found: "grab", allowed: ["grub"] },
    ]);
    expect(told('::hold-back{rig=plain depth="1 m"}')).toMatchObject([{ what: "rig for running water" }]);
  });

  it("says at its place what a directive asks for that is not there, and what there is", () => {
    const unknown = (what: string, found: string, allowed: readonly string[]) => [
      { at: "8:1", code: "unknown-name", what, found, allowed },
    ];
    expect(told('::rig-drawing{rig=plane depth="1 m"}')).toEqual(unknown("rig", "plane", ["plain"]));
    expect(told('::rig-drawing{rig=plain depth="9 m"}')).toMatchObject([
      { found: "9 m", allowed: ["1 m", "1.5 m", "first"] },
    ]);
    expect(told('::rig-drawing{rig=plain depth="1 m" variant="upside down"}')).toMatchObject([
      {
        what: 'variant of "plain"',
        found: "upside down",
        allowed: expect.arrayContaining(["set", "over depth"]),
      },
    ]);
    expect(told('::float-chart{floats="waggler, wagler"}')).toEqual(unknown("float", "wagler", ["waggler"]));
    expect(told("::float-states{rig=plain show=fish}")).toEqual(
      unknown("group of float states", "fish", ["load", "depth", "bites", "all"]),
    );
    expect(told('::film{film=sunset rig=plain depth="1 m"}')).toMatchObject([
      { code: "unknown-name", what: 'film of "plain" at this depth', found: "sunset" },
    ]);
    expect(told('::pattern-chart{rigs="plain other" depth="1 m"}')).toEqual(
      unknown("rig", "other", ["plain"]),
    );
    expect(told('::hang-plot{rig=plain depth="1 m"}')).toEqual(unknown("rig for running water", "plain", []));
    expect(told("::scene{scene=sunset}")).toMatchObject([
      { code: "unknown-name", what: "scene", found: "sunset" },
    ]);
    expect(told("::pictures{}")).toMatchObject([
      { code: "unknown-name", what: "block directive", found: "pictures" },
    ]);
    expect(told("A :figures[]{rig=plain} in a line.")).toMatchObject([
      { at: "8:3", what: "figure directive" },
    ]);
  });

  it("has every directive in the README", () => {
    const readme = readFileSync("README.md", "utf8");
    const names = [...told("::nothing{}"), ...told("A :nothing[]{} here.")].flatMap(
      (one) => (one as unknown as { allowed: readonly string[] }).allowed,
    );
    expect(names.length).toBeGreaterThan(10);
    for (const name of names) expect(readme).toMatch(new RegExp(`\\W${name}(?:\\[\\])?[{[]`));
  });

  it("asks for an attribute that is not there", () => {
    expect(told("::float-states{rig=plain}")).toMatchObject([
      { at: "8:1", code: "missing-attribute", name: "show", of: "::float-states", slip: "none" },
    ]);
    expect(told('::pattern-chart{rigs=" " depth="1 m"}')).toMatchObject([
      { at: "8:1", code: "missing-attribute", name: "rigs" },
    ]);
  });
});
