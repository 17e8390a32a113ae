import { Shell } from "../../templates/pages/shell.tsx";
import type { KeptOnPhone } from "../../templates/pages/view.ts";
import type { Child } from "../markup/jsx-runtime.ts";
import type { OutputFile } from "../markup/output.ts";
import { sitePaths } from "../model/addresses.ts";
import { digestOf } from "../model/digest.ts";
import { fingerprintOf } from "../model/fingerprint.ts";
import { rigListName } from "../model/guide-data.ts";
import type { InOrder } from "../model/in-order.ts";
import { once } from "../model/kept.ts";
import { namedFiles } from "../model/named-files.ts";
import { browserData } from "./browser-data.ts";
import { stampedPath, toldOfFile } from "./file-hash.ts";
import { imageFiles } from "./images.ts";
import type { SiteInput } from "./input.ts";
import { inOrderOfNeed } from "./kept-at-once.ts";
import { loadedBy, withHashes, withoutHashes } from "./late-hashes.ts";
import { listings } from "./listings.tsx";
import { iconFiles, lentSignsStyle, ownStyle } from "./look.ts";
import { manifest, OfflineList } from "./offline.ts";
import type { Page } from "./page.ts";
import { pagesOf } from "./pages.tsx";
import { renderDocument } from "./render.ts";
import { searchScripts } from "./search-index.ts";
import { toHast } from "./to-hast.ts";
import { viewOf } from "./view.ts";

/** Every file of the site, below `site/`. */
export async function* siteFiles(given: SiteInput): AsyncIterable<OutputFile> {
  const pages = pagesOf(given);
  const { files, input, later } = loadedFiles(pages, given);
  const offline = new OfflineList(input);
  for (const file of files) {
    offline.addLoaded(file, !later.has(file.path) && !goesWithPages.test(file.path));
    yield file;
  }
  const webManifest = manifest(input);
  offline.addLoaded(webManifest, true);
  yield webManifest;
  yield* pageFiles(pages, input, offline);
  yield* listings(pages, input);
  yield offline.serviceWorker(input.assets.get(workerAsset) ?? "");
}

/** Makes pages for what is kept of them alone, in an order of its own. */
export function pagesAhead(given: SiteInput, inOrder: InOrder): void {
  const loaded = [...assetFiles(given).map(({ path }) => path), ...searchPaths].filter(isStamped);
  const input = withoutHashes({ ...given, stamped: new Map(loaded.map((path) => [path, path])) });
  for (const page of inOrder(pagesOf(given))) unhashedPage(page, input)?.html() ?? renderPage(page, input);
}

/** Draws every page for what it lacks alone: nothing is written of it. */
export function tryPages(input: SiteInput): void {
  for (const page of pagesOf(input)) {
    const draw = () => void toHast(pageTree(page, input));
    const from = page.drawnFrom ?? page.from;
    if (from === undefined) draw();
    else input.tried([page.path, from()], draw);
  }
}

/** One file of the site, made without the others; what it leads to has plain names. */
export function siteFile(path: string, input: SiteInput): OutputFile | undefined {
  const pages = pagesOf(input);
  const page = pages.find((one) => one.path === path);
  if (page) return fileOf(page, input);
  const isSearch = searchPaths.some((one) => one === path);
  const files = isSearch
    ? searchFiles(pages, input).files
    : [...assetFiles(input, ({ path }) => path), manifest(input)];
  return files.find((file) => file.path === path);
}

/** For few readers. */
const seldomAsked = [
  sitePaths.licences,
  ...[rigListName, "try.js", "soundings.js", "choose.js", "choosing-data.js"].map(sitePaths.asset),
];

/** Files that only some pages need: a rig's figures, pictures of the guide's own. */
const goesWithPages = /^site\/(?:data|images)\//;

const iconAsset = "icon.svg";
const searchPaths = [sitePaths.asset("search-index.js"), sitePaths.asset("search-rest.js")] as const;
const workerAsset = "service-worker.js";

/** Whether a file that pages load has a hash in its name. */
const isStamped = (path: string) => /\.(?:js|css)$/.test(path);

/** What pages load, and which of it a phone keeps no sooner than somebody asks for it. */
interface LoadedFiles {
  readonly files: readonly OutputFile[];
  readonly later: ReadonlySet<string>;
  readonly input: SiteInput;
}

/**
 * What pages load. Scripts and the style sheet stand under names that hold their hash: a page that is open while a new
 * edition comes finds those it was made for, or none, and never those of the other. The list of rigs stands under a name without one,
 * too: who loads it so has to see whether it is of this edition.
 */
function loadedFiles(pages: readonly Page[], input: SiteInput): LoadedFiles {
  const search = searchFiles(pages, input);
  const plain = [...assetFiles(input), ...search.files];
  const stamped = new Map(
    plain.filter(({ path }) => isStamped(path)).map((file) => [file.path, stampedPath(file)]),
  );
  const nameOf = (path: string) => stamped.get(path) ?? path;
  return {
    files: [
      ...plain.map(({ path, content }) => ({ path: nameOf(path), content })),
      ...plain.filter(({ path }) => path === sitePaths.asset(rigListName)),
    ],
    later: new Set([...seldomAsked, ...search.later].map(nameOf)),
    input: { ...input, stamped },
  };
}

