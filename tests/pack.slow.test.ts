import { spawn } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { copySources } from "./support/clean-copy.ts";
import { temporaryFolder } from "./support/cli.ts";
import { run } from "./support/run-process.ts";

const onWindows = process.platform === "win32";
const npm = onWindows ? "npm.cmd" : "npm";

test("the packed package installs with its production dependencies alone, runs none of their scripts and works without a content folder", async () => {
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
  const quietly = ["--prefer-offline", "--no-audit", "--no-fund"];
  const installArgs = ["install", "--ignore-scripts", ...quietly, join(folder, tarball!)];
  const installed = await run(npm, installArgs, elsewhere);
  expect(installed, installed.stderr).toMatchObject({ code: 0 });
  expect(readdirSync(join(elsewhere, "node_modules/dotdown")).sort()).toEqual([
    "LICENSE",
    "README.md",
    "content",
    "content-de",
    "dist",
    "docs",
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

  const own = async (...args: string[]) => {
    const ran = await run(dotdown, args, elsewhere);
    expect(ran, `${args.join(" ")}: ${ran.stderr}`).toMatchObject({ code: 0 });
    return ran.stdout;
  };
  await own("init", "--title", "Our pond", "--publisher", "Makebelieve Club");
  await own("new", "rig", "our-margin", "--like", "margin");
  expect(await own("check", "--strict")).toBe("2 rigs, 1 lesson: fine\n");
  await own("build");
  expect(readFileSync(join(elsewhere, "out/site/index.html"), "utf8")).toContain("<title>Our pond</title>");
  expect(readFileSync(join(elsewhere, "out/cards/our-margin.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
  await own("schema");
  expect(
    JSON.parse(readFileSync(join(elsewhere, "schemas/rig.schema.json"), "utf8")).properties.hook,
  ).toBeDefined();
  expect(await previewed(dotdown, elsewhere)).toContain("<h1>Our margin</h1>");

  // A guide in another language borrows from the library in it, which is in the package, too.
  await own("init", "verein", "--language", "de", "--title", "Unser Wasser");
  const german = ["--content", "verein/content"];
  expect(await own("check", "--strict", ...german)).toContain("fine");
  await own("build", ...german, "--out", "verein/out");
  const safety = readFileSync(join(elsewhere, "verein/out/site/safety.html"), "utf8");
  const lent = readFileSync(join(elsewhere, "node_modules/dotdown/content-de/pages/safety.md"), "utf8");
  expect(safety).toContain('<html lang="de"');
  expect(safety).toContain(`<h1>${/^title: (.*)$/m.exec(lent)![1]}</h1>`);
});

/** The page of a rig as a preview shows it, which is then stopped as by Ctrl-C. */
async function previewed(dotdown: string, folder: string): Promise<string> {
  const preview = spawn(dotdown, ["preview", "--port", "0"], { cwd: folder, shell: onWindows });
  const ended = new Promise((end) => preview.once("exit", end));
  const address = await new Promise<string>((found) => {
    preview.stdout.on("data", (text) => {
      const [said] = /http:\S+/.exec(String(text)) ?? [];
      if (said) found(said);
    });
  });
  const page = await (await fetch(new URL("rigs/our-margin.html", address))).text();
  preview.kill("SIGINT");
  await ended;
  return page;
}
