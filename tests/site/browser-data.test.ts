import { expect, it } from "vitest";
import type { Library } from "../../src/model/library.ts";
import { browserData } from "../../src/site/browser-data.ts";
import { sampleLibrary } from "./sample-site.ts";

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
