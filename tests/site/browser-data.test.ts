import { expect, it } from "vitest";
import type { Library } from "../../src/model/library.ts";
import { browserData } from "../../src/site/browser-data.ts";
import { siteFile } from "../../src/site/site-files.tsx";
import { sampleFiles, sampleLibrary, sampleSite } from "./sample-site.ts";

/** The words that pages get with a script. */
function wordsFor(script: string, words: Library["words"]): unknown {
  const assets = new Map([
    ["fit.js", script],
    ["site.css", 'a{content:"table.head"}'],
  ]);
  const [guide] = browserData({ library: { ...sampleLibrary, words }, assets });
  return JSON.parse(String(guide?.content).slice("var dotdownGuide = ".length, -";\n".length)).words;
}

const words = {
  page: { fit: "Fit" },
  told: { add: "Add" },
  sheet: { head: "Sheet" },
  table: { head: "Head" },
};

it("gives page scripts the words whose keys they have, plain or put together, and no others", () => {
  expect(wordsFor('w("page.fit")', words)).toEqual({ page: words.page });
  expect(wordsFor(`w(\`page.\${a}\`),w('told.add')`, words)).toEqual({ page: words.page, told: words.told });
  expect(wordsFor("var sheet=1;sheet.head()", words)).toEqual({});
});

interface ListOfRigs {
  readonly scripts: readonly string[];
  readonly rigs: readonly { readonly data: string }[];
}
const listIn = (content: unknown): ListOfRigs =>
  JSON.parse(String(content).slice("var dotdownRigs = ".length, -";\n".length));

it("leads from the list of rigs to files that there are, in a build as in a page that is made alone", async () => {
  const built = new Map((await sampleFiles()).map(({ path, content }) => [path, content]));
  const site = await sampleSite();
  const alone = listIn(siteFile("site/assets/rig-list.js", site)?.content);
  expect(alone.rigs.length).toBeGreaterThan(1);
  for (const { data } of alone.rigs) expect(siteFile(`site/${data}`, site), data).toBeDefined();
  const list = listIn(built.get("site/assets/rig-list.js"));
  expect(list.rigs).toHaveLength(alone.rigs.length);
  for (const { data } of list.rigs) expect(built.has(`site/${data}`), data).toBe(true);
  const stamped = [...built.keys()].find((path) => /assets\/rig-list\.[\da-f]+\.js$/.test(path));
  expect(built.get(stamped!)).toBe(built.get("site/assets/rig-list.js"));
});

it("names in the list of rigs what their pages load to make them for another water", async () => {
  const built = new Map((await sampleFiles()).map(({ path, content }) => [path, String(content)]));
  const { scripts, rigs } = listIn(built.get("site/assets/rig-list.js"));
  const named = new Set([...scripts, ...rigs.map(({ data }) => data)].map((path) => `../${path}`));
  const page = built.get("site/rigs/waggler-strung-out.html")!;
  const of = (attribute: string) =>
    new RegExp(`id="fit"[^>]*${attribute}="([^"]*)"`).exec(page)![1]!.split(" ");
  const loaded = [...of("data-scripts"), ...of("data-worker")];
  expect(loaded).toHaveLength(4);
  for (const one of loaded) expect(named).toContain(one);
});

it("changes for a rig its figures and the list alone, or the pages of all rigs would change with each", () => {
  const filesWith = (rodLengthMm: number) => {
    const [changed, ...others] = sampleLibrary.rigs;
    const rigs = [{ ...changed!, rig: { ...changed!.rig, rodLengthMm } }, ...others];
    const files = browserData({ library: { ...sampleLibrary, rigs }, assets: new Map() });
    return new Map(files.map(({ path, content }) => [path, content]));
  };
  const [before, after] = [filesWith(3600), filesWith(4000)];
  const changed = [...before.keys()].filter((path) => before.get(path) !== after.get(path));
  expect(changed).toEqual(["site/assets/rig-list.js", `site/data/${sampleLibrary.rigs[0]!.id}.js`]);
});
