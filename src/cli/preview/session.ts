import { solveChecked } from "../../build/build.ts";
import { checkSources } from "../../build/check-sources.ts";
import { oneFile } from "../../build/one-file.ts";
import type { BuildSettings, Solved } from "../../build/stages.ts";
import type { World } from "../../content/world.ts";
import { inMemory, type Keep } from "../../model/kept.ts";
import type { Message } from "../../model/message.ts";
import { SavedSources } from "../watch/saved-sources.ts";

/** Results that are kept are as many as a day's changes; the oldest go first. */
const keptMost = 400;

/** A guide that is looked at while it is written: read again after each change, with what is not touched kept. */
export class PreviewSession {
  /** Counts the times that there was something new to see. */
  version = 0;
  /** What keeps the newest content from being shown; the last that was right still is. */
  errors: readonly Message[] = [];
  #solved: Solved | undefined;
  readonly #keep: Keep;
  readonly #saved: SavedSources;
  #files = new Map<string, ReturnType<typeof oneFile>>();

  constructor(
    world: World,
    folders: readonly string[],
    shipped: string | undefined,
    private readonly keep: Keep,
    private readonly settingsOf: (solved: Solved) => BuildSettings,
  ) {
    this.#keep = inMemory(keptMost, keep);
    this.#saved = new SavedSources(world, folders, shipped);
  }

  get solved(): Solved | undefined {
    return this.#solved;
  }

  /** Reads what there is now; whether that is something new. */
  async refresh(): Promise<boolean> {
    const saved = await this.#saved.read();
    if (!saved) return false;
    const read = checkSources(saved.sources, this.keep);
    const { value, messages } = await solveChecked(read, this.#keep, "errors");
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
