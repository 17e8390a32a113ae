import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { Argument } from "commander";
import { readContent } from "../build/build.ts";
import { published } from "../build/publish.ts";
import { leadsNowhere, pagesOf } from "../checks/links.ts";
import { formatReport } from "../checks/reporter.ts";
import { folded, nameProblem } from "../content/names.ts";
import { fileKinds } from "../content/schema/file-kinds.ts";
import type { CommentWords } from "../content/start/comment-words.ts";
import type { StartValues } from "../content/start/commented.ts";
import { copiedRig, newFile, pathOf } from "../content/start/new-file.ts";
import { linesWithDepths } from "../content/start/own-depths.ts";
import { inOwnUnits } from "../content/start/own-units.ts";
import { type StartKind, startKinds } from "../content/start/start-values.ts";
import { starterIn } from "../content/start/starters.ts";
import { addressesOf, ownAddresses } from "../model/content-addresses.ts";
import { limits } from "../model/limits.ts";
import { type BegunGuide, begunGuide } from "./begun-guide.ts";
import { type CliCommand, exitCodes, type Terminal, UsageError } from "./command.ts";
import { contentFolders, withContentOption } from "./content-option.ts";
import { disk } from "./disk.ts";
import { namesIn } from "./names-in.ts";
import { newWords } from "./new-words.ts";
import { noSuch } from "./no-such.ts";
import { sessionStart } from "./start-session.ts";
import { shelfStart } from "./start-shelf.ts";
import { linesOnDisk } from "./tell.ts";
import { reading } from "./trouble.ts";
import { writeNew } from "./write-new.ts";

export const newCommand: CliCommand = {
  name: "new",
  describe: (command) =>
    withContentOption(command)
      .summary("begin a file of your own")
      .description("Writes a file that builds as it is, every key of it explained, for you to change.")
      .addArgument(new Argument("<kind>", "what it is").choices(kinds).argParser(kindOf))
      .argument(
        "<name>",
        "the file's name without its ending, such as our-pond, or its title in quotes; of words the language, such as nl",
      )
      .option("--like <rig>", "a rig that is copied instead, of the library or your own"),
  async run([kind, typed = ""], options, terminal) {
    if (kind === "words") return newWords(typed, ownFolder(options), options, terminal);
    const name = named(typed);
    refuseName(kind as StartKind, name.id);
    const folder = ownFolder(options);
    const path = pathOf(kind as StartKind, name.id);
    const begunText =
      options.like === undefined
        ? begun(kind as StartKind, name, folder)
        : await copyOf(String(options.like), kind!, name, options, terminal);
    if (begunText === undefined) return exitCodes.contentErrors;
    const text = inOwnUnits(begunText, begunGuide(folder).units, name.id);
    writeNew(folder, new Map([[path, text]]));
    terminal.result(
      `${join(folder, path)} is yours to change; npx dotdown check says what is wrong with it\n`,
    );
    if (options.like !== undefined) tellDepths(join(folder, path), text, terminal);
    return exitCodes.fine;
  },
};

/** The name of a new file, and what it is called where that was typed, in words: these say best which begin with a capital. */
interface NewName {
  readonly id: string;
  readonly title?: string;
}

function named(typed: string): NewName {
  const title = typed.trim().replace(/\s+/g, " ");
  return title.includes(" ") ? { id: title.toLowerCase().replaceAll(" ", "-"), title } : { id: typed };
}

const kinds: readonly string[] = [...startKinds, "words"];

/** @throws UsageError where there is none, with the one that was likely meant */
function kindOf(typed: string): string {
  if (!kinds.includes(typed)) throw noSuch("kind of file", typed, kinds);
  return typed;
}

