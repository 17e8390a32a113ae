import { describe, expect, it } from "vitest";
import { guideSchema } from "../../src/content/schema/guide-schema.ts";
import { once } from "../../src/model/kept.ts";
import { siteFiles } from "../../src/site/site-files.tsx";
import { sampleFiles, sampleSite } from "./sample-site.ts";

/** The sample in colours of its own, with the place where its makers are found. */
const ownSite = once(async (): Promise<ReadonlyMap<string, string>> => {
  const input = await sampleSite();
  const own = {
    colours: { main: "#5b1a8c", accent: "#7a0045" },
    visit: { address: "1 Made Lane", hours: ["Mondays, 9 to 5", "Tuesdays, 9 to 1"] },
  };
  const library = { ...input.library, guide: { ...input.library.guide, ...own } };
  const files = new Map<string, string>();
  for await (const { path, content } of siteFiles({ ...input, library })) files.set(path, String(content));
  return files;
});

const nameOf = (files: ReadonlyMap<string, string>, pattern: RegExp) =>
  [...files.keys()].find((path) => pattern.test(path))!;

describe("the look of a guide's own", () => {
  it("has its colours in the style sheet, the browser's bar, the app and the mark", async () => {
    const files = await ownSite();
    const style = files.get(nameOf(files, /site\.\w+\.css$/))!;
    const rules = [...style.matchAll(/:root\{--deep:(#\w+);--link:(#\w+);--tip:(#\w+)/g)].map((found) =>
      found.slice(1),
    );
    expect(rules[0]).toEqual(["#5b1a8c", "#5b1a8c", "#7a0045"]);
    expect(rules[1]).not.toContain("#5b1a8c");
    expect(style).toContain("--drawing-accent:#7a0045");
    expect(style.lastIndexOf("@media print{:root{")).toBeGreaterThan(
      style.lastIndexOf("--drawing-accent:#7a0045"),
    );
    expect(files.get("site/index.html")).toContain('<meta name="theme-color" content="#5b1a8c">');
    expect(JSON.parse(files.get("site/manifest.webmanifest")!).theme_color).toBe("#5b1a8c");
    expect(files.get("site/assets/icon.svg")).toContain('fill="#5b1a8c"');
    expect(
      [...files].filter(([path, text]) => /icon|\.html$/.test(path) && text.includes("#0d3b40")),
    ).toEqual([]);
  });

  it("may have one of its two colours alone: the other is that of a guide without any", async () => {
    const style = String((await sampleFiles()).find(({ path }) => /site\.\w+\.css$/.test(path))!.content);
    const [, usualMain] = /--deep:\s*(#\w+)/.exec(style)!;
    const [, usualAccent] = /--drawing-accent:(#\w+)/.exec(style)!;
    const typed = (colours: object) => guideSchema.shape.look.parse({ colours })?.colours;
    expect(typed({ main: "#5b1a8c" })).toEqual({ main: "#5b1a8c", accent: usualAccent });
    expect(typed({ accent: "#7a0045" })).toEqual({ main: usualMain, accent: "#7a0045" });
  });

  it("says at the foot of every page where its makers are found", async () => {
    const pages = [...(await ownSite())].filter(([path]) => path.endsWith(".html"));
    expect(pages.length).toBeGreaterThan(10);
    for (const [, page] of pages) {
      expect(page).toMatch(/<address><span>1 Made Lane<\/span><span>Mondays, 9 to 5<\/span><span>Tues/);
    }
    const plain = (await sampleFiles()).find(({ path }) => path === "site/index.html")!;
    expect(String(plain.content)).not.toContain("<address>");
  });
});
