import { Shell } from "../../templates/pages/shell.tsx";
import { paletteCss } from "../drawing/palette.ts";
import type { OutputFile } from "../markup/output.ts";
import { sitePaths } from "../model/addresses.ts";
import { browserData } from "./browser-data.ts";
import type { SiteInput } from "./input.ts";
import { listings } from "./listings.tsx";
import { manifest, OfflineList } from "./offline.ts";
import type { Page } from "./page.ts";
import { pagesOf } from "./pages.tsx";
import { renderDocument } from "./render.ts";
import { searchIndexScript } from "./search-index.ts";
import { viewOf } from "./view.ts";

/** Every file of the site, below `site/`. */
export async function* siteFiles(input: SiteInput): AsyncIterable<OutputFile> {
  const offline = new OfflineList(input);
  const pages = pagesOf(input);
  for (const file of shownFiles(pages, input, offline)) {
    if (!onDemand.has(file.path)) offline.add(file);
    yield file;
  }
  yield* listings(pages, input);
  yield offline.serviceWorker(input.assets.get(workerAsset) ?? "");
}

/** Too large to keep on a phone before anybody asks for it. */
const onDemand = new Set([sitePaths.asset("card.js")]);

const workerAsset = "service-worker.js";

/** What a reader's browser loads, all of it kept for use offline. */
function* shownFiles(pages: readonly Page[], input: SiteInput, offline: OfflineList): Iterable<OutputFile> {
  const pageFile = (page: Page): OutputFile => ({
    path: page.path,
    content: pageHtml(page, input, offline.bytes),
  });
  const isHome = ({ path }: Page) => path === sitePaths.home;
  for (const page of pages.filter((one) => !isHome(one))) yield pageFile(page);
  for (const [name, content] of input.assets) {
    if (name === workerAsset) continue;
    const isStyle = name === "site.css";
    yield { path: sitePaths.asset(name), content: isStyle ? `${content}\n${paletteCss()}\n` : content };
  }
  yield { path: sitePaths.asset("search-index.js"), content: searchIndexScript(pages, input) };
  yield* browserData(input);
  yield manifest(input);
  // The first page tells how much a phone keeps, so it comes last.
  for (const page of pages.filter(isHome)) yield pageFile(page);
}

function pageHtml(page: Page, input: SiteInput, keptBytes: number): string {
  const view = { ...viewOf(page.path, input), keptBytes };
  return renderDocument(
    <Shell
      view={view}
      title={page.title}
      description={page.description}
      section={page.section}
      scripts={page.scripts ?? []}
      preview={page.preview}
    >
      {page.body(view)}
    </Shell>,
  );
}
