import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { disk } from "../../../src/cli/disk.ts";
import { remembering, stateOnDisk } from "../../../src/cli/watch/remembering.ts";
import { temporaryFolder } from "../../support/cli.ts";

describe("a world that remembers", () => {
  const readings = () => {
    const read: string[] = [];
    const world = {
      ...disk,
      readText: async (path: string) => {
        read.push(path);
        return `${path}, reading ${read.length}`;
      },
    };
    return { read, world };
  };

  it("reads a file once, and again once it is another", async () => {
    const { read, world } = readings();
    const states = new Map([["a", "1"]]);
    const { readText } = remembering(world, (path) => states.get(path));
    expect([await readText("a"), await readText("a")]).toEqual(["a, reading 1", "a, reading 1"]);
    states.set("a", "2");
    expect([await readText("a"), await readText("a")]).toEqual(["a, reading 2", "a, reading 2"]);
    expect(read).toHaveLength(2);
  });

  it("reads each time what was written a moment ago, or of which nothing can be told", async () => {
    const { read, world } = readings();
    const { readText } = remembering(world, () => undefined);
    await readText("a");
    await readText("a");
    expect(read).toHaveLength(2);
    const file = join(temporaryFolder(), "a.md");
    expect(stateOnDisk(file)).toBeUndefined();
    writeFileSync(file, "text");
    const hourMs = 3_600_000;
    expect(stateOnDisk(file, Date.now() - hourMs)).toBeUndefined();
    const state = stateOnDisk(file, Date.now() + hourMs);
    expect(state).toBeDefined();
    writeFileSync(file, "texts");
    expect(stateOnDisk(file, Date.now() + hourMs)).not.toBe(state);
  });
});
