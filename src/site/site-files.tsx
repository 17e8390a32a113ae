import { Shell } from "../../templates/pages/shell.tsx";
import type { OutputFile } from "../markup/output.ts";
import { sitePaths } from "../model/addresses.ts";
import { digestOf } from "../model/digest.ts";
import { fingerprintOf } from "../model/fingerprint.ts";
import { once } from "../model/kept.ts";
import { browserData } from "./browser-data.ts";
import { stampedPath } from "./file-hash.ts";
import { imageFiles } from "./images.ts";
import type { SiteInput } from "./input.ts";
import { listings } from "./listings.tsx";
import { iconFiles, lentSignsStyle, ownStyle } from "./look.ts";
import { manifest, OfflineList } from "./offline.ts";
import type { Page } from "./page.ts";
import { pagesOf } from "./pages.tsx";
import { renderDocument } from "./render.ts";
import { searchIndexScript } from "./search-index.ts";
import { viewOf } from "./view.ts";

/** Every file of the site, below `site/`. */
export async function* siteFiles(given: SiteInput): AsyncIterable<OutputFile> {
  const pages = pagesOf(given);
  const { files, input } = loadedFiles(pages, given);
  const offline = new OfflineList(input);
  const later = new Set(onDemand.map((path) => input.stamped?.get(path) ?? path));
  for (const page of pages) if (page.onDemand) later.add(page.path);
  const keep = (file: OutputFile) => (later.has(file.path) ? offline.addOnDemand(file) : offline.add(file));
  for (const file of files) {
    keep(file);
    yield file;
  }
  for (const file of pageFiles(pages, input, offline)) {
    keep(file);
    yield file;
  }
  yield* listings(pages, input);
  yield offline.serviceWorker(input.assets.get(workerAsset) ?? "");
}

/** One file of the site, made without the others; what it leads to has plain names. */
export function siteFile(path: string, input: SiteInput): OutputFile | undefined {
  const pages = pagesOf(input);
  const page = pages.find((one) => one.path === path);
  if (page) return fileOf(page, input, 0);
  if (path === searchIndexPath) return { path, content: searchIndexScript(pages, input) };
  return [...assetFiles(input), manifest(input)].find((file) => file.path === path);
}

/** Too large to keep on a phone before anybody asks for it. */
const onDemand = [sitePaths.licences, sitePaths.asset("try.js")];

const iconAsset = "icon.svg";
const searchIndexPath = sitePaths.asset("search-index.js");
const workerAsset = "service-worker.js";

/**
 * What pages load. Scripts and the style sheet stand under names that hold their hash: a page that is open while a new
 * edition comes finds those it was made for, or none, and never those of the other.
 */
function loadedFiles(pages: readonly Page[], input: SiteInput): { files: OutputFile[]; input: SiteInput } {
  const plain = [...assetFiles(input), { path: searchIndexPath, content: searchIndexScript(pages, input) }];
  const stamped = new Map(
    plain.filter(({ path }) => /\.(?:js|css)$/.test(path)).map((file) => [file.path, stampedPath(file)]),
  );
  const files = plain.map(({ path, content }) => ({ path: stamped.get(path) ?? path, content }));
  return { files, input: { ...input, stamped } };
}

/** Style sheet, fonts, scripts and their data, pictures and icon. */
function assetFiles(input: SiteInput): readonly OutputFile[] {
  const assets = [...input.assets].flatMap(([name, content]) => {
    if (name === workerAsset || name === iconAsset) return [];
    return { path: sitePaths.asset(name), content: assetOf(name, content, input) };
  });
  return [...assets, ...browserData(input), ...imageFiles(input.images), ...iconFiles(input)];
}

/** An asset in the guide's own colours, where it has any. */
function assetOf(name: string, content: string | Uint8Array, { library: { guide }, lentSigns }: SiteInput) {
  if (name !== "site.css") return content;
  const lent = lentSigns ? `${lentSignsStyle(lentSigns)}\n` : "";
  return `${content}\n${lent}${ownStyle(guide)}\n`;
}

function* pageFiles(pages: readonly Page[], input: SiteInput, offline: OfflineList): Iterable<OutputFile> {
  const pageFile = (page: Page) => fileOf(page, input, offline.bytes);
  const isHome = ({ path }: Page) => path === sitePaths.home;
  for (const page of pages.filter((one) => !isHome(one))) yield pageFile(page);
  yield manifest(input);
  // The first page tells how much a phone keeps, so it comes last.
  for (const page of pages.filter(isHome)) yield pageFile(page);
}

/** A page as a file; where it is kept, it is read only once somebody asks what is in it. */
function fileOf(page: Page, input: SiteInput, keptBytes: number): OutputFile {
  const make = () => renderPage(page, input, keptBytes);
  const { body: _, from, ...told } = page;
  const { path } = page;
  if (from === undefined) return { path, content: make() };
  const scripts = page.scripts?.map((name) => input.stamped?.get(sitePaths.asset(name)));
  const all = digestOf(from, told, scripts, aroundPages(input));
  const html = once(() => input.keptPage("html", all, make));
  return {
    path,
    known: input.keptPage("html, told", all, () => fingerprintOf(html())),
    get content() {
      return html();
    },
  };
}

const around = new WeakMap<SiteInput, string>();

/** Head, menu and foot, as a page without anything of its own has them: whatever they are made from shows in them. */
function aroundPages(input: SiteInput): string {
  const path = sitePaths.lesson("");
  const made =
    around.get(input) ?? renderPage({ path, title: "", description: "", body: () => "" }, input, 0);
  around.set(input, made);
  return made;
}

function renderPage(page: Page, input: SiteInput, keptBytes: number): string {
  const view = { ...viewOf(page.path, input), keptBytes };
  return renderDocument(
    <Shell
      view={view}
      title={page.title}
      description={page.description}
      section={page.section}
      scripts={page.scripts ?? []}
      preview={page.preview}
      isUnlisted={page.isUnlisted}
    >
      {page.body(view)}
    </Shell>,
  );
}
