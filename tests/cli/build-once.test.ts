import { readdirSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { buildOnce } from "../../src/cli/build-once.ts";
import { disk } from "../../src/cli/disk.ts";
import { storeOnDisk } from "../../src/cli/kept-on-disk.ts";
import { withOutput } from "../../src/cli/output/with-output.ts";
import { readSources } from "../../src/content/world.ts";
import { temporaryFolder, writeContent } from "../support/cli.ts";
import { hashesBelow } from "../support/files-below.ts";
import { contentWith } from "../support/smallest-content.ts";

/** A guide in a folder of its own that is built again and again, with a place for what is kept. */
function workplace() {
  const folder = temporaryFolder();
  const content = writeContent(join(folder, "in"), contentWith());
  const out = join(folder, "out");
  const cache = join(folder, "kept");
  const build = async (
    options: Record<string, unknown> = {},
    store = storeOnDisk(cache, Buffer.from("tool")),
  ) => {
    const told: string[] = [];
    const terminal = { result: (text: string) => told.push(text), report: (text: string) => told.push(text) };
    const tell = (line: string) => told.push(line);
    const code = await withOutput({ out, contentFolders: [content], tell }, async (output) =>
      buildOnce({
        folders: [content],
        sources: await readSources(disk, [content]),
        options: { out, for: "data", ...options },
        terminal,
        progress: undefined,
        output,
        store,
        workers: 1,
      }),
    );
    return { code, told: told.join("") };
  };
  return { content, out, cache, build };
}

/** A day that no file of a build has by itself. */
const longAgo = new Date(2020, 0, 1);

/** Whether a build wrote anew what lies there. */
async function writes(out: string, build: () => Promise<unknown>): Promise<boolean> {
  const file = join(out, "dotdown-files.json");
  utimesSync(file, longAgo, longAgo);
  await build();
  return statSync(file).mtimeMs !== longAgo.getTime();
}

describe("a guide that was built before", () => {
  it("is left as it is, and the same is told", async () => {
    const { out, build } = workplace();
    const first = await build();
    const hashes = hashesBelow(out);
    expect(await writes(out, async () => expect(await build()).toEqual(first))).toBe(false);
    expect(hashesBelow(out)).toEqual(hashes);
    expect(first.told).toMatch(/\d+ files in .*out\n$/);
  });

  it("is built where a word, a name, an option or the day is another", async () => {
    const { content, out, build } = workplace();
    await build();
    const lesson = join(content, "guide.yaml");
    writeFileSync(lesson, readFileSync(lesson, "utf8").replace("Test guide", "Best guide"));
    expect(await writes(out, build)).toBe(true);
    expect(await writes(out, build)).toBe(false);
    expect(await writes(out, () => build({ copies: "2" }))).toBe(true);
    process.env.SOURCE_DATE_EPOCH = "1000000000";
    onTestFinished(() => {
      delete process.env.SOURCE_DATE_EPOCH;
    });
    expect(await writes(out, build)).toBe(true);
  });

  it("is built where a file of it is gone, and where there is none", async () => {
    const { out, build } = workplace();
    await build();
    rmSync(join(out, "data/shot.csv"));
    expect(await writes(out, build)).toBe(true);
    rmSync(out, { recursive: true });
    expect((await build()).code).toBe(0);
    expect(statSync(join(out, "data/shot.csv")).isFile()).toBe(true);
  });

  it("is built where nothing is kept, or what was kept is spoilt, or the tool is another", async () => {
    const { out, cache, build } = workplace();
    await build();
    for (const name of readdirSync(cache)) writeFileSync(join(cache, name), "spoilt");
    expect(await writes(out, build)).toBe(true);
    expect(await writes(out, build)).toBe(false);
    rmSync(cache, { recursive: true });
    expect(await writes(out, build)).toBe(true);
    expect(await writes(out, () => build({}, storeOnDisk(cache, Buffer.from("other"))))).toBe(true);
  });

  it("is not taken for one whose content is wrong", async () => {
    const { content, build } = workplace();
    await build();
    writeFileSync(join(content, "hooks.yaml"), "- { size: sixteen }\n");
    const wrong = await build();
    expect(wrong).toMatchObject({ code: 1, told: expect.stringContaining("hooks.yaml:1") });
    expect(await build()).toEqual(wrong);
  });
});
