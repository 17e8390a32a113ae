import { createHash } from "node:crypto";
import { deserialize, serialize } from "node:v8";
import { type BroadcastChannel, type MessagePort, receiveMessageOnPort } from "node:worker_threads";
import type { Store } from "../../model/kept.ts";

interface Told {
  readonly key: string;
  readonly bytes: Uint8Array;
}

interface SharedStore extends Store {
  /** How many results of others were asked for so far. */
  readonly taken: number;
}

/** A store that tells others at work on the same what is put there, and has what they tell. */
export function sharedStore(below: Store, channel: BroadcastChannel): SharedStore {
  let taken = 0;
  const told = new Map<string, Uint8Array>();
  // The engine takes a channel, as its documentation says; its types do not yet.
  const hear = () => receiveMessageOnPort(channel as unknown as MessagePort);
  const note = ({ key, bytes }: Told) => told.set(key, bytes);
  // What comes while the thread has a moment is handed to whoever listens, and lost where nobody does.
  channel.onmessage = ({ data }: { readonly data: Told }) => note(data);
  const listen = () => {
    for (let heard = hear(); heard; heard = hear()) note(heard.message as Told);
  };
  return {
    get taken() {
      return taken;
    },
    find(kind, from) {
      const found = below.find(kind, from);
      if (found) return found;
      listen();
      const key = keyOf(kind, from);
      const bytes = told.get(key);
      if (!bytes) return undefined;
      told.delete(key);
      taken++;
      const value: unknown = deserialize(bytes);
      below.put(kind, from, value, bytes);
      return { value };
    },
    put(kind, from, value) {
      const bytes = serialize(value);
      below.put(kind, from, value, bytes);
      const message: Told = { key: keyOf(kind, from), bytes };
      channel.postMessage(message);
    },
  };
}

const keyOf = (kind: string, from: string) =>
  createHash("sha256").update(`${kind}\0${from}`).digest("base64");

/** Keeps all in memory. */
export function storeInMemory(): Store {
  const kept = new Map<string, unknown>();
  const keyIn = (kind: string, from: string) => `${kind}\0${from}`;
  return {
    find: (kind, from) => (kept.has(keyIn(kind, from)) ? { value: kept.get(keyIn(kind, from)) } : undefined),
    put: (kind, from, value) => kept.set(keyIn(kind, from), value),
  };
}
