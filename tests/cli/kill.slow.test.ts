import { existsSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { expect, test } from "vitest";
import { temporaryFolder } from "../support/cli.ts";
import { compiledTool } from "../support/compiled-tool.ts";
import { inLanes, type Workshop, workshop } from "../support/output/real-builds.ts";
import { expectWhole } from "../support/output/whole.ts";
import { seeded } from "../support/seeded.ts";

const hour = 3_600_000;

/** Starts an edition's build for each trial and stops it somewhere between its start and a little after its end. */
async function stopAtRandom(
  trials: number,
  signals: readonly NodeJS.Signals[],
  check: (shop: Workshop, content: string, index: number) => Promise<void>,
): Promise<number> {
  const command = await compiledTool(join(temporaryFolder(), "tool"));
  const shops = [workshop(command), workshop(command)];
  // How long a build takes, less once one was over sooner: a machine with less to do takes another time.
  let buildMs = 0;
  await inLanes(shops.length, shops.length, async (index) => {
    const shop = shops[index]!;
    const startedAt = performance.now();
    const first = await shop.build(shop.edition("First edition")).ended;
    buildMs = performance.now() - startedAt;
    expect(first, first.stderr).toMatchObject({ code: 0 });
    expectWhole(shop.out);
  });
  const shares = seeded(20_261_120);
  let stopped = 0;
  await inLanes(trials, shops.length, async (index, lane) => {
    const shop = shops[lane]!;
    const content = shop.edition(`Edition ${index}`);
    const startedAt = performance.now();
    const { child, ended } = shop.build(content);
    await pause(shares.next().value * buildMs * 1.1);
    const stoppedAt = performance.now();
    child.kill(signals[index % signals.length]);
    const { signal } = await ended;
    if (signal) stopped++;
    else buildMs = Math.min(buildMs, stoppedAt - startedAt);
    // A kill between the two moves of a swap leaves no output until the next command.
    if (!existsSync(shop.out)) await shop.sheet(content);
    expectWhole(shop.out);
    await check(shop, content, index);
  });
  for (const shop of shops) {
    const last = await shop.build(shop.edition("Last edition")).ended;
    expect(last, last.stderr).toMatchObject({ code: 0, stderr: "" });
    expectWhole(shop.out);
    expect(shop.titleOfOutput()).toContain("Last edition");
    expect(shop.leftovers()).toEqual([]);
  }
  return stopped;
}

test(
  "after 200 kills at random moments the output is whole each time, and the next command clears up",
  async () => {
    const killed = await stopAtRandom(200, ["SIGKILL"], async (shop, content, index) => {
      // The next command is the next trial's build, except after each tenth trial.
      if (index % 10 !== 0) return;
      expect(await shop.sheet(content), `trial ${index}`).toMatchObject({ code: 0 });
      expect(shop.leftovers(), `trial ${index}`).toEqual([]);
    });
    expect(killed).toBeGreaterThan(120);
  },
  hour,
);

test(
  "Ctrl-C, SIGTERM and a closed terminal stop a build by that signal, and it clears up at once",
  async () => {
    const stopped = await stopAtRandom(30, ["SIGINT", "SIGTERM", "SIGHUP"], async (shop, _, index) => {
      expect(shop.leftovers(), `trial ${index}`).toEqual([]);
    });
    expect(stopped).toBeGreaterThan(15);
  },
  hour,
);
