import { outputFiles, solveChecked, solveContent } from "../../src/build/build.ts";
import { checkSources } from "../../src/build/check-sources.ts";
import { layoutProblems } from "../../src/build/layout-problems.ts";
import { type BuildSettings, buildParts } from "../../src/build/stages.ts";
import { withKept } from "../../src/content/kept-sources.ts";
import { readSources } from "../../src/content/world.ts";
import { type Keep, makeAnew } from "../../src/model/kept.ts";
import { hasErrors, type Message } from "../../src/model/message.ts";
import { sampleSession } from "./sample-session.ts";
import { contentWith, worldOf } from "./smallest-content.ts";

type Files = Readonly<Record<string, string>>;

export const lesson = (order: number, title: string, text: string) => `---
order: ${order}
part: Start
title: ${title}
summary: About ${title}.
---

## Words

${text}
`;

const riverRig = `---
title: River rig
purpose: A second rig for tests.
water: flowing
paces: [0.2 m/s]
float: waggler
main-line: { strength: 4 lb, diameter: 0.18 mm }
hook-length: { strength: 3 lb, diameter: 0.14 mm, length: 30 cm }
hook: 16
bait: grub
feed: { what: grubs, portion: 10 ml, every: 45 s }
depths: [1 m]
level: next
catches: [roach]
use-when: [sometimes]
not-when: [seldom]
change-first: [the depth]
loading:
  pattern: strung out
  lock-share: 70 %
  size: No 8
  gap: 20 cm
  telltale: { size: No 10 }
---

More notes.
`;

/** A guide with one of each that is drawn, laid out or printed. */
export const guideToEdit: Files = contentWith({
  "rigs/river.md": riverRig,
  "lessons/second.md": lesson(
    2,
    "Second",
    'See [the first](first.md) and [the river](../rigs/river.md).\n\n::rig-drawing{rig=river depth="1 m"}\n\n::knot{knot=half-blood}\n\n| a | b |\n| --- | --- |\n| one | :marking[]{float=waggler} |',
  ),
  "lessons/third.md": lesson(
    3,
    "Third",
    "::float-drawing{float=waggler}\n\nOf the [plain rig](../rigs/plain.md).\n\n::float-states{rig=plain show=load}",
  ),
  "notes/day.yaml":
    "swim: pond\ndate: 2026-05-09\nlevel: 2 cm\ndepths: [{ spot: Close in, depth: 91 cm }]\nrigs: [{ rig: plain, catches: [{ fish: roach, count: 3 }] }]\n",
  "choosing.yaml":
    "basis: common practice\nrules-out: [{ rule: water }, { rule: rod }, { rule: box }]\nspeaks-for: [{ rule: fish, points: 2 }]\n",
  ...sampleSession(),
  "shelves/hut.yaml":
    "title: Hut\nhooks:\n  - { size: 16, count: 30, packet: 10 }\npacks:\n  - { rig: plain, wanted: 3 }\n",
  "pages/safety.md": `---\ntitle: Safety\nsummary: Take care.\n---\n\n## Lines\n\nKeep away from lines overhead.\n`,
});

/** Ways to change a guide of which some make other files differ, and some only few. */
type Edit = (files: Record<string, string>, take: (below: number) => number) => void;

const replaced =
  (path: string, from: RegExp, to: (n: number) => string, most = 90): Edit =>
  (files, take) => {
    files[path] = (files[path] ?? "").replace(from, to(10 + take(most)));
  };