/** What the search looks through; where it is too much for a phone, a part of it waits. */
function searchFiles(pages: readonly Page[], input: SiteInput) {
  const { first, rest, isWhole } = searchScripts(pages, input);
  const [firstPath, restPath] = searchPaths;
  return {
    files: [
      { path: firstPath, content: first },
      { path: restPath, content: rest },
    ],
    later: isWhole ? [] : [restPath],
  };
}

/** Style sheet, fonts, scripts and their data, pictures and icon. */
function assetFiles(input: SiteInput, addressOf?: (file: OutputFile) => string): readonly OutputFile[] {
  const assets = [...input.assets].flatMap(([name, content]) => {
    if (name === workerAsset || name === iconAsset) return [];
    return { path: sitePaths.asset(name), content: assetOf(name, content, input) };
  });
  return [
    ...assets,
    ...browserData(input, addressOf),
    ...choosingFile(input),
    ...imageFiles(input.images),
    ...iconFiles(input),
  ];
}

/** What the page to choose rigs by has of the guide, as a script that sets one global. */
const choosingFile = ({ choosing }: SiteInput): readonly OutputFile[] =>
  choosing === undefined
    ? []
    : [
        {
          path: sitePaths.asset("choosing-data.js"),
          content: `var dotdownChoosing = ${JSON.stringify(choosing)};\n`,
        },
      ];

/** An asset in the guide's own colours, where it has any. */
function assetOf(name: string, content: string | Uint8Array, { library: { guide }, lentSigns }: SiteInput) {
  if (name !== "site.css") return content;
  const lent = lentSigns ? `${lentSignsStyle(lentSigns)}\n` : "";
  return `${content}\n${lent}${ownStyle(guide)}\n`;
}

/** Those that tell what a phone keeps come last. */
function* pageFiles(pages: readonly Page[], input: SiteInput, offline: OfflineList): Iterable<OutputFile> {
  const tells = (page: Page) => page.path === sitePaths.home || page.path === sitePaths.onThisPhone;
  const make = (page: Page, phone?: KeptOnPhone) => {
    const file = fileOf(page, input, phone);
    offline.addPage(file, file.names);
    return file;
  };
  for (const page of pages.filter((one) => !tells(one))) yield make(page);
  const telling = pages.filter(tells);
  const untold = offline.told(0);
  const toCome = telling.reduce((sum, page) => sum + toldOfFile(fileOf(page, input, untold)).sizeBytes, 0);
  offline.choose(inOrderOfNeed(pages, input.library), toCome);
  const phone = offline.told(toCome);
  for (const page of telling) yield make(page, phone);
}

interface PageFile extends OutputFile {
  /** Files that go with it, below the site. */
  readonly names: readonly string[];
}

/** A page as a file; where it is kept, it is read only once somebody asks what is in it. */
function fileOf(page: Page, input: SiteInput, phone?: KeptOnPhone): PageFile {
  const { path } = page;
  const namesIn = (html: string) => [...namedFiles(html)];
  // Hashes of what it loads are put in at last: a change of a script changes them on all pages.
  const unhashed = unhashedPage(page, withoutHashes(input), phone);
  if (!unhashed) {
    const content = renderPage(page, input, phone);
    return { path, content, names: namesIn(content) };
  }
  const { all, html: kept } = unhashed;
  const loads = input.keptPage("html, loads", all, () => loadedBy(kept()));
  const html = once(() => withHashes(kept(), input));
  const names = loads.map((one) => input.stamped?.get(one));
  const told = input.keptPage("html, told", digestOf(all, names), () => ({
    known: fingerprintOf(html()),
    names: namesIn(html()),
  }));
  return {
    path,
    ...told,
    get content() {
      return html();
    },
  };
}

/** A page that is kept, and what stands for all that it is made from. */
function unhashedPage(page: Page, unhashed: SiteInput, phone?: KeptOnPhone) {
  const { body: _, from, ...others } = page;
  if (from === undefined) return undefined;
  const all = digestOf(from(), others, aroundPages(unhashed));
  const html = once(() => unhashed.keptPage("html", all, () => renderPage(page, unhashed, phone)));
  return { all, html };
}

const around = new WeakMap<SiteInput, string>();

/** Head, menu and foot, as a page without anything of its own has them: whatever they are made from shows in them. */
function aroundPages(input: SiteInput): string {
  const path = sitePaths.lesson("");
  const made = around.get(input) ?? renderPage({ path, title: "", description: "", body: () => "" }, input);
  around.set(input, made);
  return made;
}

const renderPage = (page: Page, input: SiteInput, phone?: KeptOnPhone): string =>
  renderDocument(pageTree(page, input, phone));

function pageTree(page: Page, input: SiteInput, phone?: KeptOnPhone): Child {
  const view = { ...viewOf(page.path, input), ...(phone && { phone }) };
  return (
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
    </Shell>
  );
}
