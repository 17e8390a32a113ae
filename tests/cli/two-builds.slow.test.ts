import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { expect, test } from "vitest";
import { temporaryFolder } from "../support/cli.ts";
import { compiledTool } from "../support/compiled-tool.ts";
import { inLanes, workshop } from "../support/output/real-builds.ts";
import { expectWhole } from "../support/output/whole.ts";
import { seeded } from "../support/seeded.ts";

const waits = /^dotdown: another build \(process \d+\) is writing .*out; this one waits until it is done\n$/;

test("of 50 pairs of builds into one output each ends well, and leaves one edition, whole", async () => {
  const command = await compiledTool(join(temporaryFolder(), "tool"));
  const shares = seeded(20_261_121);
  const last = new Set<string | undefined>();
  let waited = 0;
  const shops = [workshop(command), workshop(command)];
  // As long as a build takes here; the second of a pair comes while the first is at it.
  const startedAt = performance.now();
  await inLanes(shops.length, shops.length, async (lane) => {
    const shop = shops[lane]!;
    expect(await shop.build(shop.edition("None")).ended).toMatchObject({ code: 0 });
  });
  const buildMs = performance.now() - startedAt;
  await inLanes(50, shops.length, async (index, lane) => {
    const shop = shops[lane]!;
    const build = async (title: string) => shop.build(shop.edition(title, title)).ended;
    const first = build("One");
    await pause(shares.next().value * buildMs * 0.6);
    const ended = await Promise.all([first, build("Other")]);
    for (const { code, stderr } of ended) {
      expect(code, stderr).toBe(0);
      if (stderr === "") continue;
      expect(stderr).toMatch(waits);
      waited++;
    }
    expectWhole(shop.out);
    const title = shop.titleOfOutput()!.split(/\W/)[0];
    expect(["One", "Other"], `pair ${index}`).toContain(title);
    last.add(title);
    expect(shop.leftovers(), `pair ${index}`).toEqual([]);
  });
  expect(waited).toBeGreaterThan(25);
}, 3_600_000);
