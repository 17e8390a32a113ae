/** The outside world as reading content needs it; tests put a made-up one in its place. */
export interface World {
  /** Paths of all files below a folder, relative to it, with `/`, in code-unit order. Throws where there is none. */
  list(folder: string): Promise<readonly string[]>;
  readText(path: string): Promise<string>;
}

/** A file of the content, with the path to name it by in messages. */
export interface Source {
  /** Path below the content folder. */
  readonly path: string;
  /** Path as the author knows it. */
  readonly file: string;
  readonly text: string;
}

/** All text files below the content folders; a file in a later folder stands in for one of the same path before it. */
export async function readSources(
  world: World,
  folders: readonly string[],
): Promise<ReadonlyMap<string, Source>> {
  const sources = new Map<string, Source>();
  for (const folder of folders) {
    for (const path of await world.list(folder)) {
      if (!/\.(md|yaml)$/.test(path)) continue;
      const file = `${folder}/${path}`;
      // Some editors begin a file with a byte order mark; it is no part of the text.
      const text = (await world.readText(file)).replace(/^\uFEFF/, "");
      sources.set(path, { path, file, text });
    }
  }
  return sources;
}
