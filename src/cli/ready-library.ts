import { readFileSync } from "node:fs";
import { deserialize } from "node:v8";
import { once, type Store } from "../model/kept.ts";
import { resultKey } from "./boards.ts";

/** Beside the tool's code: what is kept of the library's files from when the tool was compiled; nothing where it runs from its sources, or where the engine cannot read it. */
const ready = once((): ReadonlyMap<string, Uint8Array> => {
  try {
    return deserialize(readFileSync(new URL("library.kept", import.meta.url)));
  } catch {
    return new Map();
  }
});

/** A store that also has what was made ready of the library. */
export const withReady = <S extends Store>(below: S): S => ({
  ...below,
  find(kind: string, from: string) {
    const bytes = ready().get(resultKey(kind, from));
    return bytes ? { value: deserialize(bytes) } : below.find(kind, from);
  },
});
