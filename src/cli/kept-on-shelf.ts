import { resolve } from "node:path";
import { deserialize, serialize } from "node:v8";
import type { OpenStore, Store } from "../model/kept.ts";
import { Boards, resultKey, type Shelved } from "./boards.ts";
import { storeOnDisk } from "./kept-on-disk.ts";
import { withReady } from "./ready-library.ts";

/** What is longer lies by itself in the store below. */
const smallBytes = 24_000;

export const isSmall = ({ length }: Uint8Array) => length <= smallBytes;

/** A store whose small results lie together in few entries of the store below, to be read and written at once. */
interface Shelf extends Store {
  /** Nothing lay on it. */
  readonly isBare: boolean;
  /** Puts what is new into the store below. */
  end(): void;
}

/** What is kept of the guide in these folders. */
export const keptOf = (folders: readonly string[], store = storeOnDisk()): Shelf =>
  shelfIn(withReady(store), JSON.stringify(folders.map((folder) => resolve(folder))));

/** @param from names the shelf: two guides have two, or each would sweep the other's away */
export function shelfIn(store: OpenStore, from: string): Shelf {
  const before = store.find("shelf", from)?.value as Shelved | undefined;
  const boards = new Boards(store, before);
  const asked = new Set<string>();
  let isNew = false;
  return {
    isBare: before === undefined,
    find(kind, of) {
      const key = resultKey(kind, of);
      const bytes = boards.find(key);
      if (!bytes) return store.find(kind, of);
      asked.add(key);
      return { value: deserialize(bytes) };
    },
    put(kind, of, value, bytes = serialize(value)) {
      if (!isSmall(bytes)) return store.put(kind, of, value, bytes);
      const key = resultKey(kind, of);
      asked.add(key);
      boards.add(key, bytes);
      isNew = true;
    },
    end() {
      if (isNew) store.put("shelf", from, boards.tidied(asked));
      boards.close();
    },
  };
}
