import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { isWhole } from "../../../src/cli/output/file-list.ts";
import { seenFiles } from "../../../src/cli/output/seen.ts";
import { fingerprintOf } from "../../../src/model/fingerprint.ts";
import { temporaryFolder, writeContent } from "../../support/cli.ts";

const list = new Map([
  ["a.html", fingerprintOf("one")],
  ["b/c.pdf", fingerprintOf("two")],
]);

it("a folder is whole with what is listed, to the byte, and nothing else", () => {
  const isWholeAt = (folder: string) =>
    isWhole(
      folder,
      list,
      seenFiles(() => 0n),
    );
  const folder = writeContent(temporaryFolder(), { "a.html": "one", "b/c.pdf": "two" });
  expect(isWholeAt(folder)).toBe(true);
  expect(isWholeAt(join(folder, "nowhere"))).toBe(false);
  expect(isWholeAt(join(folder, "a.html"))).toBe(false);
  expect(isWholeAt(join(folder, "b"))).toBe(false);
  mkdirSync(join(folder, "more"));
  expect(isWholeAt(folder)).toBe(false);
  const other = writeContent(temporaryFolder(), { "a.html": "one", "b/c.pdf": "two" });
  writeFileSync(join(other, "a.html"), "One");
  expect(isWholeAt(other)).toBe(false);
});
