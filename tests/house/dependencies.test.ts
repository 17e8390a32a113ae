import { readdirSync, readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { importsOf } from "../../tools/imports.mjs";

const root = join(import.meta.dirname, "../..");
const read = (path: string) => readFileSync(join(root, path), "utf8");

const { dependencies, devDependencies } = JSON.parse(read("package.json")) as Readonly<
  Record<"dependencies" | "devDependencies", Readonly<Record<string, string>>>
>;

const filesOf = (folders: readonly string[]): string[] =>
  folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
      .filter((path) => /\.(?:m?tsx?|mjs)$/.test(path))
      .map((path) => `${folder}/${path}`),
  );

/** Packages that a file names in an import, a module that it asks to be resolved, or a module that it describes. */
function packagesOf(path: string): string[] {
  const text = read(path);
  const named = [
    ...text.matchAll(/(?:\bresolve|\burl\))\(\s*["`]([^"`]+)/g),
    ...text.matchAll(/^declare module "([^"]+)"/gm),
  ].map(([, name]) => name!);
  const imported = importsOf(root, path).filter(({ inside }) => !inside);
  return [...imported.map(({ to }) => to), ...named]
    .flatMap((name) => /^(?:@[\w.-]+\/)?[a-z][\w.-]*(?=\/|$)/.exec(name)?.[0] ?? [])
    .filter((name) => !builtinModules.includes(name));
}

const used = (folders: readonly string[]) => new Set(filesOf(folders).flatMap(packagesOf));
const shipped = used(["src", "templates"]);
const working = new Set([...used(["tests", "tools"]), ...packagesOf("vitest.config.ts")]);

/** Types of the trees that Markdown, HTML and XML are; they come from `@types`. */
const typesOnly = ["mdast", "hast", "xast"];
/** Run by a script, or read by the compiler, and imported by no file. */
const tools = [
  "@biomejs/biome",
  "typescript",
  "@types/node",
  "@types/mdast",
  "@types/hast",
  "@types/fontkit",
  "@types/pdfkit",
  "@types/culori",
  "@types/xast",
];

describe("the packages", () => {
  it("that the tool imports are its dependencies", () => {
    const known = [...Object.keys(dependencies), ...typesOnly];
    expect([...shipped].filter((name) => !known.includes(name))).toEqual([]);
  });

  it("that tests and tools import are listed", () => {
    const known = [...Object.keys(dependencies), ...Object.keys(devDependencies), ...typesOnly];
    expect([...working].filter((name) => !known.includes(name))).toEqual([]);
  });

  it("that are listed are imported, or run", () => {
    expect(Object.keys(dependencies).filter((name) => !shipped.has(name) && !working.has(name))).toEqual([]);
    expect(
      Object.keys(devDependencies).filter((name) => !working.has(name) && !tools.includes(name)),
    ).toEqual([]);
  });

  it("that are shipped need no script at their installation, and of the others one has one that it can do without", () => {
    const locked: Readonly<Record<string, { dev?: boolean; hasInstallScript?: boolean }>> = JSON.parse(
      read("package-lock.json"),
    ).packages;
    expect(Object.keys(locked).length).toBeGreaterThan(300);
    const withScript = Object.entries(locked).filter(([, { hasInstallScript }]) => hasInstallScript);
    // Its script puts the program in the place of a file that starts it, to start sooner.
    expect(withScript.map(([path, { dev }]) => [path, dev])).toEqual([["node_modules/esbuild", true]]);
  });

  it("each have their reason in DEVELOPERS.md", () => {
    const rows = [...read("DEVELOPERS.md").matchAll(/^\| (`[^|]+) \| \S[^|]{10,} \|$/gm)];
    const explained = new Set(rows.flatMap(([, names]) => names!.match(/[@\w./-]+/g) ?? []));
    const listed = [...Object.keys(dependencies), ...Object.keys(devDependencies)];
    expect(listed.filter((name) => !explained.has(name))).toEqual([]);
  });

  it("of the tool runs nothing of its own where it is installed, which npm would have to ask about", () => {
    const { scripts } = JSON.parse(read("package.json")) as { readonly scripts: object };
    for (const name of ["preinstall", "install", "postinstall", "prepare"])
      expect(scripts).not.toHaveProperty(name);
  });
});
