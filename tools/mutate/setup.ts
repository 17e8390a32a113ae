// Runs before each test file: switches one mutant on, and keeps which mutants the file reaches.
import { appendFileSync } from "node:fs";
import { afterAll, inject } from "vitest";

declare module "vitest" {
  interface ProvidedContext {
    /** Number of the mutant that is switched on; 0 for none. */
    mutant: number;
    /** File to add the numbers of the mutants reached to; none where nobody asks. */
    reachedPath: string;
  }
}

const world = globalThis as { mutant?: number; mutantHit?: ((id: number) => void) | undefined };
const path = inject("reachedPath");
const reached = new Set<number>();
world.mutant = inject("mutant");
world.mutantHit = path === "" ? undefined : (id) => void reached.add(id);

afterAll(() => {
  if (path !== "") appendFileSync(path, JSON.stringify([...reached]));
});
