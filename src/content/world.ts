import { bytesLimit, limits } from "../model/limits.ts";
import { isFontFile } from "../model/own-font.ts";
import { imageKindOf } from "../model/own-image.ts";
import { stageDone } from "../model/stage-times.ts";

/** A file as a listing shows it. */
export interface ListedFile {
  /** Path below the folder that was listed, with `/`. */
  readonly path: string;
  /** Size, known before the file is read. */
  readonly bytes: number;
}

/** The outside world as reading content needs it; tests put a made-up one in its place. */
export interface World {
  /** All files below a folder, by path in code-unit order. Throws where there is no such folder. */
  list(folder: string): Promise<readonly ListedFile[]>;
  /** Undefined where the file has vanished since it was listed. */
  readText(path: string): Promise<string | undefined>;
  /** The same for what is no text. */
  readBytes(path: string): Promise<Uint8Array | undefined>;
}

/** A file of the content, with the path to name it by in messages. */
export interface Source {
  /** Path below the content folder. */
  readonly path: string;
  /** Path as the author knows it. */
  readonly file: string;
  /** Empty where the file is no text of a guide, or where it, or all read before it, are longer than `limits` have it. */
  readonly text: string;
  readonly bytes: number;
  /** What is in a picture. */
  readonly content?: Uint8Array;
  /** It comes with the tool; the guide's own folders may say otherwise. */
  readonly fromLibrary?: true;
  /** The file that it stands in for, of a folder before its own. */
  readonly under?: Source;
}

type Sources = ReadonlyMap<string, Source>;

/** The content would not keep still for as long as it takes to read it. */
export class ChangingContentError extends Error {
  constructor(readonly files: readonly string[]) {
    super(`changed each time it was read: ${files.join(", ")}`);
  }
}

/** So often is content read that changes meanwhile, with so much time between [ms]. */
const passesMax = 20;
const pauseMs = 100;

/**
 * All files below the content folders, with the text of those that may be a guide's; a file in a later folder stands in
 * for one of the same path before it.
 *
 * They are read until two readings on end agree. At the moment between these two all files were as they are given, so
 * no guide mixes what stood there before and after somebody changed several files.
 *
 * @param library folder of the guide that comes with the tool; it stands before all others, in the guide's language where
 *   there is one beside it
 * @throws ChangingContentError
 */
export async function readSources(
  world: World,
  folders: readonly string[],
  library?: string,
): Promise<Sources> {
  const readAll = async () => readOnce(world, await layersOf(world, folders, library));
  let sources = await readAll();
  let changed: readonly string[] = [];
  for (let pass = 1; pass < passesMax; pass++) {
    const again = await readAll();
    changed = differing(sources, again);
    if (changed.length === 0) {
      stageDone("read", sources.size, "files");
      return new Map(
        [...sources].map(([path, source]) => [path, source.fromLibrary ? known(source) : source]),
      );
    }
    sources = again;
    await new Promise((turn) => setTimeout(turn, pauseMs));
  }
  throw new ChangingContentError(changed);
}

/** A content folder, and what is kept of it with each of its files. */
interface Layer {
  readonly folder: string;
  /** What is read of it, by the beginning of its path. */
  readonly only?: string;
  readonly fromLibrary?: true;
}

/** Languages besides English that the library is shipped in, each in a folder beside it that is called by it. */
const libraryLanguages: readonly string[] = ["de"];

/** Folder of the library that comes with the tool, in a language (a BCP 47 tag) where it is shipped in it. */
export function libraryIn(library: string, language: string): string {
  const [tag = language] = language.split("-");
  return libraryLanguages.includes(tag) ? `${library}-${tag}` : library;
}

