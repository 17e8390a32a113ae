import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { cli, temporaryFolder, writeContent } from "../support/cli.ts";
import { hashesBelow } from "../support/files-below.ts";
import { contentWith } from "../support/smallest-content.ts";

/** A build of the smallest content in a folder of its own, on a machine of this place and language. */
async function build(zone: string, language: string): Promise<Record<string, string>> {
  const before = { TZ: process.env.TZ, LANG: process.env.LANG, LC_ALL: process.env.LC_ALL };
  Object.assign(process.env, { TZ: zone, LANG: language, LC_ALL: language });
  onTestFinished(() => {
    for (const [name, value] of Object.entries(before)) {
      if (value === undefined) delete process.env[name];
      else process.env[name] = value;
    }
  });
  const folder = temporaryFolder();
  const out = join(folder, "out");
  const { code, report } = await cli(
    "build",
    "--content",
    writeContent(join(folder, "in"), contentWith()),
    "--out",
    out,
  );
  expect({ code, report }).toEqual({ code: 0, report: "" });
  return hashesBelow(out);
}

it("gives the same bytes in another folder, time zone and language, PDFs included", async () => {
  const here = await build("Pacific/Kiritimati", "tr_TR.UTF-8");
  const there = await build("America/Los_Angeles", "de_DE.UTF-8");
  expect(Object.keys(here).filter((path) => path.endsWith(".pdf")).length).toBeGreaterThan(1);
  expect(there).toEqual(here);
});
