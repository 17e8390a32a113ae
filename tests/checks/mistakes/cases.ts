import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { solveChecked } from "../../../src/build/build.ts";
import { checkSources } from "../../../src/build/check-sources.ts";
import { worded } from "../../../src/checks/messages.ts";
import { withKept } from "../../../src/content/kept-sources.ts";
import { readSources, type World } from "../../../src/content/world.ts";
import { inMemory } from "../../../src/model/kept.ts";
import { type Message, sortedMessages } from "../../../src/model/message.ts";

const guideFolder = join(import.meta.dirname, "guide");

/** A guide without a fault, over which the files of a case are laid. */
const guide: Readonly<Record<string, string>> = Object.fromEntries(
  readdirSync(guideFolder, { recursive: true, encoding: "utf8" })
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => path.endsWith(".md") || path.endsWith(".yaml"))
    .map((path) => [path, readFileSync(join(guideFolder, path), "utf8")]),
);

const words = readFileSync(join(import.meta.dirname, "../../../content/words/en.yaml"), "utf8");

/** A file of a case: the lines that stand in the collection, and where each of them stands in the file. */
interface CaseFile {
  readonly head: string;
  readonly path: string;
  readonly bytes: Buffer | undefined;
  readonly shown: readonly { readonly text: string; readonly line: number | undefined }[];
}

export interface Case {
  readonly title: string;
  /** Why nothing is to be said of it. */
  readonly silence: string | undefined;
  readonly files: readonly CaseFile[];
}

/** Lines that say what is expected; `vitest -u` writes them, and whoever reads the difference judges them. */
const expectation = /^ *(?:\^ (?:error|warning): | {2}hint: )|^@ /;

/**
 * The cases of a collection. Each starts with `== title`; a file of it with `-- path`, below which are the lines that it
 * has instead of the guide's: a line stands in for the one with the same key, or comes after the line above it; `~ key:`
 * takes one out. Where nothing is to be said of a case, `= ` and the reason stand below its title. `-- path whole` is a file with these lines alone, `-- path gone` none, `-- path utf-16` one in that encoding.
 */
export function casesOf(collection: string): readonly Case[] {
  return collection
    .split(/^== /m)
    .slice(1)
    .map((text) => {
      const [title = "", ...rest] = text.split("\n").filter((line) => !expectation.test(line));
      const silence = /^= (.*)$/.exec(rest[0] ?? "")?.[1];
      const files = rest.join("\n").trimEnd().split(/^-- /m).slice(1).map(fileOf);
      return { title, silence, files };
    });
}

function fileOf(text: string): CaseFile {
  const [head = "", ...lines] = text.replace(/\n+$/, "").split("\n");
  const [, path = "", how] = /^(.*?)(?: (whole|gone|utf-16))?$/.exec(head)!;
  if (how === "gone") return { head, path, bytes: undefined, shown: [] };
  const before = how === undefined ? (guide[path] ?? "").split("\n").slice(0, -1) : [];
  const { after, shown } = laidOver(before, lines);
  const whole = `${after.join("\n")}\n`;
  const bytes = how === "utf-16" ? Buffer.from(`\uFEFF${whole}`, "utf16le") : Buffer.from(whole);
  return { head, path, bytes, shown };
}

