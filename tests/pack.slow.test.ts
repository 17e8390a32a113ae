import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { copySources } from "./support/clean-copy.ts";
import { temporaryFolder } from "./support/cli.ts";
import { run } from "./support/run-process.ts";

const onWindows = process.platform === "win32";
const npm = onWindows ? "npm.cmd" : "npm";

test("the packed package installs with its production dependencies alone and works without a content folder", async () => {
  const folder = temporaryFolder();
  const sources = join(folder, "sources");
  const elsewhere = join(folder, "elsewhere");
  mkdirSync(sources);
  mkdirSync(elsewhere);
  copySources(sources);
  const packed = await run(npm, ["pack", "--pack-destination", folder], sources);
  expect(packed, packed.stderr).toMatchObject({ code: 0 });
  const [tarball] = readdirSync(folder).filter((name) => name.endsWith(".tgz"));

  writeFileSync(join(elsewhere, "package.json"), '{ "private": true }\n');
  const installArgs = ["install", "--prefer-offline", "--no-audit", "--no-fund", join(folder, tarball!)];
  const installed = await run(npm, installArgs, elsewhere);
  expect(installed, installed.stderr).toMatchObject({ code: 0 });
  expect(readdirSync(join(elsewhere, "node_modules/dotdown")).sort()).toEqual([
    "LICENSE",
    "README.md",
    "content",
    "dist",
    "package.json",
  ]);
  expect(readdirSync(join(elsewhere, "node_modules"))).not.toContain("vitest");

  const dotdown = join(elsewhere, "node_modules/.bin", onWindows ? "dotdown.cmd" : "dotdown");
  const help = await run(dotdown, ["--help"], elsewhere);
  expect(help).toMatchObject({ code: 0, stderr: "" });
  expect(help.stdout).toContain("build [options]");

  const sheet = await run(dotdown, ["sheet", "first-session", "--json"], elsewhere);
  expect(sheet, sheet.stderr).toMatchObject({ code: 0 });
  expect(JSON.parse(sheet.stdout)).toMatchObject({ id: "first-session" });

  const check = await run(dotdown, ["check"], elsewhere);
  expect(check, check.stderr).toMatchObject({ code: 0 });
  expect(readdirSync(elsewhere).sort()).toEqual(["node_modules", "package-lock.json", "package.json"]);
});
