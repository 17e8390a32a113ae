import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { runCli } from "../../src/cli/run.ts";
import { listings } from "../../src/site/listings.tsx";
import { sampleLibrary } from "../site/sample-site.ts";
import { cli, smallGuide, temporaryFolder } from "../support/cli.ts";
import { hashesBelow } from "../support/files-below.ts";
import { edited } from "../support/smallest-content.ts";

const content = (changes: Record<string, string | null> = {}) =>
  smallGuide(join(temporaryFolder(), "content"), changes);

async function partsOf(part: string, changes: Record<string, string> = {}) {
  const out = join(temporaryFolder(), "out");
  const { code, result } = await cli("build", "--content", content(changes), "--out", out, "--for", part);
  expect(code).toBe(0);
  const folders = Object.keys(hashesBelow(out)).map((path) => path.split("/")[0]);
  return { folders: [...new Set(folders)].sort(), result };
}

describe("a part of a guide alone", () => {
  it("is its data", async () => {
    expect((await partsOf("data")).folders).toEqual(["data", "dotdown-files.json"]);
  });

  it("is what is printed", async () => {
    const { folders, result } = await partsOf("print");
    expect(folders).toEqual(["cards", "dotdown-files.json", "handouts"]);
    expect(result).not.toContain("index.html");
  });

  it("says where all papers lie, and what would write the order for a shelf", async () => {
    const shelf = { "shelves/hut.yaml": "title: Hut\npacks: [{ rig: plain, wanted: 2 }]\n" };
    const { result } = await partsOf("print", shelf);
    expect(result).toMatch(
      /print from \S+out\/cards, \S+out\/handouts and \S+out\/shelves; --for data writes what to order\n$/,
    );
    expect((await partsOf("data", shelf)).result).not.toContain("--for data");
    expect((await partsOf("print")).result).not.toContain("--for data");
  });

  it("is the site, with the cards that it offers", async () => {
    const { folders, result } = await partsOf("web");
    expect(folders).toEqual(["dotdown-files.json", "site"]);
    expect(result).toContain("site/index.html");
  });
});

describe("what goes on", () => {
  const watched = async (...args: string[]) => {
    const said: string[] = [];
    const code = await runCli(args, {
      result: () => {},
      report: () => {},
      progress: () => ({ say: (text) => said.push(text), end: () => said.push("END") }),
    });
    return { code, said };
  };

  it("is shown where somebody watches, and is gone at the end, well or not", async () => {
    const folder = content();
    const out = join(folder, "../out");
    const { code, said } = await watched("build", "--content", folder, "--out", out, "--for", "data");
    expect(code).toBe(0);
    expect(said).toContain("writing file 1: data/rigs/plain.json");
    expect(said.at(-1)).toBe("END");
    const broken = content(edited("rigs/plain.md", "hook: 16", "hook: 99"));
    const failed = await watched("check", "--content", broken);
    expect(failed).toEqual({ code: 1, said: ["reading, and doing the sums", "laying out", "END"] });
  });

  it("is not shown to those who want it quiet, or as data", async () => {
    const folder = content();
    for (const option of ["--quiet", "--json"]) {
      const { said } = await watched(
        "build",
        "--content",
        folder,
        "--out",
        join(folder, "../out"),
        "--for",
        "data",
        option,
      );
      expect(said).toEqual([]);
    }
  });
});

/** Source: RFC 9309, and the sitemaps.org protocol for the last line. */
it("robots may read all of a site, and find its map where its address is known", () => {
  const robotsOf = (guide: object) => {
    const library = { ...sampleLibrary, guide: { ...sampleLibrary.guide, ...guide } };
    return listings([], { library } as never).find(({ path }) => path === "site/robots.txt")!.content;
  };
  expect(robotsOf({ siteAddress: "https://made-up.example/a/b" })).toBe(
    "User-agent: *\nAllow: /\n\nSitemap: https://made-up.example/a/b/sitemap.xml\n",
  );
  expect(robotsOf({ siteAddress: undefined })).toBe("User-agent: *\nAllow: /\n");
});
