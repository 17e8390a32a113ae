import { mkdirSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { ownCode } from "../../src/cli/own-code.ts";
import { temporaryFolder } from "../support/cli.ts";

/** A tool that was installed a while ago, as far as its files' own times tell. */
function installed() {
  const folder = temporaryFolder();
  const dist = join(folder, "dist");
  mkdirSync(join(dist, "site-assets"), { recursive: true });
  writeFileSync(join(folder, "package.json"), "{}");
  writeFileSync(join(dist, "main.js"), "1");
  writeFileSync(join(dist, "site-assets", "site.css"), "a {}");
  return dist;
}

const later = () => Date.now() + 10_000;

describe("the tool's own code", () => {
  it("is known by what is in its files, and by their times once these tell", () => {
    const dist = installed();
    expect(ownCode(dist)?.sight).toBeUndefined();
    const before = ownCode(dist, later());
    const content = before?.content();
    expect(ownCode(dist, later())).toMatchObject({ sight: before?.sight });
    expect(ownCode(dist)?.content()).toEqual(content);

    const file = join(dist, "main.js");
    const { atime, mtime, ctimeMs } = statSync(file);
    // As somebody would have it who hides a change.
    do {
      writeFileSync(file, "2");
      utimesSync(file, atime, mtime);
    } while (statSync(file).ctimeMs === ctimeMs);
    const after = ownCode(dist, later());
    expect(after?.sight).toBeDefined();
    expect(after?.sight).not.toEqual(before?.sight);
    expect(after?.content()).not.toEqual(content);
  });

  it("is not known where the tool runs from its sources", () => {
    expect(ownCode(join(temporaryFolder(), "src"))).toBeUndefined();
  });
});
