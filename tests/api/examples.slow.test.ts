import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { temporaryFolder } from "../support/cli.ts";
import { compiledTool } from "../support/compiled-tool.ts";
import { run } from "../support/run-process.ts";

const examples = join(import.meta.dirname, "../../docs/examples");

/** A folder where somebody has installed the package and copied the examples. */
async function installed(): Promise<string> {
  const tool = join(temporaryFolder(), "tool");
  mkdirSync(tool);
  await compiledTool(tool);
  const folder = temporaryFolder();
  mkdirSync(join(folder, "node_modules"));
  symlinkSync(tool, join(folder, "node_modules/dotdown"), "junction");
  cpSync(examples, folder, { recursive: true });
  return folder;
}

/** What each of the programs prints there, without an error. */
async function saidIn(folder: string, names: readonly string[]): Promise<ReadonlyMap<string, string>> {
  const said = new Map<string, string>();
  for (const name of names) {
    const { code, stdout, stderr } = await run(process.execPath, [name], folder);
    expect({ code, stderr }, name).toEqual({ code: 0, stderr: "" });
    said.set(name, stdout);
  }
  return said;
}

test("every example runs as it stands in the docs, and the types that are shipped fit it", async () => {
  const folder = await installed();
  const names = readdirSync(examples);
  expect(names).toHaveLength(4);
  const said = await saidIn(folder, names);
  expect(said.get("figures.mjs")).toMatch(/ 1\.5 m: \d+ mm of tip, \d\.\d\d g\n/);
  const drawn = readdirSync(folder).filter((name) => name.endsWith(".svg"));
  expect(drawn).toHaveLength(1);
  expect(readFileSync(join(folder, drawn[0]!), "utf8")).toMatch(/^<svg /);
  expect(said.get("report.mjs")).toMatch(/^\d+ messages\n$/m);
  expect(existsSync(join(folder, "figures/data/rigs/first-session.json"))).toBe(true);

  const options = {
    strict: true,
    allowJs: true,
    checkJs: true,
    noEmit: true,
    module: "nodenext",
    target: "es2022",
    types: ["node"],
    typeRoots: [join(import.meta.dirname, "../../node_modules/@types")],
    preserveSymlinks: false,
  };
  writeFileSync(join(folder, "tsconfig.json"), JSON.stringify({ compilerOptions: options, files: names }));
  const compiler = join(import.meta.dirname, "../../node_modules/typescript/bin/tsc");
  const typed = await run(process.execPath, [compiler, "-p", folder], folder);
  expect(typed, typed.stdout).toMatchObject({ code: 0 });
  writeFileSync(join(folder, "figures.mjs"), 'import { solve } from "dotdown";\nawait solve("guide");\n');
  expect((await run(process.execPath, [compiler, "-p", folder], folder)).stdout).toContain(
    "figures.mjs(2,13)",
  );
});

test("every example runs in a guide that was begun beside it, too", async () => {
  const folder = await installed();
  const tool = join(folder, "node_modules/dotdown/dist/dotdown.js");
  expect(await run(process.execPath, [tool, "init"], folder)).toMatchObject({ code: 0 });
  const said = await saidIn(folder, readdirSync(examples));
  expect(said.get("figures.mjs")).toContain("Our first rig");
  expect(readFileSync(join(folder, "our-first-rig.svg"), "utf8")).toMatch(/^<svg /);
});
