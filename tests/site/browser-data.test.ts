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

it("leads from the guide's list of rigs to files that there are, in a build as in a page that is made alone", async () => {
  const dataOf = (content: unknown): readonly { data: string }[] =>
    JSON.parse(String(content).slice("var dotdownGuide = ".length, -";\n".length)).rigs;
  const built = new Map((await sampleFiles()).map(({ path, content }) => [path, content]));
  const list = [...built.keys()].find((path) => path.startsWith("site/assets/guide-data."))!;
  const site = await sampleSite();
  const alone = siteFile("site/assets/guide-data.js", site)!;
  expect(dataOf(alone.content).length).toBeGreaterThan(1);
  for (const { data } of dataOf(built.get(list))) expect(built.has(`site/${data}`), data).toBe(true);
  for (const { data } of dataOf(alone.content)) expect(siteFile(`site/${data}`, site), data).toBeDefined();
});
