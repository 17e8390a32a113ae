/**
 * A place for what pure functions made, to be found again by what it was made from.
 *
 * `kind` names the function, `from` is all that it depends on, as text; `bytes` is the value as the engine serializes it, of whoever
 * has that already: then nothing else is looked at.
 */
export interface Store {
  find(kind: string, from: string): { readonly value: unknown } | undefined;
  put(kind: string, from: string, value: unknown, bytes?: Uint8Array): void;
}

/** A store of which an entry's bytes can be read, for whoever wants few of them. */
export interface OpenStore extends Store {
  open(kind: string, from: string): Pieces | undefined;
}

/** Bytes that are read piece by piece, and held against nothing. */
export interface Pieces {
  /** Undefined where they cannot be read. */
  piece(begin: number, length: number): Uint8Array | undefined;
  close(): void;
}

/** Nothing is kept there. */
export const noStore: OpenStore = { find: () => undefined, put: () => {}, open: () => undefined };

/**
 * Keeps what pure functions made, by what it was made from: gives what was kept, or makes it now.
 *
 * @param kind names the function
 * @param from all that it depends on, as text
 */
export type Keep = <T>(kind: string, from: string, make: () => T) => T;

/** Keeps results in a store. */
export function keeping(store: Store): Keep {
  return <T>(kind: string, from: string, make: () => T): T => {
    const found = store.find(kind, from);
    if (found) return found.value as T;
    const made = make();
    store.put(kind, from, made);
    return made;
  };
}

/** Keeps nothing. */
export const makeAnew: Keep = (_kind, _from, make) => make();

/**
 * Keeps results in memory, over those that are kept elsewhere.
 *
 * @param most so many of them; what was asked for longest ago goes first
 */
export function inMemory(most: number, below: Keep = makeAnew): Keep {
  const kept = new Map<string, unknown>();
  return <T>(kind: string, from: string, make: () => T): T => {
    const key = `${kind} ${from}`;
    const value = kept.has(key) ? (kept.get(key) as T) : below(kind, from, make);
    kept.delete(key);
    kept.set(key, value);
    for (const oldest of kept.keys()) {
      if (kept.size <= most) break;
      kept.delete(oldest);
    }
    return value;
  };
}

/** Keeps results in memory that this round or the one before asked for, over those that are kept elsewhere. */
export function inRounds(below: Keep): { readonly keep: Keep; nextRound(): void } {
  let before = new Map<string, unknown>();
  let now = new Map<string, unknown>();
  const keep: Keep = <T>(kind: string, from: string, make: () => T): T => {
    const key = `${kind} ${from}`;
    const round = now.has(key) ? now : before;
    const value = round.has(key) ? (round.get(key) as T) : below(kind, from, make);
    now.set(key, value);
    return value;
  };
  const nextRound = () => {
    before = now;
    now = new Map();
  };
  return { keep, nextRound };
}

/** Makes something once somebody asks for it, and only once. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
