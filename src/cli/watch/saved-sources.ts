import { withKept } from "../../content/kept-sources.ts";
import { readSources, type Source, type World } from "../../content/world.ts";

/** Content that is read again and again while somebody writes it; what did not change keeps what is known of it. */
export class SavedSources {
  #sources: ReadonlyMap<string, Source> = new Map();

  constructor(
    private readonly world: World,
    private readonly folders: readonly string[],
    private readonly shipped: string | undefined,
  ) {}

  /** What there is now, and which files of it are new, other than before or gone; nothing where it is all as it was. */
  async read() {
    const before = this.#sources;
    const sources = withKept(await readSources(this.world, this.folders, this.shipped), before);
    const paths = new Set([...sources.keys(), ...before.keys()]);
    const changed = [...paths].filter((path) => sources.get(path) !== before.get(path));
    if (changed.length === 0) return undefined;
    this.#sources = sources;
    return { sources, changed };
  }
}
