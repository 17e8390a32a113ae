import { defineConfig } from "vitest/config";

// Each test file reads the sources anew, since a mutant may stand where a module is set up.
export default defineConfig({
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    exclude: ["tests/**/*.slow.test.{ts,tsx}"],
    setupFiles: ["tools/mutate/setup.ts"],
    testTimeout: 30_000,
    isolate: true,
    pool: "threads",
    fileParallelism: false,
  },
});
