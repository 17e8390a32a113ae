import { setFlagsFromString } from "node:v8";

/** Files of a guide for which memory is a concern, and not time alone. */
const manyFiles = 200;

export const isLarge = (files: number) => files > manyFiles;

/**
 * Has the engine clear up in all threads once memory has grown by half: left to itself it lets it grow to several times what is
 * held.
 */
export function clearUpOften(): void {
  setFlagsFromString("--heap-growing-percent=50");
  // What is compiled is kept for a process that has no such setting yet.
  process.prependOnceListener("exit", () => setFlagsFromString("--heap-growing-percent=0"));
}
