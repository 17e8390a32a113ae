import { readFileSync } from "node:fs";
import { join } from "node:path";
import { solveChecked } from "../../src/build/build.ts";
import { checkSources } from "../../src/build/check-sources.ts";
import { withKept } from "../../src/content/kept-sources.ts";
import type { Source, World } from "../../src/content/world.ts";
import { inMemory } from "../../src/model/kept.ts";

const words = readFileSync(join(import.meta.dirname, "../../content/words/en.yaml"), "utf8");

/** A knot of one step, a line laid out. */
const knot = (title: string) => `title: ${title}
joins: line to itself
strength-share: { low: 0.7, high: 0.9, basis: from memory }
frame: [40, 20]
steps:
  - caption: Lay the line out.
    strands:
      - { name: line, pattern: line, path: [[5, 10], [35, 10]] }
`;

/** The least content that builds: one float, one rig, one lesson. */
const smallest: Readonly<Record<string, string>> = {
  "words/en.yaml": words,
  "guide.yaml": `title: Test guide
publisher: Test club
shot-scale: plain
tub: box
lead-rule:
  place: Testland
  allowed-up-to: 0.06 g
  allowed-above: 28.35 g
  source: made up for tests
  checked: 2026-11-20
water-temperature: 10 C
rod-length: 12 ft
edition: 2026-11-20
library: none
`,
  "hooks.yaml": "- { size: 16, mass: 0.03 g, basis: from memory }\n",
  "baits/grub.yaml": "title: grub\nmass: 0.05 g\ndensity: 1.02 g/cm3\nbasis: from memory\n",
  "shot/plain.yaml": `title: plain figures
source: made up for tests
basis: common practice
sizes:
  - { name: BB, mass: 0.4 g }
  - { name: No 4, mass: 0.2 g }
  - { name: No 6, mass: 0.1 g }
  - { name: No 8, mass: 0.06 g }
  - { name: No 10, mass: 0.04 g }
`,
  "tubs/box.yaml": `title: box
scale: plain
sizes:
  - { size: BB, metal: tin, count: plenty }
  - { size: No 4, metal: tin, count: plenty }
  - { size: No 6, metal: tin, count: plenty }
  - { size: No 8, metal: lead, count: plenty }
  - { size: No 10, metal: lead, count: plenty }
`,
  "floats/waggler.yaml": `title: Test waggler
summary: A plain tube.
kind: straight waggler
attachment: bottom
held-by: shot
marking: 4 BB
marked-metal: lead
tip-showing: 20 mm
profile:
  - { at: 0 mm, diameter: 4.5 mm }
  - { at: 200 mm, diameter: 4.5 mm }
basis: from memory
`,
  "knots/half-blood.yaml": knot("Half blood"),
  "knots/overhand-loop.yaml": knot("Overhand loop"),
  "rigs/plain.md": `---
title: Plain rig
purpose: A rig for tests.
water: still
float: waggler
main-line: { strength: 4 lb, diameter: 0.18 mm }
hook-length: { strength: 3 lb, diameter: 0.14 mm, length: 30 cm }
hook: 16
bait: grub
feed: { what: grubs, portion: 10 ml, every: 45 s }
depths: [1 m, 1.5 m]
level: first
catches: [roach]
use-when: [always]
not-when: [never]
change-first: [nothing]
loading:
  pattern: strung out
  lock-share: 70 %
  size: No 8
  gap: 25 cm
  telltale: { size: No 10 }
---

Notes.
`,
  "lessons/first.md": `---
order: 1
part: Start
title: First lesson
summary: A lesson for tests.
---

## Words

Some words about the [plain rig](../rigs/plain.md).
`,
};

/** A kit that the plain rig can be made up from. */
export const smallestKit = `title: Box
rigs: [plain]
floats: [waggler]
tub: box
hooks: [16]
main-line: 4 lb
hook-length: 3 lb
baits: [grub]
`;

/** The smallest content with some files changed, added or (with null) taken away. */
export function contentWith(
  changes: Readonly<Record<string, string | null>> = {},
): Readonly<Record<string, string>> {
  const files = Object.entries({ ...smallest, ...changes }).filter(
    (entry): entry is [string, string] => entry[1] !== null,
  );
  return Object.fromEntries(files);
}

/** One of the smallest content's files with a piece of its text replaced; the piece must be there. */
export function edited(path: string, from: string, to: string): Record<string, string> {
  const text = smallest[path]!;
  if (!text.includes(from)) throw new Error(`${path} does not contain ${from}`);
  return { [path]: text.replace(from, to) };
}

const asSources = (files: Readonly<Record<string, string>>): ReadonlyMap<string, Source> =>
  new Map(Object.entries(files).map(([path, text]) => [path, asSource(path, text)]));

function asSource(path: string, text: string): Source {
  const file = `content/${path}`;
  if (!path.startsWith("images/")) return { path, file, text, bytes: Buffer.byteLength(text) };
  const content = Buffer.from(text, "latin1");
  return { path, file, text: "", bytes: content.length, content };
}

const smallestSources = asSources(smallest);

/** Content as sources, named below `content/`; a file of the smallest content that is as it was is read once for all tests. */
export const sourcesOf = (files: Readonly<Record<string, string>>): ReadonlyMap<string, Source> =>
  withKept(asSources(files), smallestSources);

const keep = inMemory(20);

/** The smallest content with these changes, with its sums; a rig that is as it was is solved once for all tests. */
export const solveWith = (changes: Readonly<Record<string, string | null>> = {}) =>
  solveChecked(checkSources(sourcesOf(contentWith(changes))), keep);

/** A world that holds only these files, in one folder called `content`. */
export function worldOf(files: Readonly<Record<string, string>>): World {
  return {
    list: async () =>
      Object.entries(files)
        .map(([path, text]) => ({ path, bytes: Buffer.byteLength(text) }))
        .sort((a, b) => (a.path < b.path ? -1 : 1)),
    readText: async (path) => files[path.replace(/^content\//, "")],
    readBytes: async (path) => Buffer.from(files[path.replace(/^content\//, "")] ?? "", "latin1"),
  };
}
