import { createHash } from "node:crypto";
import { resolve } from "node:path";
import { deserialize, serialize } from "node:v8";
import type { Store } from "../model/kept.ts";
import { storeOnDisk } from "./kept-on-disk.ts";

/** What is longer lies by itself in the store below. */
const smallBytes = 24_000;
/** Where more is on the shelf, what was asked for longest ago goes. */
const bytesMost = 48_000_000;

/** A store whose small results lie together in one entry of the store below, to be read and written at once. */
interface Shelf extends Store {
  /** Nothing lay on it. */
  readonly isBare: boolean;
  /** Puts what is on the shelf into the store below. */
  end(): void;
}

/** What is kept of the guide in these folders. */
export const keptOf = (folders: readonly string[], store = storeOnDisk()): Shelf =>
  shelfIn(store, JSON.stringify(folders.map((folder) => resolve(folder))));

/** @param from names the shelf: two guides have two, or each would sweep the other's away */
export function shelfIn(store: Store, from: string): Shelf {
  const before = store.find("shelf", from)?.value as ReadonlyMap<string, Uint8Array> | undefined;
  const shelf = new Map(before);
  let isNew = false;
  return {
    isBare: before === undefined,
    find(kind, of) {
      const key = keyOf(kind, of);
      const bytes = shelf.get(key);
      if (!bytes) return store.find(kind, of);
      // What is asked for last stands last.
      shelf.delete(key);
      shelf.set(key, bytes);
      return { value: deserialize(bytes) };
    },
    put(kind, of, value) {
      const bytes = serialize(value);
      if (bytes.length > smallBytes) return store.put(kind, of, value);
      shelf.set(keyOf(kind, of), bytes);
      isNew = true;
    },
    end() {
      if (isNew) store.put("shelf", from, swept(shelf));
    },
  };
}

const keyOf = (kind: string, of: string) => createHash("sha256").update(`${kind}\0${of}`).digest("base64");

/** As much as there is room for, what was asked for last first. */
function swept(shelf: ReadonlyMap<string, Uint8Array>): ReadonlyMap<string, Uint8Array> {
  let room = bytesMost;
  const kept = [...shelf].reverse().filter(([, { length }]) => {
    room -= length;
    return room >= 0;
  });
  return new Map(kept.reverse());
}
