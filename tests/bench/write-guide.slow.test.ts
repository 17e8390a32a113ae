import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { readContent } from "../../src/build/build.ts";
import { disk } from "../../src/cli/disk.ts";
import { inMemory } from "../../src/model/kept.ts";
import { hasErrors } from "../../src/model/message.ts";
import { edits, writeGuide } from "../../tools/bench/write-guide.mjs";
import { temporaryFolder } from "../support/cli.ts";
import { hashesBelow } from "../support/files-below.ts";

const size = { rigs: 30, lessons: 40, seed: 7 };

it("a guide for the bench is as large as asked for, right before and after its edits, and the same for the same seed", async () => {
  const [folder, again, other] = [temporaryFolder(), temporaryFolder(), temporaryFolder()];
  writeGuide(folder, size);
  writeGuide(again, size);
  writeGuide(other, { ...size, seed: 8 });
  expect(readdirSync(join(folder, "rigs"))).toHaveLength(size.rigs);
  expect(readdirSync(join(folder, "lessons"))).toHaveLength(size.lessons);
  const written = hashesBelow(folder);
  expect(hashesBelow(again)).toEqual(written);
  expect(hashesBelow(other)).not.toEqual(written);
  // What an edit leaves as it is, is parsed once.
  const keep = inMemory(2 * Object.keys(written).length);
  const isRight = async () => !hasErrors((await readContent(disk, [folder], undefined, keep)).messages);
  expect(await isRight()).toBe(true);
  for (const edit of Object.values(edits)) edit(folder);
  expect(await isRight()).toBe(true);
  expect(Object.entries(hashesBelow(folder)).filter(([path, hash]) => written[path] !== hash)).toHaveLength(
    2,
  );
});
