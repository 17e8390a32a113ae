import { renameSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { formatReport } from "../checks/reporter.ts";
import { languageOf, wordTreeOver } from "../content/layers.ts";
import { wordsIn } from "../content/read-words.ts";
import { Reading } from "../content/reading.ts";
import { wordsToFillIn } from "../content/start/new-words.ts";
import { readSources, type Source } from "../content/world.ts";
import type { Message } from "../model/message.ts";
import type { WordTree } from "../model/word-tree.ts";
import { makeWords } from "../words/words.ts";
import { exitCodes, type Terminal } from "./command.ts";
import { contentFolders } from "./content-option.ts";
import { disk } from "./disk.ts";
import { languageTag } from "./language-tag.ts";
import { linesOnDisk } from "./tell.ts";
import { writeTrouble } from "./trouble.ts";
import { writeNew } from "./write-new.ts";

/**
 * Writes a file of a language's words to fill in, or adds to the one that is there what it lacks.
 *
 * @param folder content folder that it is written to
 * @returns an exit code
 * @throws UsageError where the name is no language
 */
export async function newWords(
  name: string,
  folder: string,
  options: Readonly<Record<string, unknown>>,
  terminal: Terminal,
): Promise<number> {
  const language = languageTag(name);
  const { folders, shipped } = await contentFolders(options);
  const sources = await readSources(disk, folders, shipped);
  const path = `words/${language}.yaml`;
  const file = join(folder, path);
  const known = sources.get(path);
  const own = known && join(known.file) === file ? known : undefined;
  const others = new Map(sources);
  if (own?.under) others.set(path, own.under);
  else if (own) others.delete(path);
  const { messages } = readAs(language, sources);
  if (messages.length > 0) {
    terminal.report(formatReport(messages, linesOnDisk()));
    return exitCodes.contentErrors;
  }
  const { text, added, closed } = wordsToFillIn(own?.text, language, readAs(language, others).words);
  if (own === undefined) writeNew(folder, new Map([[path, text]]));
  else if (added > 0) replace(file, text);
  terminal.result(told(file, added, own !== undefined));
  for (const group of closed)
    terminal.report(
      `${file}: "${group}" stands between braces and was left alone; write its keys on lines of their own, and call this again\n`,
    );
  tellLanguage(language, languageOf(sources), terminal);
  return exitCodes.fine;
}

/** All words as they stand in a language, English where it has none, and what is wrong with those of the guide's own. */
function readAs(
  language: string,
  sources: ReadonlyMap<string, Source>,
): { readonly words: WordTree; readonly messages: readonly Message[] } {
  const reading = new Reading(sources, makeWords({}));
  const { english, own } = wordsIn(language, reading);
  return { words: wordTreeOver(own, english ?? {}), messages: reading.messages };
}

/** Puts a text in the place of another at once, so that whoever stops it has either whole. */
function replace(file: string, text: string): void {
  const next = join(dirname(file), `.${basename(file)}.next`);
  try {
    writeFileSync(next, text);
    renameSync(next, file);
  } catch (error) {
    throw writeTrouble(error, file, "it is as it was");
  }
}

function told(file: string, added: number, isThere: boolean): string {
  if (added === 0)
    return `${file} has every word already and is as it was; npx dotdown check says what is still to be filled in\n`;
  const words = `${added} ${added === 1 ? "word" : "words"}`;
  const done = isThere ? `${words} added to ${file}` : `${words} in ${file}`;
  return `${done}: fill in as few as you like; what is left empty stands as it did\n`;
}

/** A file that nothing reads is no use to anybody. */
function tellLanguage(language: string, ofGuide: string, terminal: Terminal): void {
  if (language === "en" || [ofGuide, ofGuide.split("-")[0]].includes(language)) return;
  terminal.report(
    `Nothing reads it yet: the guide is in "${ofGuide}". Say \`language: ${language}\` in its guide.yaml\n`,
  );
}
