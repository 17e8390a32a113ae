import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { defineConfig } from "vitest/config";

// Packages as users have them: the Markdown parser has another build for developers, which checks itself at each sign.
// The test runner has said "test" by now.
process.env.NODE_ENV = "production";

const slow = "tests/**/*.slow.test.{ts,tsx}";
/** What measures by the clock, and has the machine to itself. */
const measuring = "tests/site/lighthouse.slow.test.ts";
const whatHangsMs = { testTimeout: 600_000, hookTimeout: 600_000 };

export default defineConfig({
  test: {
    globalSetup: "tests/support/compile-once.mjs",
    // What is asked for again and again comes late on a busy machine; the runner's own limit is a second.
    expect: { poll: { timeout: 120_000 } },
    // Tests make much that soon goes; with more room for it, a tenth less of their time goes into clearing up.
    execArgv: ["--max-semi-space-size=64"],
    // Builds note where they work; not in the home of whoever tests.
    // Tests run beside each other as it is: a build that they start takes no more than its own processor.
    env: { XDG_STATE_HOME: join(tmpdir(), "dotdown-tests"), DOTDOWN_WORKERS: "1" },
    projects: [
      {
        extends: true,
        // Tests keep no state in modules, so files share them: reading them anew for each takes as long as the tests.
        test: {
          name: "quick",
          include: ["tests/**/*.test.{ts,tsx}"],
          exclude: [slow],
          // Only what hangs takes so long: a machine with other work takes ten times what it takes alone.
          testTimeout: 180_000,
          hookTimeout: 180_000,
          isolate: false,
          // Node's own imports, of sources without their types: the runner's stand-ins for them cost a tenth of the time.
          // One thread beside the tests' own compiles and clears up: four of them wait for each other at a sixth of the time.
          execArgv: [
            "--import",
            join(import.meta.dirname, "tests/support/typescript/register.mjs"),
            "--v8-pool-size=1",
          ],
          experimental: { viteModuleRunner: false, nodeLoader: false },
        },
      },
      {
        extends: true,
        // Half of their time they wait for builds in processes of their own.
        test: {
          name: "slow",
          include: [slow],
          exclude: [measuring],
          ...whatHangsMs,
          maxWorkers: availableParallelism(),
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: { name: "measuring", include: [measuring], ...whatHangsMs, sequence: { groupOrder: 2 } },
      },
    ],
  },
});
