import { spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { deserialize } from "node:v8";
import subsetFont from "subset-font";
import { afterAll, expect, test } from "vitest";
import { parse } from "yaml";
import { resultKey } from "../src/cli/boards.ts";
import { copySources } from "./support/clean-copy.ts";
import { lentFont } from "./support/lent-font.ts";
import { run, start } from "./support/run-process.ts";

const onWindows = process.platform === "win32";
const npm = onWindows ? "npm.cmd" : "npm";

const folder = mkdtempSync(join(tmpdir(), "dotdown-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The packed file, made once. */
let packing: Promise<string> | undefined;
async function pack(): Promise<string> {
  const sources = join(folder, "sources");
  mkdirSync(sources);
  copySources(sources);
  const packed = await run(npm, ["pack", "--pack-destination", folder], sources);
  expect(packed, packed.stderr).toMatchObject({ code: 0 });
  return join(folder, readdirSync(folder).find((name) => name.endsWith(".tgz"))!);
}

/** A new folder in which the packed file is installed; gives it and the command there. */
async function installed(name: string) {
  packing ??= pack();
  const at = join(folder, name);
  mkdirSync(at);
  writeFileSync(join(at, "package.json"), '{ "private": true }\n');
  const quietly = ["--prefer-offline", "--no-audit", "--no-fund"];
  const ended = await run(npm, ["install", "--ignore-scripts", ...quietly, await packing], at);
  expect(ended, ended.stderr).toMatchObject({ code: 0 });
  return { at, dotdown: join(at, "node_modules/.bin", onWindows ? "dotdown.cmd" : "dotdown") };
}

test("what was read of the library is packed with it", async () => {
  const { at } = await installed("ready");
  const tool = join(at, "node_modules/dotdown");
  const ready: ReadonlyMap<string, Uint8Array> = deserialize(readFileSync(join(tool, "dist/library.kept")));
  const filesIn = (folder: string) =>
    readdirSync(join(tool, folder), { recursive: true, encoding: "utf8" })
      .filter((path) => path.endsWith(".yaml") && !/^(?:swims|notes|shelves|sessions)\b/.test(path))
      .filter((path) => path !== "changes.yaml")
      .map((path) => readFileSync(join(tool, folder, path), "utf8"));
  const files = ["content", "content-de"].flatMap(filesIn);
  expect(files.length).toBeGreaterThan(80);
  expect(files.filter((text) => !ready.has(resultKey("yaml", text)))).toEqual([]);
});

test("the packed package installs with its production dependencies alone, runs none of their scripts and works without a content folder", async () => {
  const { at: elsewhere, dotdown } = await installed("elsewhere");
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

  const help = await run(dotdown, ["--help"], elsewhere);
  expect(help).toMatchObject({ code: 0, stderr: "" });
  expect(help.stdout).toContain("build [options]");

  const sheet = await run(dotdown, ["sheet", "first-session", "--json"], elsewhere);
  expect(sheet, sheet.stderr).toMatchObject({ code: 0 });
  expect(JSON.parse(sheet.stdout)).toMatchObject({ id: "first-session" });

  const check = await run(dotdown, ["check"], elsewhere);
  expect(check, check.stderr).toMatchObject({ code: 0 });
  const library = "there is no folder content here, so this is the guide that comes with dotdown;";
  expect(check.stderr).toContain(`${library} npx dotdown init begins one of your own\n`);
  expect(readdirSync(elsewhere).sort()).toEqual(["node_modules", "package-lock.json", "package.json"]);

  mkdirSync(join(elsewhere, "notes"));
  expect((await run(dotdown, ["check", "--quiet"], join(elsewhere, "notes"))).stderr).toBe("");

  const own = async (...args: string[]) => {
    const ran = await run(dotdown, args, elsewhere);
    expect(ran, `${args.join(" ")}: ${ran.stderr}`).toMatchObject({ code: 0 });
    return ran.stdout;
  };
  await own("init", "--title", "Our pond", "--publisher", "Makebelieve Club");
  await own("new", "rig", "our-margin", "--like", "margin");
  expect(await own("check", "--strict")).toBe("2 rigs, 1 lesson: fine\n");
  const below = await run(dotdown, ["check"], join(elsewhere, "notes"));
  expect(below.stderr).toContain(`${library} yours may be that in ..\n`);
  await own("build");
  expect(readFileSync(join(elsewhere, "out/site/index.html"), "utf8")).toContain("<title>Our pond</title>");
  expect(readFileSync(join(elsewhere, "out/cards/our-margin.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
  await own("schema");
  expect(
    JSON.parse(readFileSync(join(elsewhere, "schemas/rig.schema.json"), "utf8")).properties.hook,
  ).toBeDefined();
  expect(await previewed(dotdown, elsewhere)).toContain("<h1>Our margin</h1>");

  // What unpacks a font of one's own is a file beside the tool.
  const signs = await subsetFont(lentFont, "☺♪", { targetFormat: "woff2" });
  const ownGuide = join(elsewhere, "content/guide.yaml");
  for (const folder of ["fonts", "pages"]) mkdirSync(join(elsewhere, "content", folder));
  writeFileSync(join(elsewhere, "content/fonts/signs.woff2"), signs);
  writeFileSync(ownGuide, `${readFileSync(ownGuide, "utf8")}look: { font: signs.woff2 }\n`);
  writeFileSync(
    join(elsewhere, "content/pages/smile.md"),
    "---\ntitle: Smile\nsummary: A smile.\n---\nAll is well ☺\n",
  );
  await own("build");
  expect(readdirSync(join(elsewhere, "out/site/assets"))).toContain("own-signs.woff");

  // A guide in another language borrows from the library in it, which is in the package, too.
  await own("init", "verein", "--language", "de", "--title", "Unser Wasser");
  const german = ["--content", "verein/content"];
  expect(await own("check", ...german)).toContain("fine");
  await own("build", ...german, "--out", "verein/out");
  const safety = readFileSync(join(elsewhere, "verein/out/site/safety.html"), "utf8");
  const lent = readFileSync(join(elsewhere, "node_modules/dotdown/content-de/pages/safety.md"), "utf8");
  expect(safety).toContain('<html lang="de"');
  expect(safety).toContain(`<h1>${/^title: (.*)$/m.exec(lent)![1]}</h1>`);
});

/** What the test reads of a workflow. */
interface Step {
  readonly run?: string;
  readonly uses?: string;
  readonly with?: { readonly path?: string };
}

// The host runs each line by `bash -e` (documentation of its shells, from memory). But for what installs, no line has a
// network: npx cannot take the tool from anywhere but from what was installed.
test.skipIf(onWindows)(
  "the workflow that init hands out builds the site that it publishes, by the tool that package.json names",
  async () => {
    const { at, dotdown } = await installed("checkout");
    expect(await run(dotdown, ["init", "--workflow", "--title", "Our pond"], at)).toMatchObject({ code: 0 });
    rmSync(join(at, "node_modules"), { recursive: true });
    const { jobs } = parse(readFileSync(join(at, ".github/workflows/guide.yaml"), "utf8"));
    const steps: readonly Step[] = jobs.publish.steps;
    const published = steps.find(({ uses }) => uses?.startsWith("actions/upload-pages-artifact@"));
    const before = steps.slice(0, steps.indexOf(published!));
    for (const { run: line } of before) {
      if (line === undefined) continue;
      const npmMay = /\bnpm ci\b/.test(line)
        ? { npm_config_prefer_offline: "true" }
        : { npm_config_offline: "true" };
      const env = { ...process.env, ...npmMay, CI: "true" };
      const ended = await start("bash", ["-e", "-c", line], at, { env }).ended;
      expect(ended, `${line}: ${ended.stderr}`).toMatchObject({ code: 0 });
    }
    const site = readFileSync(join(at, published!.with!.path!, "index.html"), "utf8");
    expect(site).toContain("<title>Our pond</title>");
  },
);

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
