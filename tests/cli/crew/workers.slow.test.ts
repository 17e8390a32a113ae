import { join } from "node:path";
import { expect, test } from "vitest";
import { temporaryFolder } from "../../support/cli.ts";
import { compiledTool } from "../../support/compiled-tool.ts";
import { hashesBelow } from "../../support/files-below.ts";
import { run } from "../../support/run-process.ts";

test("the shipped guide is the same to the byte whether one, two or eight are at work on it, cold and cached, who do share the work", async () => {
  const folder = temporaryFolder();
  const command = await compiledTool(join(folder, "tool"));
  let builds = 0;
  const built = async (workers: string, cache: string) => {
    const out = join(folder, `out-${++builds}`);
    const { code, stderr } = await run(
      process.execPath,
      [command, "build", "--out", out, "--workers", workers, "--verbose"],
      join(folder, "tool"),
      { env: { ...process.env, DOTDOWN_CACHE: cache } },
    );
    expect(code, stderr).toBe(0);
    return { hashes: hashesBelow(out), taken: Number(/workers: (\d+) results taken over/.exec(stderr)?.[1]) };
  };
  const alone = await built("1", "off");
  expect(alone.taken).toBeNaN();
  for (const [workers, cache] of [
    ["2", "off"],
    ["8", "off"],
    ["2", join(folder, "kept")],
  ] as const) {
    const shared = await built(workers, cache);
    expect(shared.hashes, `${workers} workers`).toEqual(alone.hashes);
    expect(shared.taken, `${workers} workers`).toBeGreaterThan(50);
  }
  // Nobody is started where most is kept; what was kept is the same for all.
  for (const workers of ["1", "2", "8"]) {
    const cached = await built(workers, join(folder, "kept"));
    expect(cached.hashes, `${workers} workers, cached`).toEqual(alone.hashes);
    expect(cached.taken).toBeNaN();
  }
}, 1_200_000);