const edits: readonly Edit[] = [
  replaced("lessons/first.md", /Some words[^\n[]*/, (n) => `Some words of ${n} about the `),
  replaced("lessons/second.md", /title: Second[^\n]*/, (n) => `title: Second ${n}`),
  replaced("lessons/third.md", /order: \d+/, (n) => `order: ${n}`),
  replaced("lessons/third.md", /Of the/, (n) => `${n} words. Of the`),
  replaced("pages/safety.md", /overhead[^\n]*/, (n) => `overhead, ${n} m off.`),
  replaced("rigs/plain.md", /depths: [^\n]*/, (n) => `depths: [${n / 100 + 0.9} m, 1.95 m]`, 80),
  replaced("rigs/plain.md", /title: [^\n]*/, (n) => `title: Plain rig ${n}`),
  replaced("rigs/plain.md", /change-first: [^\n]*/, (n) => `change-first: [the gap by ${n} mm]`),
  replaced("rigs/river.md", /gap: [^\n]*/, (n) => `gap: ${15 + n / 10} cm`, 60),
  replaced("rigs/river.md", /level: [^\n]*/, (n) => `level: ${n % 2 ? "next" : "beginner"}`),
  replaced("rigs/river.md", /notes[^\n]*/, (n) => `notes and ${n}.`),
  replaced("floats/waggler.yaml", /tip-showing: [^\n]*/, (n) => `tip-showing: ${15 + n / 10} mm`),
  replaced("floats/waggler.yaml", /title: [^\n]*/, (n) => `title: Test waggler ${n}`),
  replaced("floats/waggler.yaml", /marking: [^\n]*/, (n) => `marking: ${n % 2 ? "4 BB" : "2 AAA"}`),
  replaced("baits/grub.yaml", /mass: [^\n]*/, (n) => `mass: 0.0${n} g`, 30),
  replaced("hooks.yaml", /mass: [\d.]+/, (n) => `mass: 0.0${n}`, 30),
  replaced("knots/half-blood.yaml", /\[35, \d+\]/, (n) => `[35, ${n}]`, 8),
  replaced("swims/pond.yaml", /depth: 90 cm|depth: 9\d cm/, (n) => `depth: ${90 + (n % 10)} cm`),
  replaced("swims/pond.yaml", /title: Our[^\n]*/, (n) => `title: Our pond ${n}`),
  replaced("notes/day.yaml", /count: \d+/, (n) => `count: ${n}`),
  replaced("choosing.yaml", /points: \d+/, (n) => `points: ${n}`),
  replaced("guide.yaml", /title: [^\n]*/, (n) => `title: Guide ${n}`),
  replaced("guide.yaml", /publisher: [^\n]*/, (n) => `publisher: Club ${n}`),
  replaced("guide.yaml", /edition: [^\n]*/, (n) => `edition: 2026-11-${10 + (n % 18)}`),
  replaced("guide.yaml", /water-temperature: [^\n]*/, (n) => `water-temperature: ${n % 20} C`),
  replaced("guide.yaml", /^(?:paper: [^\n]*\n)?/, (n) => `paper: ${n % 2 ? "A4" : "Letter"}\n`),
  replaced("guide.yaml", /^(?:units: [^\n]*\n)?/, (n) => `units: ${n % 2 ? "metric" : "imperial"}\n`),
  replaced(
    "guide.yaml",
    /^(?:site-address: [^\n]*\n)?/,
    (n) => `site-address: https://makebelieve.example/${n}/\n`,
  ),
  replaced("sessions/day.yaml", /adults: \d+/, (n) => `adults: ${n}`, 40),
  replaced("sessions/day.yaml", /hours: [^\n]*/, (n) => `hours: 2 h ${n} min`, 40),

  replaced("swims/pond.yaml", /depth: 90 cm/, (n) => `depth: ${70 + n} cm`, 20),
  replaced("swims/pond.yaml", /road: [^}]*/, (n) => `road: Road ${n} `),
  replaced("shelves/hut.yaml", /wanted: \d+/, (n) => `wanted: ${n}`),
  replaced("shelves/hut.yaml", /title: [^\n]*/, (n) => `title: Hut ${n}`),
  replaced("words/en.yaml", /skip: [^\n]*/, (n) => `skip: To page ${n}`),
  replaced("words/en.yaml", /handouts?\b/, (n) => `handout ${n}`),
  (files, take) => {
    files[`lessons/new-${take(3)}.md`] = lesson(40 + take(9), `New ${take(90)}`, "[Second](second.md)");
  },
  (files, take) => {
    delete files[`lessons/new-${take(3)}.md`];
  },
  (files, take) => {
    files["rigs/another.md"] = (files["rigs/plain.md"] ?? "").replace(
      /title: [^\n]*/,
      `title: Another ${take(90)}`,
    );
  },
  (files) => {
    delete files["rigs/another.md"];
  },
];

/** The guide after each of so many edits, the one after the other; an edit that makes it wrong is taken back. */
export async function* editedGuides(count: number, share: Generator<number, never>): AsyncGenerator<Files> {
  const take = (below: number) => Math.floor(share.next().value * below);
  let files: Record<string, string> = { ...guideToEdit };
  for (let made = 0; made < count; ) {
    const next = { ...files };
    edits[take(edits.length)]?.(next, take);
    const { messages } = await solveContent(worldOf(next), ["content"]);
    if (hasErrors(messages)) continue;
    files = next;
    made += 1;
    yield files;
  }
}

/** All that is built of a guide, or some parts of it, by path: bytes, and texts as they are. */
export async function builtOf(
  files: Files,
  keep: Keep = makeAnew,
  parts: BuildSettings["parts"] = buildParts,
  sources = readSources(worldOf(files), ["content"]),
): Promise<Map<string, string>> {
  const { value, messages } = await solveChecked(checkSources(await sources, keep), keep);
  if (!value) throw new Error(JSON.stringify(messages));
  const built = new Map<string, string>([["messages", JSON.stringify(messages)]]);
  const settings = { date: value.library.guide.edition, siteAssets: new Map(), keep, keepGoing: true, parts };
  const told: unknown[] = [];
  for await (const { path, content } of outputFiles(value, {
    ...settings,
    tell: (more) => told.push(...more),
  }))
    built.set(path, typeof content === "string" ? content : Buffer.from(content).toString("latin1"));
  return built.set("told", JSON.stringify(told));
}

/** Reads guide after guide as a command does that goes on: what is known of a file that did not change is known. */
export function readingOn(): (files: Files) => ReturnType<typeof readSources> {
  let before: Awaited<ReturnType<typeof readSources>> = new Map();
  return async (files) => {
    before = withKept(await readSources(worldOf(files), ["content"]), before);
    return before;
  };
}

/** All that a check tells of a guide. */
export async function checkedOf(files: Files, keep: Keep = makeAnew): Promise<readonly Message[]> {
  const { value, messages } = await solveContent(worldOf(files), ["content"], undefined, keep);
  if (!value) return messages;
  const settings = { date: value.library.guide.edition, siteAssets: new Map(), keep };
  return [...messages, ...(await layoutProblems(value, settings))];
}