/** @throws UsageError where no file of that name would build */
function refuseName(kind: StartKind, name: string): void {
  const problem = nameProblem(name);
  if (problem) throw new UsageError(`${name} cannot be a name: ${problem.reason}; ${problem.hint}`);
  const { most } = limits.nameSigns;
  if (name.length > most)
    throw new UsageError(`${name} cannot be a name: it has ${name.length} signs, and the most is ${most}`);
  const own = new Set(ownAddresses.map(folded));
  const taken = addressesOf(fileKinds[kind].folder ?? "", name).find((address) => own.has(folded(address)));
  if (taken !== undefined)
    throw new UsageError(
      `${name} cannot be a name: ${taken} is a page of the guide's own; call it something else`,
    );
}

/** What was true of the water of the other rig need not be of this one's. */
function tellDepths(file: string, text: string, terminal: Terminal): void {
  const lines = linesWithDepths(text);
  if (lines.length === 0) return;
  terminal.report("It says this of depths and distances; read it against your own water:\n");
  for (const { line, text: said } of lines) terminal.report(`${file}:${line}: ${said}\n`);
}

type Options = Readonly<Record<string, unknown>>;

/** The folder that a new file is written to: the last one named, or `content` here. */
function ownFolder(options: Options): string {
  const named = (options.content as readonly string[] | undefined)?.at(-1);
  if (named === undefined && !existsSync("content"))
    throw new UsageError("there is no content folder here; begin a guide with npx dotdown init");
  return named ?? "content";
}

/** A file in the guide's language that goes with what the folder has. */
function begun(kind: StartKind, { id, title }: NewName, folder: string): string {
  const guide = begunGuide(folder);
  const { comments } = starterIn(guide.language);
  const values = valuesFor(kind, folder, guide, comments);
  const called: StartValues = title === undefined ? {} : { title: JSON.stringify(title) };
  return newFile(kind, id, { values: { ...values, ...called }, words: comments, names: guide.names });
}

/** What of the usual a new file says otherwise. */
function valuesFor(
  kind: StartKind,
  folder: string,
  guide: BegunGuide,
  { atFirst }: CommentWords,
): StartValues {
  if (kind === "lesson") return { order: nextOrder(folder) };
  if (kind === "session") return sessionStart(folder, guide);
  if (kind === "shelf") return shelfStart(guide);
  if (kind !== "notes") return {};
  const [swim] = namesIn(join(folder, "swims"), ".yaml");
  if (swim === undefined)
    throw new UsageError(
      "notes are of a swim, and there is none; begin one with npx dotdown new swim our-pond",
    );
  const rigs = guide.rigs.slice(0, 1).map(({ id }) => `{ rig: ${id}, worked: Say here what worked. }`);
  return { swim: swim.replace(/\.yaml$/, ""), depths: "[]", rigs: atFirst(`[${rigs.join()}]`) };
}

/** The order of a lesson behind all that the folder has. */
function nextOrder(folder: string): string {
  const lessons = join(folder, "lessons");
  const orders = namesIn(lessons, ".md").map(
    (name) => /^order: *(\d+)/m.exec(readFileSync(join(lessons, name), "utf8"))?.[1],
  );
  return String(Math.max(0, ...orders.map((order) => Number(order ?? 0))) + 1);
}

/** The text of another rig as this one's; undefined, and told, where the content has errors. */
async function copyOf(
  from: string,
  kind: string,
  { id, title }: NewName,
  options: Options,
  terminal: Terminal,
): Promise<string | undefined> {
  if (kind !== "rig") throw new UsageError(`--like copies a rig; a ${kind} is begun without it`);
  const { folders, shipped } = await contentFolders(options);
  const { value: read, messages } = await readContent(disk, folders, shipped);
  if (!read) {
    terminal.report(formatReport(messages, linesOnDisk()));
    return undefined;
  }
  const { library } = read;
  const entry = library.rigs.find((rig) => rig.id === from);
  if (!entry)
    throw noSuch(
      "rig",
      from,
      library.rigs.map((rig) => rig.id),
    );
  const pages = pagesOf(published(library, library.leftOut));
  const text = await reading(entry.path, () => readFileSync(entry.path, "utf8"));
  return copiedRig(text, from, id, (url) => !leadsNowhere(url, entry, pages), title);
}
