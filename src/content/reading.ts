import type { z } from "zod";
import type { Finding } from "../core/finding.ts";
import { addressesOf, ownAddresses } from "../model/content-addresses.ts";
import { digestOf } from "../model/digest.ts";
import { type Keep, makeAnew, once } from "../model/kept.ts";
import type { MarkdownText } from "../model/library.ts";
import { limits } from "../model/limits.ts";
import { type Message, message, type Place, startOf } from "../model/message.ts";
import type { MessageCode, MessageValues } from "../model/message-table.ts";
import type { OwnFont } from "../model/own-font.ts";
import { makeFigures } from "../words/figures.ts";
import { findingMessage } from "../words/reason.ts";
import type { Words } from "../words/words.ts";
import { type MarkdownSource, parseText, readMarkdown } from "./markdown-source.ts";
import { fileId, filesOf, titleOf } from "./named-entries.ts";
import { folded, nameProblem } from "./names.ts";
import { readSchema } from "./schema/read-schema.ts";
import { notText, tooMuch, tooMuchToParse } from "./text-limits.ts";
import { unusualFigures } from "./usual-figures.ts";
import { checkText, checkValues } from "./value-limits.ts";
import type { Source } from "./world.ts";
import { readYaml, type YamlSource } from "./yaml-source.ts";

/** A file read and held against its schema, with its places at hand. */
export interface Read<T> {
  /** File name without folder and ending. */
  readonly id: string;
  readonly source: Source;
  readonly value: T;
  readonly yaml: YamlSource;
}

export interface ReadProse<T> extends Read<T> {
  readonly body: MarkdownSource["body"];
}

/** What was read of a file that has not changed since, by the schema that it was held against. */
const known = new WeakMap<
  Source,
  Map<
    object,
    { readonly value: unknown; readonly messages: readonly Message[]; readonly font: OwnFont | undefined }
  >
>();

/** Reads the files of the content one by one and keeps every message met. */
export class Reading {
  readonly messages: Message[] = [];
  /** Files that do not hold to their schema: what they name can still be looked up. */
  readonly broken: { readonly path: string; readonly yaml: YamlSource }[] = [];
  /** Files by the addresses that are made of them, folded; what is the guide's own is nobody's to take. */
  readonly #taken = new Map(ownAddresses.map((address) => [folded(address), "the guide itself"]));
  readonly #fontFrom = once(() => this.font && Buffer.from(this.font.bytes).toString("base64"));

  constructor(
    readonly sources: ReadonlyMap<string, Source>,
    readonly words: Words,
    /** Has signs that the tool's own fonts lack. */
    readonly font?: OwnFont,
    /** Keeps what is parsed. */
    readonly keep: Keep = makeAnew,
  ) {}

  error<C extends MessageCode>(place: Place, code: C, values: MessageValues[C]): void {
    this.messages.push(message(code, place, values));
  }

  /** Says what the core found, in its own words, at the place of the figure it is about. */
  finding(finding: Finding, place: Place): void {
    this.messages.push(
      findingMessage(finding, place, this.words, makeFigures("metric first", this.words, "en")),
    );
  }

  /** The YAML file at a path; a message says what it is for where it is missing. */
  file<T>(path: string, schema: z.ZodType<T>, need: string): Read<T> | undefined {
    const source = this.sources.get(path);
    if (source) return this.#yaml(source, schema);
    this.error({ file: `${this.#ownFolder()}${path}` }, "missing-file", { path, need });
    return undefined;
  }

