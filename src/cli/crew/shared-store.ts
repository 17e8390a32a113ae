import { deserialize, serialize } from "node:v8";
import { type BroadcastChannel, type MessagePort, receiveMessageOnPort } from "node:worker_threads";
import { noStore, type Store } from "../../model/kept.ts";
import { isSmall } from "../kept-on-shelf.ts";

interface Told {
  readonly kind: string;
  readonly from: string;
  readonly bytes: Uint8Array;
}

interface SharedStore extends Store {
  /** How many results that others told were asked for so far. */
  readonly taken: number;
  /** Puts into the store below what was told and nobody asked for: a later build may. */
  end(): void;
}

/** So much is held in memory of what is made on the way, by oneself or by others: of what is small, what a hundred rigs take. */
const usualMostBytes = (disk: Store) => (disk === noStore ? 200_000_000 : 64_000_000);

interface Room {
  /** Where others find what is large, so that it need not be told; nowhere where nothing is said. */
  readonly disk?: Store;
  /** Of what was told that are held in memory. */
  readonly mostBytes?: number;
}

/**
 * A store that tells others at work on the same what is put there, and has what they tell.
 *
 * @param below has what was put here and taken over, and what was told beyond `mostBytes` before somebody asked for it
 */
export function sharedStore(
  below: Store,
  channel: BroadcastChannel,
  { disk = noStore, mostBytes = usualMostBytes(disk) }: Room = {},
): SharedStore {
  let taken = 0;
  const told = new Latest(mostBytes, ({ kind, from, bytes }) => below.put(kind, from, undefined, bytes));
  // What comes while the thread has a moment is handed to whoever listens, and lost where nobody does.
  channel.onmessage = ({ data }: { readonly data: Told }) => told.add(data);
  // The engine takes a channel, as its documentation says; its types do not yet.
  const hear = () => receiveMessageOnPort(channel as unknown as MessagePort);
  const listen = () => {
    for (let heard = hear(); heard; heard = hear()) told.add(heard.message as Told);
  };
  return {
    get taken() {
      return taken;
    },
    find(kind, from) {
      const found = below.find(kind, from);
      if (found) return found;
      listen();
      const bytes = told.take(kind, from);
      if (!bytes) return undefined;
      taken++;
      const value: unknown = deserialize(bytes);
      below.put(kind, from, value, bytes);
      return { value };
    },
    put(kind, from, value) {
      const bytes = serialize(value);
      below.put(kind, from, value, bytes);
      if (liesOn(disk, bytes)) return;
      const message: Told = { kind, from, bytes };
      channel.postMessage(message);
    },
    end() {
      listen();
      told.letGo();
    },
  };
}

/** Keeps in memory what was put there last, no more than so many bytes of it, but what is large on the disk, if there is one. */
export function storeInMemory({ disk = noStore, mostBytes = usualMostBytes(disk) }: Room = {}): Store {
  const kept = new Latest(mostBytes, () => {});
  return {
    find(kind, from) {
      const bytes = kept.find(kind, from);
      return bytes ? { value: deserialize(bytes) } : disk.find(kind, from);
    },
    put(kind, from, value, bytes = serialize(value)) {
      if (liesOn(disk, bytes)) disk.put(kind, from, value, bytes);
      else kept.add({ kind, from, bytes });
    },
  };
}

const liesOn = (disk: Store, bytes: Uint8Array) => disk !== noStore && !isSmall(bytes);

/** Results that came last, of which no more than some bytes are held. */
class Latest {
  readonly #held = new Map<string, Told>();
  readonly #mostBytes: number;
  readonly #tooMuch: (oldest: Told) => void;
  #bytes = 0;

  /** @param tooMuch is given what is no longer held */
  constructor(mostBytes: number, tooMuch: (oldest: Told) => void) {
    this.#mostBytes = mostBytes;
    this.#tooMuch = tooMuch;
  }

  add(one: Told): void {
    this.take(one.kind, one.from);
    this.#held.set(keyOf(one.kind, one.from), one);
    this.#bytes += one.bytes.length;
    this.letGo(this.#mostBytes);
  }

  /** Holds no more than so many bytes from now on. */
  letGo(mostBytes = 0): void {
    for (const oldest of this.#held.values()) {
      if (this.#bytes <= mostBytes) return;
      this.take(oldest.kind, oldest.from);
      this.#tooMuch(oldest);
    }
  }

  find(kind: string, from: string): Uint8Array | undefined {
    return this.#held.get(keyOf(kind, from))?.bytes;
  }

  take(kind: string, from: string): Uint8Array | undefined {
    const key = keyOf(kind, from);
    const bytes = this.#held.get(key)?.bytes;
    this.#held.delete(key);
    this.#bytes -= bytes?.length ?? 0;
    return bytes;
  }
}

const keyOf = (kind: string, from: string) => `${kind}\0${from}`;
