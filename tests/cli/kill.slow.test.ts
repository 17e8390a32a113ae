import { readFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { expect, test } from "vitest";
import { copySources } from "../support/clean-copy.ts";
import { temporaryFolder, writeContent } from "../support/cli.ts";
import { hashesBelow } from "../support/files-below.ts";
import { run, start } from "../support/run-process.ts";
import { contentWith, edited } from "../support/smallest-content.ts";

/** Shares of a build's time, from a linear congruential generator (Park and Miller 1988: 16807, 2³¹ − 1). */
function* shares(seed: number): Generator<number, never> {
  for (let state = seed; ; ) {
    state = (state * 16_807) % 2_147_483_647;
    yield state / 2_147_483_647;
  }
}

/** Every file of an output with its hash, as the list has it and as it is on the disk. */
function hashes(out: string): { told: Record<string, string>; found: Record<string, string> } {
  const { files } = JSON.parse(readFileSync(join(out, "dotdown-files.json"), "utf8"));
  const told = Object.entries(files as Record<string, { sha256: string }>);
  const { "dotdown-files.json": _, ...found } = hashesBelow(out);
  return { told: Object.fromEntries(told.map(([path, { sha256 }]) => [path, sha256])), found };
}

test("a killed build leaves the output whole", async () => {
  const folder = temporaryFolder();
  const tool = copySources(join(folder, "tool"));
  const compiled = await run(process.execPath, ["tools/compile.mjs"], tool);
  expect(compiled, compiled.stderr).toMatchObject({ code: 0 });
  const out = join(folder, "out");
  const command = join(tool, "dist/dotdown.js");
  const args = [command, "build", "--content", "content", "--out", "out"];
  const build = () => start(process.execPath, args, folder);
  const titled = (title: string) =>
    writeContent(join(folder, "content"), contentWith(edited("guide.yaml", "Test guide", title)));

  /** What a build left must be an output as a whole: the old one or the new one. */
  const expectWhole = () => {
    const { told, found } = hashes(out);
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
  const moments: readonly (() => Promise<void>)[] = [
    // Anywhere from its start to a little after its end.
    ...Array.from({ length: 6 }, () => () => wait(share.next().value * buildMs * 1.1)),
  ];
  let killed = 0;
  for (const [index, moment] of moments.entries()) {
    titled(`Edition ${index}`);
    const { child, ended } = build();
    await moment();
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
});
