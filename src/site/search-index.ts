import type { View } from "../../templates/pages/view.ts";
import { sitePaths } from "../model/addresses.ts";
import type { SearchEntry } from "../model/search-entry.ts";
import type { SiteInput } from "./input.ts";
import { inOrderOfNeed } from "./kept-at-once.ts";
import type { Page } from "./page.ts";
import { sectionsOf } from "./sections.ts";
import { viewOf } from "./view.ts";

/** Room for the sections that a phone searches without a signal, whatever size the guide is [characters]. */
const roomOfFirst = 600_000;

type Section = Omit<SearchEntry, "id">;

interface SearchScripts {
  readonly first: string;
  /** Sections of pages that a phone needs less, where they are too many for it; else of none. */
  readonly rest: string;
  readonly isWhole: boolean;
}

/**
 * The pages' sections, and words that mean the same, as scripts that set globals: opened from disk, a page may load a
 * script but fetch nothing.
 */
export function searchScripts(pages: readonly Page[], input: SiteInput): SearchScripts {
  const found = new Map(pages.map((page) => [page, sectionsOfPage(page, input)]));
  const inFirst = new Set<Page>();
  let left = roomOfFirst;
  for (const page of inOrderOfNeed(pages, input.library)) {
    left -= JSON.stringify(found.get(page)).length;
    if (left >= 0) inFirst.add(page);
  }
  const of = (isFirst: boolean) =>
    pages.flatMap((page) => (inFirst.has(page) === isFirst ? (found.get(page) ?? []) : []));
  const [first, rest] = [of(true), of(false)];
  const numbered = (sections: readonly Section[], from: number): SearchEntry[] =>
    sections.map((section, at) => ({ id: from + at, ...section }));
  const synonyms = JSON.stringify(input.library.synonyms);
  return {
    first: `var dotdownSearch = ${JSON.stringify(numbered(first, 0))}, dotdownSynonyms = ${synonyms};\n`,
    rest: `var dotdownSearchRest = ${JSON.stringify(numbered(rest, first.length))};\n`,
    isWhole: rest.length === 0,
  };
}

function sectionsOfPage(page: Page, input: SiteInput): readonly Section[] {
  const make = () => entriesOf(page, input);
  const { body: _, from, ...told } = page;
  return from === undefined ? make() : input.keptPage("search", [from(), told], make);
}

const weights: Readonly<Record<string, number>> = { [sitePaths.safety]: 1.7, [sitePaths.troubles]: 1.4 };

function entriesOf(page: Page, input: SiteInput): Section[] {
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
const withoutPictures: Partial<View> = {
  drawRig: noPicture,
  drawSink: noPicture,
  drawHang: noPicture,
  drawFloat: noPicture,
  drawFloatChart: noPicture,
  drawKnot: () => [],
  drawSmallRig: noPicture,
  drawSign: noPicture,
  drawFish: () => undefined,
  drawBait: () => undefined,
};
