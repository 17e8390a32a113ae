// Runs before each test file: where one mutant is on from the start, ends the run at its first failure.
import { EventEmitter } from "node:events";
import fc from "fast-check";
import { afterAll, afterEach, beforeEach, inject } from "vitest";
import "./runner.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** The mutant that is on from the start; 0 for none. */
    mutant: number;
    /** Mutants to try on each test that reaches them. */
    candidates: readonly number[];
    /** File to write to what is found of them. */
    journal: string;
  }
}

// A counterexample is enough; nobody reads the smallest.
fc.configureGlobal({ endOnFailure: true });
// A test that is run a hundred times listens a hundred times for its end.
EventEmitter.defaultMaxListeners = 0;

/** Shared by the test files of a run, which run in one process. */
const world = globalThis as { failed?: boolean };
const mutant = inject("mutant");
globalThis.mutants.on = mutant;

if (mutant !== 0) {
  if (world.failed) throw new Error("an earlier file failed");
  // Until the file comes to its end: one whose tests cannot even be read never does.
  world.failed = true;
  let failed = false;
  beforeEach(({ skip }) => skip(failed));
  afterEach(({ task }) => {
    failed ||= task.result?.state === "fail";
  });
  afterAll(() => {
    world.failed = failed;
  });
}