  /** The guide's own folder, as its files are named. */
  #ownFolder(): string {
    const own = [...this.sources.values()].find(({ fromLibrary }) => !fromLibrary);
    return own?.file.endsWith(own.path) ? own.file.slice(0, -own.path.length) : "";
  }

  optionalFile<T>(path: string, schema: z.ZodType<T>): Read<T> | undefined {
    const source = this.sources.get(path);
    return source && this.#yaml(source, schema);
  }

  /**
   * The YAML file at a path, laid over the one that it stands in for, and that over the next.
   *
   * @param laidOver two of them as one
   */
  layered<T>(
    path: string,
    schema: z.ZodType<T>,
    need: string,
    laidOver: (over: YamlSource, under: YamlSource) => YamlSource,
  ): Read<T> | undefined {
    const source = this.sources.get(path);
    if (!source?.under) return this.file(path, schema, need);
    return this.#once(source, schema, () => {
      const yamls: YamlSource[] = [];
      for (let layer: Source | undefined = source; layer; layer = layer.under) {
        const yaml = this.#layer(layer);
        if (!yaml) return undefined;
        yamls.push(yaml);
      }
      const laid = yamls.reduceRight((under, over) => laidOver(over, under));
      return this.#typed(source, schema, laid);
    });
  }

  #layer(source: Source): YamlSource | undefined {
    return this.#once(source, readYaml, () => {
      if (!this.#mayParse(source)) return undefined;
      const yaml = readYaml(source.text, source.file, 0, this.keep);
      this.messages.push(...yaml.messages);
      return yaml.messages.length === 0 && this.#isSound(source, yaml) ? yaml : undefined;
    });
  }

  /** All YAML files of a folder that hold to the schema. */
  folder<T>(folder: string, schema: z.ZodType<T>): readonly Read<T>[] {
    return this.#inFolder(folder, ".yaml").flatMap((source) => this.#yaml(source, schema) ?? []);
  }

  /** All Markdown files of a folder whose front matter holds to the schema. */
  prose<T>(folder: string, schema: z.ZodType<T>): readonly ReadProse<T>[] {
    return this.#inFolder(folder, ".md").flatMap((source) =>
      this.#once(source, schema, () => this.#prose(source, schema)),
    );
  }

  /** A Markdown text without keys of its own; nothing where there is none, or where it cannot be set. */
  text(path: string): MarkdownText | undefined {
    const source = this.sources.get(path);
    if (!source) return undefined;
    return this.#once(source, parseText, () => {
      if (!this.#mayParse(source)) return undefined;
      const body = parseText(source.text, this.keep);
      this.messages.push(...checkText(body, source, this.font));
      return { path: source.file, body };
    });
  }

  #prose<T>(source: Source, schema: z.ZodType<T>): readonly ReadProse<T>[] {
    if (!this.#mayParse(source)) return [];
    const markdown = readMarkdown(source.text, source.file, this.keep);
    const read = this.#right(source, markdown.front, () => {
      if (markdown.messages.length > 0) {
        this.messages.push(...markdown.messages);
        return undefined;
      }
      // What the library's texts are is known: one that the guide leaves out is not even parsed.
      if (!source.fromLibrary) this.messages.push(...checkText(markdown.body, source, this.font));
      return this.#hold(source, schema, markdown.front);
    });
    return read ? [{ ...read, body: markdown.body }] : [];
  }

  /** What is made of a file and its schema alone is made once, with what there is to tell of it. */
  #once<T>(source: Source, schema: object, read: () => T): T {
    const bySchema = known.get(source) ?? new Map();
    known.set(source, bySchema);
    const before = bySchema.get(schema);
    if (before && before.font === this.font) {
      this.messages.push(...before.messages);
      return before.value as T;
    }
    const [from, broken] = [this.messages.length, this.broken.length];
    const value = read();
    if (this.broken.length > broken) return value;
    bySchema.set(schema, { value, messages: this.messages.slice(from), font: this.font });
    return value;
  }

  /** Looks a name up, or says at its place what names there are. */
  lookUp<T>(found: ReadonlyMap<string, T>, name: string, what: string, place: Place): T | undefined {
    const value = found.get(name);
    if (value === undefined && !this.#isTold(what, name)) {
      const meant = [...found].find(([, entry]) => titleOf(entry)?.toLowerCase() === name.toLowerCase())?.[0];
      const values = { what, found: name, allowed: [...found.keys()] };
      this.error(place, "unknown-name", { ...values, ...(meant !== undefined && { meant }) });
    }
    return value;
  }

  /** Whether an error was told of a file in a folder. */
  hasErrorIn(folder: string): boolean {
    const files = [...this.sources.values()].filter(({ path }) => path.startsWith(`${folder}/`));
    return this.messages.some(
      ({ severity, place }) => severity === "error" && files.some(({ file }) => file === place.file),
    );
  }

  /** Whether the guide's own file of what is called so is there: it has an error itself, or what it needs has one. */
  #isTold(what: string, name: string): boolean {
    const [folder, ending] = Object.hasOwn(filesOf, what) ? filesOf[what]! : [];
    const source = folder && this.sources.get(`${folder}/${name}${ending}`);
    return source ? !source.fromLibrary : false;
  }

  /** Files of a folder whose names may be addresses; a message for each that may not. */
  #inFolder(folder: string, ending: string): Source[] {
    return [...this.sources.values()]
      .filter(({ path }) => path.startsWith(`${folder}/`) && path.endsWith(ending))
      .sort((a, b) => (a.path < b.path ? -1 : 1))
      .filter((source) => this.#hasAddress(folder, source));
  }

  #hasAddress(folder: string, { path, file }: Source): boolean {
    const place = startOf(file);
    if (path.lastIndexOf("/") > folder.length) {
      this.error(place, "file-too-deep", { folder });
      return false;
    }
    const id = fileId(path);
    if (id.length > limits.nameSigns.most) {
      this.messages.push(tooMuch("nameSigns", id.length, place));
      return false;
    }
    const problem = nameProblem(id);
    if (problem) {
      this.error(place, "file-name", problem);
      return false;
    }
    for (const address of addressesOf(folder, id)) {
      const by = this.#taken.get(folded(address));
      if (by !== undefined) {
        this.error(place, "address-taken", { address, by });
        break;
      }
      this.#taken.set(folded(address), file);
    }
    return true;
  }

  #mayParse(source: Source): boolean {
    const { path, file, text, bytes } = source;
    const from = digestOf([path, file, bytes], text);
    const wrong = this.keep("may be parsed", from, () => tooMuchToParse(source) ?? notText(source));
    if (wrong) this.messages.push(wrong);
    return !wrong;
  }

  #yaml<T>(source: Source, schema: z.ZodType<T>): Read<T> | undefined {
    return this.#once(source, schema, () => {
      if (!this.#mayParse(source)) return undefined;
      const yaml = readYaml(source.text, source.file, 0, this.keep);
      return this.#right(source, yaml, () => this.#hold(source, schema, yaml));
    });
  }

  /** Reads a file. One that was right before is not held against its schema again. */
  #right<T>(source: Source, yaml: YamlSource, read: () => Read<T> | undefined): Read<T> | undefined {
    const { path, file, fromLibrary, text } = source;
    let anew: { readonly read: Read<T> | undefined } | undefined;
    // A file of the library is read as it is wherever the library lies, and whatever signs the guide has a font for.
    const of = fromLibrary ? ["lent", path] : [path, file, this.#fontFrom()];
    const kept = this.keep("read", digestOf(of, text), () => {
      const from = this.messages.length;
      anew = { read: read() };
      const messages = this.messages.slice(from);
      return anew.read && !(fromLibrary && messages[0]) ? { value: anew.read.value, messages } : undefined;
    });
    if (anew) return anew.read;
    if (!kept) return read();
    this.messages.push(...kept.messages);
    return { id: fileId(path), source, value: kept.value, yaml };
  }

  #hold<T>(source: Source, schema: z.ZodType<T>, yaml: YamlSource): Read<T> | undefined {
    return this.#isSound(source, yaml) ? this.#typed(source, schema, yaml) : undefined;
  }

  #isSound(source: Source, yaml: YamlSource): boolean {
    if (source.fromLibrary) return true;
    this.messages.push(...yaml.warnings);
    const beyond = checkValues(yaml, source, this.font);
    this.messages.push(...beyond);
    return beyond.length === 0;
  }

  #typed<T>(source: Source, schema: z.ZodType<T>, yaml: YamlSource): Read<T> | undefined {
    const { value, messages } = readSchema(schema, yaml);
    this.messages.push(...messages);
    if (value === undefined) {
      this.broken.push({ path: source.path, yaml });
      return undefined;
    }
    if (!source.fromLibrary) this.messages.push(...unusualFigures(yaml, source.path));
    return { id: fileId(source.path), source, value, yaml };
  }
}
