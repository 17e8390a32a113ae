import { defineConfig } from "vitest/config";

const slow = "tests/**/*.slow.test.{ts,tsx}";

export default defineConfig({
  test: {
    projects: [
      {
        extends: true,
        test: { name: "quick", include: ["tests/**/*.test.{ts,tsx}"], exclude: [slow], testTimeout: 30_000 },
      },
      { extends: true, test: { name: "slow", include: [slow], testTimeout: 600_000, hookTimeout: 600_000 } },
    ],
  },
});
