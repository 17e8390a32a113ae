import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { expect, test } from "vitest";
import { copySources } from "../support/clean-copy.ts";
import { temporaryFolder, writeContent } from "../support/cli.ts";
import { run, start } from "../support/run-process.ts";
import { contentWith, edited } from "../support/smallest-content.ts";

/** Shares of a build's time, from a linear congruential generator (Park and Miller 1988: 16807, 2³¹ − 1). */
function* shares(seed: number): Generator<number, never> {
  for (let state = seed; ; ) {
    state = (state * 16_807) % 2_147_483_647;
    yield state / 2_147_483_647;
  }
}

/** Every file of an output with its hash, as the manifest has it and as it is on the disk. */
function hashes(out: string): { told: Record<string, string>; found: Record<string, string> } {
  const told = JSON.parse(readFileSync(join(out, "manifest.json"), "utf8"));
  const files = readdirSync(out, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name !== "manifest.json")
    .map((entry) => join(entry.parentPath, entry.name));
  const found = files.map((file) => [
    file.slice(out.length + 1).replaceAll("\\", "/"),
    createHash("sha256").update(readFileSync(file)).digest("hex"),
  ]);
  return { told, found: Object.fromEntries(found) };
}

test("a killed build leaves the output whole, and the next one clears up", async () => {
  const folder = temporaryFolder();
  const tool = copySources(join(folder, "tool"));
  const compiled = await run(process.execPath, ["tools/compile.mjs"], tool);
  expect(compiled, compiled.stderr).toMatchObject({ code: 0 });
  const out = join(folder, "out");
  const next = join(folder, ".out-next");
  const before = join(folder, ".out-before");
  const command = join(tool, "dist/dotdown.js");
  const args = [command, "build", "--content", "content", "--out", "out"];
  const build = () => start(process.execPath, args, folder);
  const titled = (title: string) =>
    writeContent(join(folder, "content"), contentWith(edited("guide.yaml", "Test guide", title)));

  /** What a build left must be an output as a whole: the old one or the new one. */
  const expectWhole = () => {
    // A kill between the two renames leaves the old output under its other name, from where the next build takes it.
    const { told, found } = hashes(existsSync(out) ? out : before);
    expect(Object.keys(told).length).toBeGreaterThan(10);
    expect(found).toEqual(told);
  };

  titled("First edition");
  const startedAt = performance.now();
  const first = await build().ended;
  const buildMs = performance.now() - startedAt;
  expect(first, first.stderr).toMatchObject({ code: 0 });
  expectWhole();

  const share = shares(20_261_120);
  const moments: readonly ((running: () => boolean) => Promise<void>)[] = [
    // Anywhere from its start to a little after its end.
    ...Array.from({ length: 6 }, () => () => wait(share.next().value * buildMs * 1.1)),
    // As the first file, and as the last one, stands beside the old output.
    ...[next, join(next, "manifest.json")].map((path) => async (running: () => boolean) => {
      while (running() && !existsSync(path)) await wait(1);
    }),
  ];
  let killed = 0;
  for (const [index, moment] of moments.entries()) {
    titled(`Edition ${index}`);
    const { child, ended } = build();
    await moment(() => child.exitCode === null);
    child.kill("SIGKILL");
    if ((await ended).code === null) killed++;
    expectWhole();
  }
  expect(killed).toBeGreaterThan(3);

  titled("Last edition");
  const last = await build().ended;
  expect(last, last.stderr).toMatchObject({ code: 0 });
  expectWhole();
  expect(readFileSync(join(out, "site/index.html"), "utf8")).toContain("Last edition");
  expect(readdirSync(folder).sort()).toEqual(["content", "out", "tool"]);
});
