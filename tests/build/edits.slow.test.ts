import { expect, test } from "vitest";
import { storeOnDisk } from "../../src/cli/kept-on-disk.ts";
import { keeping } from "../../src/model/kept.ts";
import { temporaryFolder } from "../support/cli.ts";
import { builtOf, editedGuides } from "../support/edited-guides.ts";
import { seeded } from "../support/seeded.ts";

test("after each of 200 edits a guide is the same to the byte, built anew or with what was kept", async () => {
  const keep = keeping(storeOnDisk(temporaryFolder(), Buffer.from("tool")));
  let edit = 0;
  for await (const files of editedGuides(200, seeded(27))) {
    edit += 1;
    const [kept, anew] = [await builtOf(files, keep), await builtOf(files)];
    for (const [path, content] of anew)
      expect(kept.get(path) === content, `${path} after edit ${edit}`).toBe(true);
    expect([...kept.keys()]).toEqual([...anew.keys()]);
  }
}, 3_600_000);
