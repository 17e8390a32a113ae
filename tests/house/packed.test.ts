import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, normalize } from "node:path";
import { expect, it } from "vitest";

// What npm packs besides what is listed. Source: npm's documentation of package.json, under "files".
const always = ["package.json", "README.md", "LICENSE"];

it("what the README and the papers beside it lead to is in the package, too", () => {
  const { files } = JSON.parse(readFileSync("package.json", "utf8")) as { readonly files: readonly string[] };
  const papers = ["README.md", ...readdirSync("docs").map((name) => join("docs", name))];
  const links = papers
    .filter((path) => path.endsWith(".md"))
    .flatMap((path) =>
      [
        ...readFileSync(path, "utf8")
          .replace(/`[^`]*`/g, "")
          .matchAll(/\]\((?![a-z]+:)([^)#\s]+)/g),
      ].map(([, to = ""]) => normalize(join(path, "..", to))),
    );
  expect(links.length).toBeGreaterThan(5);
  const isPacked = (to: string) =>
    [...files, ...always].some((one) => to === one || to.startsWith(`${one}/`));
  expect(links.filter((to) => !existsSync(to) || !isPacked(to))).toEqual([]);
});
