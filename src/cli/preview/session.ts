import { solveChecked } from "../../build/build.ts";
import { checkSources } from "../../build/check-sources.ts";
import { oneFile } from "../../build/one-file.ts";
import type { BuildSettings, Solved } from "../../build/stages.ts";
import { withKept } from "../../content/kept-sources.ts";
import { readSources, type Source, type World } from "../../content/world.ts";
import { inMemory, type Keep } from "../../model/kept.ts";
import type { Message } from "../../model/message.ts";

type Sources = ReadonlyMap<string, Source>;

/** Results that are kept are as many as a day's changes; the oldest go first. */
const keptMost = 400;

/** A guide that is looked at while it is written: read again after each change, with what is not touched kept. */
export class PreviewSession {
  /** Counts the times that there was something new to see. */
  version = 0;
  /** What keeps the newest content from being shown; the last that was right still is. */
  errors: readonly Message[] = [];
  #sources: Sources = new Map();
  #solved: Solved | undefined;
  readonly #keep: Keep;
  #files = new Map<string, ReturnType<typeof oneFile>>();

  constructor(
    private readonly world: World,
    private readonly folders: readonly string[],
    private readonly shipped: string | undefined,
    private readonly keep: Keep,
    private readonly settingsOf: (solved: Solved) => BuildSettings,
  ) {
    this.#keep = inMemory(keptMost, keep);
  }

  get solved(): Solved | undefined {
    return this.#solved;
  }

  /** Reads what there is now; whether that is something new. */
  async refresh(): Promise<boolean> {
    const sources = withKept(await readSources(this.world, this.folders, this.shipped), this.#sources);
    if (isSame(sources, this.#sources)) return false;
    this.#sources = sources;
    const { value, messages } = await solveChecked(checkSources(sources, this.keep), this.#keep, "errors");
    this.errors = messages.filter(({ severity }) => severity === "error");
    this.version += 1;
    if (value) {
      this.#solved = value;
      this.#files = new Map();
    }
    return true;
  }

  /** A file of the site as it would be built now; nothing where there is none, or nothing right to show yet. */
  async file(path: string) {
    const solved = this.#solved;
    if (!solved) return undefined;
    const known = this.#files.get(path);
    if (known) return known;
    const made = oneFile(solved, path, { ...this.settingsOf(solved), keep: this.#keep });
    this.#files.set(path, made);
    return made;
  }
}

function isSame(sources: Sources, before: Sources): boolean {
  return sources.size === before.size && [...sources].every(([path, source]) => before.get(path) === source);
}
