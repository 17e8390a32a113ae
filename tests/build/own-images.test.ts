import { PNG } from "pngjs";
import { beforeAll, describe, expect, it } from "vitest";
import { outputFiles, solveContent } from "../../src/build/build.ts";
import { formatReport } from "../../src/checks/reporter.ts";
import { lesson } from "../checks/checked.ts";
import { nodesOf, readPdf } from "../print/read-pdf.ts";
import { contentWith, edited, worldOf } from "../support/smallest-content.ts";

const png = (width: number, height: number) => {
  const data = Buffer.alloc(4 * width * height, 120);
  return PNG.sync.write({ width, height, data }).toString("latin1");
};

const files = new Map<string, string | Uint8Array>();
let sizes: readonly string[];

beforeAll(async () => {
  const content = contentWith({
    ...edited("guide.yaml", "edition:", "look: { logo: mark.png }\nedition:"),
    ...lesson('Words.\n\n![The pond in May](../images/pond.svg "Our pond")\n'),
    "images/mark.png": png(40, 20),
    "images/pond.svg":
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 2"><path d="M0 0h4v2z"/></svg>',
  });
  const { value, messages } = await solveContent(worldOf(content), ["content"]);
  if (!value) throw new Error(formatReport(messages));
  const assets = new Map([
    ["icon.svg", "<svg/>"],
    ["site.css", ""],
    ["service-worker.js", ""],
  ]);
  for await (const { path, content } of outputFiles(value, { date: "2026-11-20", siteAssets: assets }))
    files.set(path, content);
  sizes = [...files.keys()].filter((path) => path.startsWith("site/images/"));
});

const page = (path: string) => String(files.get(path));

describe("a picture of a guide's own", () => {
  it("stands on the page with its words and its size, and is a file of the site that phones keep", () => {
    const [image] = /<img src="\.\.\/images\/pond-1280\.\w+\.svg"[^>]*>/.exec(
      page("site/lessons/first.html"),
    )!;
    expect(image).toContain('alt="The pond in May"');
    expect(image).toContain('width="1280" height="640"');
    expect(page("site/lessons/first.html")).toContain("<figcaption>Our pond</figcaption>");
    const name = /images\/pond-1280\.\w+\.svg/.exec(image)![0];
    expect(files.has(`site/${name}`)).toBe(true);
    expect(page("site/sw.js")).toContain(`"${name}":`);
  });

  it("stands in the handout, told to those who cannot see it", async () => {
    const handout = await readPdf(files.get("handouts/first-a5.pdf") as Uint8Array);
    const figures = handout.pages.flatMap(({ tree }) => nodesOf(tree, "Figure"));
    expect(figures.map(({ alt }) => alt)).toEqual(["The pond in May"]);
    expect(handout.pages.flatMap(({ operators }) => operators)).toContain("paintImageXObject");
    expect(handout.pages[0]!.text).toContain("Our pond");
  });
});

describe("the logo", () => {
  it("stands on every page beside the title, and is the icon", () => {
    expect(sizes.some((path) => path.includes("mark-40."))).toBe(true);
    const pages = [...files].filter(([path]) => path.endsWith(".html"));
    for (const [, text] of pages) expect(text).toMatch(/<img class="brand-logo" src="[./]*images\/mark-40/);
    expect(page("site/index.html")).toContain('<link rel="icon" type="image/png" href="assets/icon.png">');
    expect(JSON.parse(page("site/manifest.webmanifest")).icons).toMatchObject([{ src: "assets/icon.png" }]);
    expect(files.has("site/assets/icon.svg")).toBe(false);
  });

  it("stands on the booklet's first page, where readers have the title", async () => {
    const [title] = (await readPdf(files.get("handouts/booklet.pdf") as Uint8Array)).pages;
    expect(title!.operators).toContain("paintImageXObject");
    expect(nodesOf(title!.tree, "Figure")).toEqual([]);
  });

  it("stands at the end of each handout, and on a large card", async () => {
    const imagesIn = async (path: string) => {
      const { pages } = await readPdf(files.get(path) as Uint8Array);
      return pages.flatMap(({ operators }) => operators.filter((one) => one === "paintImageXObject"));
    };
    const handouts = [...files.keys()].filter((path) => /^handouts\/.*-a4\.pdf$/.test(path));
    expect(handouts.length).toBeGreaterThan(0);
    for (const path of handouts) expect((await imagesIn(path)).length, path).toBeGreaterThan(0);
    const cards = [...files.keys()].filter((path) => /^cards\/(?!sheet).*-a5\.pdf$/.test(path));
    expect(cards.length).toBeGreaterThan(0);
    for (const path of cards) expect(await imagesIn(path), path).toEqual(["paintImageXObject"]);
  });
});