const keyOf = (line: string) => /^\s*(?:- )?(?:\{ )?[\w-]+:/.exec(line)?.[0];

function laidOver(before: readonly string[], lines: readonly string[]) {
  const after = [...before];
  const places: { text: string; at: string[] | undefined }[] = [];
  let last = -1;
  const boxed = after.map((line) => [line]);
  for (const text of lines) {
    const gone = text.startsWith("~ ");
    const key = keyOf(gone ? text.slice(2) : text);
    const from = gone ? -1 : last;
    const found = boxed.findIndex(([line = ""], at) => at > from && key !== undefined && keyOf(line) === key);
    if (gone) {
      if (found < 0) throw new Error(`nothing to take out: ${text}`);
      boxed.splice(found, 1);
      if (found <= last) last--;
      places.push({ text, at: undefined });
      continue;
    }
    const box = [text];
    if (found >= 0) boxed[found] = box;
    else boxed.splice(last < 0 ? boxed.length : last + 1, 0, box);
    last = boxed.indexOf(box);
    places.push({ text, at: box });
  }
  return {
    after: boxed.map(([line = ""]) => line),
    shown: places.map(({ text, at }) => ({ text, line: at && boxed.indexOf(at) + 1 })),
  };
}

/** The guide with a case's files laid over it, as a disk has it; the fixed words are those that come with the tool. */
function worldOf({ files }: Pick<Case, "files">): World {
  const all = new Map<string, Buffer>(
    Object.entries(guide).map(([path, text]) => [`content/${path}`, Buffer.from(text)]),
  );
  // Words of a case's own lie over them; without any it is asked of the guide what is asked of one that borrows nothing.
  const hasWords = files.some(({ path }) => path.startsWith("words/"));
  all.set(`${hasWords ? "library" : "content"}/words/en.yaml`, Buffer.from(words));
  for (const { path, bytes } of files) {
    if (bytes) all.set(`content/${path}`, bytes);
    else all.delete(`content/${path}`);
  }
  return {
    list: async (folder) =>
      [...all]
        .filter(([path]) => path.startsWith(`${folder}/`))
        .map(([path, bytes]) => ({ path: path.slice(folder.length + 1), bytes: bytes.length }))
        .sort((a, b) => (a.path < b.path ? -1 : 1)),
    readText: async (path) => all.get(path)?.toString("utf8"),
    readBytes: async (path) => all.get(path),
  };
}

const sourcesOf = (one: Pick<Case, "files">) => readSources(worldOf(one), ["content"], "library");
const guideSources = await sourcesOf({ files: [] });
const keep = inMemory(20);

/** The guide with a case's files laid over it, with its sums; what the case leaves as it is, is read and solved once for all. */
export async function solveCase(one: Case) {
  const sources = withKept(await sourcesOf(one), guideSources);
  return solveChecked(checkSources(sources), keep);
}

/** A case as it stands in its collection, with each message below the spot that it is about. */
export function withMessages({ title, silence, files }: Case, messages: readonly Message[]): string {
  const left = new Set(sortedMessages(messages));
  const toldAt = (path: string, line: number | undefined) =>
    [...left]
      .filter(({ place }) => place.file === `content/${path}` && place.line === line)
      .flatMap((message) => {
        left.delete(message);
        return said(message, " ".repeat((message.place.column ?? 1) - 1));
      });
  const shown = files.flatMap(({ head, path, shown }) => [
    `-- ${head}`,
    ...toldAt(path, undefined),
    ...shown.flatMap(({ text, line }) => [text, ...(line === undefined ? [] : toldAt(path, line))]),
  ]);
  const elsewhere = [...left].flatMap((message) => {
    const { file, line, column } = message.place;
    return said(message, "").map((text) => `@ ${file}:${line ?? ""}:${column ?? ""} ${text}`);
  });
  const reason = silence === undefined ? [] : [`= ${silence}`];
  return [`== ${title}`, ...reason, ...shown, ...elsewhere, ""].join("\n");
}

/** So much is enough to know a sentence by; of what is allowed the first few, as keys and pages come to be more. */
const brief = (text: string) => {
  const few = text.replace(/(allowed: .{30}[^,]*),.*$/, "$1, …");
  return few.length > 150 ? `${few.slice(0, 150)}…` : few;
};

function said(message: Message, indent: string): readonly string[] {
  const { reason, hint } = worded(message);
  return [
    `${indent}^ ${message.severity}: ${brief(reason)}  [${message.code}]`,
    ...(hint === undefined ? [] : [`${indent}  hint: ${brief(hint)}`]),
  ];
}
