// Runs before each test file: switches one mutant on, keeps which mutants the files reach, and ends the run at its first
// failure.
import { writeFileSync } from "node:fs";
import { afterAll, afterEach, beforeEach, inject } from "vitest";

declare module "vitest" {
  interface ProvidedContext {
    /** Number of the mutant that is switched on; 0 for none. */
    mutant: number;
    /** File to write the numbers of the mutants reached to; none where nobody asks. */
    reachedPath: string;
  }
}

/** Shared by the test files of a run, which run in one process. */
const world = globalThis as {
  mutant?: number;
  mutantHit?: ((id: number) => void) | undefined;
  failed?: boolean;
};
if (world.failed) throw new Error("an earlier file failed");
// Until the file comes to its end: one whose tests cannot even be read never does.
world.failed = true;

const path = inject("reachedPath");
const reached = new Set<number>();
world.mutant = inject("mutant");
world.mutantHit = path === "" ? undefined : (id) => void reached.add(id);

let failed = false;
beforeEach(({ skip }) => skip(failed));
afterEach(({ task }) => {
  failed ||= task.result?.state === "fail";
});

afterAll(() => {
  world.failed = failed;
  if (path !== "") writeFileSync(path, JSON.stringify([...reached]));
});
