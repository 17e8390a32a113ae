import { tmpdir } from "node:os";
import { defineConfig } from "vitest/config";
import { BaseSequencer } from "vitest/node";

/** Runs files in the order in which they are given. */
class AsGiven extends BaseSequencer {
  override sort = async <T>(files: T): Promise<T> => files;
}

// The files of one run share what they read, as in the quick set; each run is a process of its own. A test that takes
// long is no killed mutant: the time is the run's, and whoever asks for the run ends it.
export default defineConfig({
  test: {
    env: { XDG_STATE_HOME: tmpdir() },
    include: ["tests/**/*.test.{ts,tsx}"],
    exclude: ["tests/**/*.slow.test.{ts,tsx}"],
    setupFiles: ["tools/mutate/setup.ts"],
    runner: "tools/mutate/runner.ts",
    sequence: { sequencer: AsGiven },
    testTimeout: 3_600_000,
    hookTimeout: 3_600_000,
    isolate: false,
    pool: "forks",
    fileParallelism: false,
  },
});
