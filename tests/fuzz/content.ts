import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Choices } from "./random.ts";

const root = join(import.meta.dirname, "../../content");

/** The shipped content: path → text. */
export const shipped: ReadonlyMap<string, string> = new Map(
  readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
    .map((file) => [file.slice(root.length + 1).replaceAll("\\", "/"), readFileSync(file, "utf8")]),
);

const below = (folder: string) => [...shipped.keys()].filter((path) => path.startsWith(`${folder}/`));

/** What every guide needs, and what rigs are made of. */
const always = /^(?:guide|hooks)\.yaml$|^(?:words|shot|tubs|baits)\/|^pages\/about-figures\.md$/;
/** What may be left out, and takes a good part of the time to read. */
const now = [
  /^lines\.yaml$|^species\//,
  /^glossary\.yaml$/,
  /^troubles\.yaml$/,
  /^(?:changes|synonyms)\.yaml$/,
];

/**
 * A guide of the shipped content small enough to be read thousands of times: a rig with its float and knots, a lesson,
 * a page, and one of the lists, with links that led to the rest led out.
 */
export function smallGuide(choices: Choices): Map<string, string> {
  const chosen = ["rigs", "lessons", "pages"].map((folder) => choices.of(below(folder)));
  const extra = choices.of(now);
  const rig = shipped.get(chosen[0]!)!;
  const float = /^float: (.*)$/m.exec(rig)![1]!;
  const depth = /^depths: \[([^,\]]*)/m.exec(rig)![1]!;
  const rigId = chosen[0]!.replace(/^rigs\/|\.md$/g, "");
  const asksOther = tablesForOthers(rig, extra.test("lines.yaml"));
  const ownFigures = (text: string) =>
    text
      .split("\n")
      .filter((line) => !asksOther.test(line))
      .join("\n")
      .replace(/ variant="[^"]*"/g, "")
      .replace(/\]\((?!https?:)[^)]*\)/g, "](https://example.org/)")
      .replace(/\b(rigs?)=(?:"[^"]*"|[\w-]+)/g, `$1=${rigId}`)
      .replace(/\b(floats?)=(?:"[^"]*"|[\w-]+)/g, `$1=${float}`)
      .replace(/\bdepth="[^"]*"/g, `depth="${depth}"`);
  const texts = chosen.map((path) => shipped.get(path)!).join("");
  const isTied = (path: string) =>
    knotsAlways.has(path) || texts.includes(path.replace(/^knots\/|\.yaml$/g, ""));
  const paths = [...shipped.keys()].filter(
    (path) =>
      always.test(path) ||
      extra.test(path) ||
      chosen.includes(path) ||
      path === `floats/${float}.yaml` ||
      (path.startsWith("knots/") && isTied(path)),
  );
  return new Map(
    paths.map((path) => [
      path,
      path.startsWith("words/") ? shipped.get(path)! : fewEntries(ownFigures(shipped.get(path)!), path),
    ]),
  );
}

/** Knots that a rig is tied with where it does not say. */
const knotsAlways = new Set(["knots/half-blood.yaml", "knots/overhand-loop.yaml"]);

/** A long list of entries cut short: twenty of them are as odd as two hundred. */
function fewEntries(text: string, path: string): string {
  if (!/^(?:glossary|troubles)\.yaml$/.test(path)) return text;
  return text
    .split(/^(?=- )/m)
    .slice(0, 20)
    .join("");
}

/** Lines that ask for a table of what the rig is not, or of a kit, which is made up of many. */
function tablesForOthers(rig: string, hasLines: boolean): RegExp {
  const names = ["kit"];
  if (!hasLines) names.push("line-for-fish");
  if (!/^water: flowing$/m.test(rig)) names.push("hold-back", "hang-plot", "lift-and-pull");
  if (!/^whip:/m.test(rig)) names.push("whip-line");
  return new RegExp(`^::(?:${names.join("|")})\\{`);
}

/** The words that reasons are told with: enough where nothing is solved, and a third of the time of them all. */
export const wordsOfReasons = shipped
  .get("words/en.yaml")!
  .split(/^(?=\w)/m)
  .filter((section) => /^(?:reason|figures):/.test(section))
  .join("");