/** The library in the language of the guide, where it is shipped in it, and the guide's own folders over it. */
async function layersOf(
  world: World,
  folders: readonly string[],
  library: string | undefined,
): Promise<readonly Layer[]> {
  const own = folders.map((folder) => ({ folder }));
  if (library === undefined) return own;
  const said = await saidByGuides(world, folders);
  const language = said.map((guide) => guide.language).find((tag) => typeof tag === "string") ?? "en";
  const inLanguage = libraryIn(library, language);
  // Fixed words of all languages stand in one place, and are the tool's, whatever else a guide refuses.
  const words = { folder: library, only: "words/" };
  const refused = said[0]?.library === "none";
  const lent = refused ? [words] : [...(inLanguage === library ? [] : [words]), { folder: inLanguage }];
  return [...lent.map((layer) => ({ ...layer, fromLibrary: true as const })), ...own];
}

/** What the `guide.yaml` of each folder says that has one, before anything is held against it; the uppermost first. */
async function saidByGuides(
  world: World,
  folders: readonly string[],
): Promise<readonly { readonly language?: unknown; readonly library?: unknown }[]> {
  // What a parser of YAML loads takes longer than reading all files; without a library nothing is asked of it here.
  const { readYaml } = await import("./yaml-source.ts");
  const said = [];
  for (const folder of [...folders].reverse()) {
    const text = await world.readText(`${folder}/guide.yaml`);
    if (text !== undefined) said.push(readYaml(text, folder).data ?? {});
  }
  return said;
}

async function readOnce(world: World, layers: readonly Layer[]): Promise<Sources> {
  const sources = new Map<string, Source>();
  let allBytes = 0;
  let pictureBytes = 0;
  for (const { folder, only = "", ...layer } of layers) {
    for (const { path, bytes } of await world.list(folder)) {
      if (!path.startsWith(only)) continue;
      const file = `${folder}/${path}`;
      if (isNoText(path)) {
        const mayRead = bytes <= limits.imageBytes.most && pictureBytes + bytes <= limits.picturesBytes.most;
        const content = mayRead ? await world.readBytes(file) : undefined;
        if (mayRead && !content) continue;
        pictureBytes += content?.length ?? 0;
        sources.set(path, { path, file, text: "", bytes, ...(content && { content }), ...layer });
        continue;
      }
      if (!/\.(md|yaml)$/.test(path)) {
        sources.set(path, { path, file, text: "", bytes: 0, ...layer });
        continue;
      }
      const mayRead =
        bytes <= limits[bytesLimit(path)].most &&
        allBytes + bytes <= limits.contentBytes.most &&
        sources.size < limits.files.most;
      const text = mayRead ? await world.readText(file) : "";
      if (text === undefined) continue;
      allBytes += bytes;
      // Some editors begin a file with a byte order mark; it is no part of the text.
      const under = sources.get(path);
      sources.set(path, {
        path,
        file,
        text: text.replace(/^\uFEFF/, ""),
        bytes,
        ...layer,
        ...(under && { under }),
      });
    }
  }
  return sources;
}

/** Files of the library as they were read last in this process, which may read guide after guide that borrow from it. */
const lentBefore = new Map<string, Source>();

/** A file of the library: the same as before where nothing of it has changed, as what was read of that one is known. */
function known(source: Source): Source {
  const before = lentBefore.get(source.file);
  const isSame =
    before?.path === source.path &&
    before.text === source.text &&
    before.bytes === source.bytes &&
    before.under === source.under &&
    sameBytes(before.content, source.content);
  if (isSame) return before;
  lentBefore.set(source.file, source);
  return source;
}

const isNoText = (path: string) =>
  isFontFile(path) || (/^images\/[^/]+$/.test(path) && imageKindOf(path) !== undefined);

const sameBytes = (one?: Uint8Array, other?: Uint8Array) =>
  one === other || (one !== undefined && other !== undefined && Buffer.compare(one, other) === 0);

/** The files that are in one reading only, or not the same in both. */
function differing(before: Sources, after: Sources): string[] {
  const all = new Map([...before, ...after]);
  return [...all]
    .filter(([path]) => {
      const [one, other] = [before.get(path), after.get(path)];
      return (
        one?.file !== other?.file || one?.text !== other?.text || !sameBytes(one?.content, other?.content)
      );
    })
    .map(([, { file }]) => file);
}
