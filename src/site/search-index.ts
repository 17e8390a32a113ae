import { sitePaths } from "../model/addresses.ts";
import type { SearchEntry } from "../model/search-entry.ts";
import type { SiteInput } from "./input.ts";
import type { Page } from "./page.ts";
import { sectionsOf } from "./render.ts";
import { viewOf } from "./view.ts";

/**
 * The pages' sections, and words that mean the same, as a script that sets two globals: opened from disk, a page may load
 * a script but fetch nothing.
 */
export function searchIndexScript(pages: readonly Page[], input: SiteInput): string {
  const entries = pages.flatMap((page) => {
    const make = () => entriesOf(page, input);
    const { body: _, from, ...told } = page;
    return from === undefined ? make() : input.keptPage("search", [from, told], make);
  });
  const numbered: SearchEntry[] = entries.map((entry, id) => ({ id, ...entry }));
  const synonyms = JSON.stringify(input.library.synonyms);
  return `var dotdownSearch = ${JSON.stringify(numbered)}, dotdownSynonyms = ${synonyms};\n`;
}

const weights: Readonly<Record<string, number>> = { [sitePaths.safety]: 1.7, [sitePaths.troubles]: 1.4 };

function entriesOf(page: Page, input: SiteInput): Omit<SearchEntry, "id">[] {
  const { kind, title } = page;
  if (!kind) return [];
  const file = page.path.replace(/^site\//, "");
  const body = page.body({ ...viewOf(page.path, input), ...withoutPictures });
  return sectionsOf(body)
    .filter(({ heading, text }) => heading !== "" || text !== "")
    .map(({ anchor, heading, text }) => ({
      address: anchor === undefined ? file : `${file}#${anchor}`,
      title,
      heading: heading || title,
      kind: input.kit.words(`page.search.kind-${kind}`),
      text,
      ...(weights[page.path] !== undefined && { weight: weights[page.path] }),
    }));
}

const noPicture = () => "";

/** Pictures say nothing to the search. */
const withoutPictures = {
  drawRig: noPicture,
  drawSink: noPicture,
  drawHang: noPicture,
  drawFloat: noPicture,
  drawKnot: () => [],
  drawSmallRig: () => "",
  drawSign: noPicture,
  drawFish: () => undefined,
  drawBait: () => undefined,
};
