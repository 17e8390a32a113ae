import { expect, test } from "vitest";
import { run } from "../support/run-process.ts";

test("a change of a figure that is read before any test runs is tried, and noticed, as one within a test is", async () => {
  const { code, stdout, stderr } = await run(
    process.execPath,
    ["tools/mutate/mutate.mjs", "src/core/flow/profile.ts", ...["--tests", "tests/core/flow", "--only"]],
    process.cwd(),
  );
  expect(code, stderr).toBe(0);
  // The exponent of the pace over the depth, which stands beside the functions.
  const results = stdout.split("\n").filter((line) => /profile\.ts:\d+ +constant +7 /.test(line));
  expect(results, stdout).toEqual([expect.stringMatching(/^killed /)]);
});
