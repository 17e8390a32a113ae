import { checkSources } from "../../build/check-sources.ts";
import { oneFile } from "../../build/one-file.ts";
import { solveLibrary } from "../../build/solve-library.ts";
import type { BuildSettings, Solved } from "../../build/stages.ts";
import type { Source } from "../../content/world.ts";
import { readSources, type World } from "../../content/world.ts";
import type { Keep } from "../../model/kept.ts";
import { hasErrors, type Message } from "../../model/message.ts";

type Sources = ReadonlyMap<string, Source>;

/** Results that are kept are as many as a day's changes; the oldest go first. */
const keptMost = 400;

/** Keeps results in memory, over those that are kept elsewhere. */
function inMemory(below: Keep): Keep {
  const kept = new Map<string, unknown>();
  return <T>(kind: string, from: string, make: () => T): T => {
    const key = `${kind} ${from}`;
    const value = kept.has(key) ? (kept.get(key) as T) : below(kind, from, make);
    kept.delete(key);
    kept.set(key, value);
    for (const oldest of kept.keys()) {
      if (kept.size <= keptMost) break;
      kept.delete(oldest);
    }
    return value;
  };
}

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
    keep: Keep,
    private readonly settingsOf: (solved: Solved) => BuildSettings,
  ) {
    this.#keep = inMemory(keep);
  }

  get solved(): Solved | undefined {
    return this.#solved;
  }

  /** Reads what there is now; whether that is something new. */
  async refresh(): Promise<boolean> {
    const sources = withKept(await readSources(this.world, this.folders, this.shipped), this.#sources);
    if (isSame(sources, this.#sources)) return false;
    this.#sources = sources;
    const read = checkSources(this.#sources);
    const made = read.value && (await solveLibrary(read.value, this.#keep, "errors"));
    const messages = [...read.messages, ...(made?.messages ?? [])];
    this.errors = messages.filter(({ severity }) => severity === "error");
    this.version += 1;
    if (made?.value && !hasErrors(messages)) {
      this.#solved = made.value;
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
    const made = oneFile(solved, path, this.settingsOf(solved));
    this.#files.set(path, made);
    return made;
  }
}

function isSame(sources: Sources, before: Sources): boolean {
  return sources.size === before.size && [...sources].every(([path, source]) => before.get(path) === source);
}

/** The sources, with those in place of their likes that have not changed: what was made of them is still known. */
function withKept(sources: Sources, before: Sources): Sources {
  return new Map([...sources].map(([path, source]) => [path, kept(source, before.get(path))]));
}

function kept(source: Source, before: Source | undefined): Source {
  const under = source.under && kept(source.under, before?.under);
  const isKept =
    before?.file === source.file &&
    before.text === source.text &&
    before.under === under &&
    before.bytes === source.bytes &&
    Buffer.compare(before.content ?? new Uint8Array(), source.content ?? new Uint8Array()) === 0;
  return isKept ? before : { ...source, ...(under && { under }) };
}
