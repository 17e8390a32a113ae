import { posix } from "node:path";
import { closest, distance } from "fastest-levenshtein";
import type { Heading, Root } from "mdast";
import rehypeSlug from "rehype-slug";
import remarkRehype from "remark-rehype";
import { unified } from "unified";
import { sitePaths, termId } from "../model/addresses.ts";
import { hasPage } from "../model/has-page.ts";
import type { Library, MarkdownText, Prose } from "../model/library.ts";
import { linkSchemes, parseLink } from "../model/links.ts";
import { type Message, message, type Place } from "../model/message.ts";
import { onceOfText } from "../model/once-of-text.ts";
import { positionOf } from "../model/source-position.ts";
import { visit } from "../model/visit.ts";
import { allTexts } from "./texts.ts";

/** Links between texts of the content that lead to no page or to no place on it: each is an error at its link. */
export function checkLinks(library: Library): readonly Message[] {
  const pages = pagesOf(library);
  const changes = library.changes.filter(({ page }) => !pages.has(`site/${page.split("#")[0]}`));
  const gone = changes.map(({ page, place }) => {
    const meant = nearest(page, pages);
    return message("bad-link", place, { link: page, ...(meant !== undefined && { meant }) });
  });
  const wrong = allTexts(library).flatMap((text) =>
    addressesIn(text).flatMap(({ url, place }) => wrongLink(url, text, pages, place) ?? []),
  );
  return [...gone, ...wrong];
}

/** Where the links of a text lead, as it has them. */
export const addressesIn = onceOfText(({ path, body }) => {
  const found: { readonly url: string; readonly place: Place }[] = [];
  visit(body, ["link", "definition"], (node) => {
    if (node.type !== "link" && node.type !== "definition") return;
    const { line, column } = positionOf(node).start;
    found.push({ url: node.url, place: { file: path, line, column } });
  });
  return found;
});

/** Whether a link of a text leads to a page or a place that the guide has not. */
export function leadsNowhere(url: string, text: MarkdownText, pages: Pages): boolean {
  return wrongLink(url, text, pages, { file: text.path }) !== undefined;
}

/** Anchors by page; every page that the site will have is there. */
type Pages = ReadonlyMap<string, ReadonlySet<string>>;

function wrongLink(url: string, text: MarkdownText, pages: Pages, place: Place): Message | undefined {
  const link = parseLink(url, text.path);
  switch (link.kind) {
    case "outside":
      return undefined;
    case "scheme":
      return message("link-scheme", place, { scheme: link.scheme, allowed: linkSchemes });
    case "no address":
      return message("no-address", place, { link: url });
    case "no page":
      return noPage(url, link.folder, link.name.replace(/\.\w+$/, ""), pages, place);
    case "page": {
      const { page, anchor } = link;
      const anchors = pages.get(page);
      if (!anchors) {
        const { dir, name } = posix.parse(posix.relative("site", page));
        return noPage(url, dir === "" ? "pages" : dir, name, pages, place);
      }
      if (anchor === undefined || anchors.has(anchor)) return undefined;
      return unknownName(`place on the page ${posix.basename(page)}`, anchor, anchors, place);
    }
  }
}

/** The page that is typed so but for a slip or two of the finger. */
function nearest(typed: string, pages: Pages): string | undefined {
  const known = [...pages.keys()].map((page) => posix.relative("site", page));
  const near = closest(typed, known);
  return distance(typed, near) <= 2 ? near : undefined;
}

/** A page that is not there: the one of that name elsewhere, or those that are there. */
function noPage(url: string, folder: string, name: string, pages: Pages, place: Place): Message {
  const known = [...pages.keys()].map((page) => posix.parse(posix.relative("site", page)));
  const [typed = ""] = url.replaceAll("\\", "/").split("#");
  const wanted = posix.parse(typed);
  const same = known.find((page) => page.name === wanted.name.toLowerCase());
  const siblings = known.filter(({ dir }) => (dir || "pages") === folder).map((page) => page.name);
  if (/\.(?:md|html)$/.test(typed) && siblings.length > 0 && !(same && same.name === wanted.name))
    return unknownName(`page in ${folder}`, name, siblings, place);
  const meant = same && `../${same.dir || "pages"}/${same.name}.md`;
  return message("bad-link", place, { link: url, ...(meant && { meant }) });
}

function unknownName(what: string, found: string, allowed: Iterable<string>, place: Place): Message {
  return message("unknown-name", place, { what, found, allowed: [...allowed].sort() });
}

export function pagesOf(library: Library): Pages {
  const pages = new Map<string, Set<string>>(fixedPages(library).map((path) => [path, new Set()]));
  const add = (path: string, anchors: readonly string[]) => {
    pages.set(path, new Set([...(pages.get(path) ?? []), ...anchors]));
  };
  const ids = (entries: readonly { readonly id: string }[]) => entries.map(({ id }) => id);
  for (const lesson of library.lessons) add(sitePaths.lesson(lesson.id), headingIds(lesson, ""));
  for (const plan of library.plans) add(sitePaths.plan(plan.id), headingIds(plan, ""));
  for (const rig of library.rigs) add(sitePaths.rig(rig.id), headingIds(rig, "notes-"));
  for (const swim of library.swims) add(sitePaths.swim(swim.id), []);
  for (const page of library.pages) add(sitePaths.page(page.id), headingIds(page, ""));
  add(sitePaths.floats, ids(library.floats));
  add(sitePaths.shot, ids(library.scales));
  add(sitePaths.baits, ids(library.baits.map(({ bait }) => bait)));
  add(sitePaths.knots, ids(library.knots));
  if (pages.has(sitePaths.fish)) add(sitePaths.fish, ids(library.species));
  if (pages.has(sitePaths.glossary))
    add(
      sitePaths.glossary,
      library.glossary.map(({ term }) => termId(term)),
    );
  return pages;
}

/** Pages whose address is the same in every guide, as far as this one has them. */
function fixedPages(library: Library): readonly string[] {
  return (Object.keys(sitePaths) as (keyof typeof sitePaths)[]).flatMap((name) => {
    const path = sitePaths[name];
    return typeof path === "string" && hasPage(library, name) ? [path] : [];
  });
}

/** Ids by their prefix, of texts that stay as they are from one reading to the next. */
const knownIds = new WeakMap<Root, Map<string, readonly string[]>>();

function headingIds({ body }: Prose, prefix: string): readonly string[] {
  const known = knownIds.get(body) ?? new Map<string, readonly string[]>();
  const ids = known.get(prefix) ?? idsOfHeadings(body, prefix);
  knownIds.set(body, known.set(prefix, ids));
  return ids;
}

/** Ids that the headings of a text get on its page. */
function idsOfHeadings(body: Root, prefix: string): readonly string[] {
  const headings: Heading[] = [];
  visit(body, "heading", (node) => {
    headings.push(node);
  });
  const root: Root = { type: "root", children: headings };
  const tree = unified().use(remarkRehype).use(rehypeSlug, { prefix }).runSync(root);
  const ids: string[] = [];
  visit(tree, "element", ({ properties }) => {
    if (properties.id !== undefined) ids.push(String(properties.id));
  });
  return ids;
}
