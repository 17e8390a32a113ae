import type { SearchEntry } from "../model/search-entry.ts";
import type { SiteInput } from "./input.ts";
import type { Page } from "./page.ts";
import { textOf } from "./render.ts";
import { viewOf } from "./view.ts";

/**
 * The pages' words as a script that sets one global: opened from disk, a page may load a script but fetch nothing.
 */
export function searchIndexScript(pages: readonly Page[], input: SiteInput): string {
  const entries: SearchEntry[] = pages.flatMap((page, id) => {
    if (!page.kind) return [];
    return [
      {
        id,
        address: page.path.replace(/^site\//, ""),
        title: page.title,
        summary: page.description,
        kind: input.kit.words(`page.search.kind-${page.kind}`),
        text: textOf(page.body({ ...viewOf(page.path, input), ...withoutPictures })),
      },
    ];
  });
  return `var dotdownSearch = ${JSON.stringify(entries)};\n`;
}

const noPicture = () => "";

/** Pictures say nothing to the search. */
const withoutPictures = {
  drawRig: noPicture,
  drawSink: noPicture,
  drawHang: noPicture,
  drawFloat: noPicture,
  drawKnot: () => [],
};
