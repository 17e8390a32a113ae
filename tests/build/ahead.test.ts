import { join } from "node:path";
import { beforeEach, expect, test } from "vitest";
import { makeAhead } from "../../src/build/ahead.ts";
import { outputFiles, solveChecked } from "../../src/build/build.ts";
import { checkSources } from "../../src/build/check-sources.ts";
import { buildSettings } from "../../src/cli/build-settings.ts";
import { disk } from "../../src/cli/disk.ts";
import { readSources } from "../../src/content/world.ts";
import { orderOf } from "../../src/model/in-order.ts";
import { inMemory, type Keep, makeAnew } from "../../src/model/kept.ts";
import { fileHash } from "../../src/site/file-hash.ts";
import { temporaryFolder, writeContent } from "../support/cli.ts";
import { contentWith } from "../support/smallest-content.ts";

let sources: Awaited<ReturnType<typeof readSources>>;
beforeEach(async () => {
  sources = await readSources(disk, [writeContent(join(temporaryFolder(), "content"), contentWith())]);
});

async function built(keep: Keep) {
  const { value: solved } = await solveChecked(checkSources(sources, keep), keep);
  const files: [string, string][] = [];
  for await (const { path, content } of outputFiles(solved!, { ...buildSettings(solved!), keep }))
    files.push([path, fileHash(content)]);
  return files;
}

test.each([
  [1, 2],
  [2, 3],
])(
  "who makes ahead as party %i of %i makes all sums, paper and pages that a build asks for, and nothing else comes of it",
  async (party, parties) => {
    const kept = inMemory(10_000);
    await makeAhead(sources, buildSettings, kept, orderOf(party, parties));
    const anew = new Set<string>();
    const files = await built((kind, from, make) =>
      kept(kind, from, () => {
        anew.add(kind);
        return make();
      }),
    );
    expect(files).toEqual(await built(makeAnew));
    const shared = [
      "yaml",
      "markdown",
      "rig",
      "cards",
      "marks of cards",
      "card",
      "sheets",
      "handout",
      "handout as PDF",
      "booklet",
      "true size as PDF",
      "rig on a page",
      "html as page",
    ];
    expect(shared.filter((kind) => anew.has(kind))).toEqual([]);
  },
);

test("of a guide that is wrong nothing is made ahead, and nothing told", async () => {
  const wrong = new Map(
    [...sources].map(([path, source]) => [
      path,
      path === "guide.yaml" ? { ...source, text: "title: 1" } : source,
    ]),
  );
  const made: string[] = [];
  const noting: Keep = (kind, _from, make) => {
    made.push(kind);
    return make();
  };
  await makeAhead(wrong, buildSettings, noting, orderOf(1, 2));
  expect(made).not.toContain("rig");
});
