import { posix } from "node:path";
import rehypeSlug from "rehype-slug";
import remarkRehype from "remark-rehype";
import { unified } from "unified";
import { visit } from "unist-util-visit";
import { pageOfContent, sitePaths, termId } from "../model/addresses.ts";
import type { Library, MarkdownText, Prose } from "../model/library.ts";
import { type Message, message, type Place } from "../model/message.ts";
import { allTexts } from "./texts.ts";

/** Links between texts of the content that lead to no page or to no place on it: each is an error at its link. */
export function checkLinks(library: Library): readonly Message[] {
  const pages = pagesOf(library);
  return allTexts(library).flatMap((text) => {
    const messages: Message[] = [];
    visit(text.body, ["link", "definition"], (node) => {
      if (node.type !== "link" && node.type !== "definition") return;
      const { line, column } = node.position!.start;
      const wrong = wrongLink(node.url, text, pages, { file: text.path, line, column });
      if (wrong) messages.push(wrong);
    });
    return messages;
  });
}

/** Anchors by page; every page that the site will have is there. */
type Pages = ReadonlyMap<string, ReadonlySet<string>>;

function wrongLink(url: string, text: MarkdownText, pages: Pages, place: Place): Message | undefined {
  if (/^[a-z]+:/i.test(url)) return undefined;
  const own = contentPath(text.path);
  const [file = "", anchor] = url.split("#");
  const target = file === "" ? own : posix.join(posix.dirname(own), file);
  const [page, entry] = (pageOfContent(target) ?? "").split("#") as [string, string?];
  const anchors = pages.get(page);
  const unknown = (what: string, found: string, allowed: Iterable<string>) =>
    message("unknown-name", place, { what, found, allowed: [...allowed].sort() });
  if (!anchors) {
    const folder = posix.dirname(target);
    const near = [...pages.keys()].map((known) => posix.relative("site", known));
    const siblings = near.filter((known) => posix.dirname(known) === (folder === "pages" ? "." : folder));
    const names = siblings.map((known) => posix.basename(known, ".html"));
    return names.length > 0
      ? unknown(`page in ${folder}`, posix.basename(target).replace(/\.\w+$/, ""), names)
      : message("bad-link", place, { link: url });
  }
  const wanted = anchor ?? entry;
  if (wanted === undefined || wanted === "" || anchors.has(wanted)) return undefined;
  return unknown(`place on the page ${posix.basename(page)}`, wanted, anchors);
}

/** Path below the content folder: the last folder and the file. */
function contentPath(path: string): string {
  return posix.join(posix.basename(posix.dirname(path)), posix.basename(path));
}

function pagesOf(library: Library): Pages {
  const fixed = Object.values(sitePaths).filter((path) => typeof path === "string");
  const pages = new Map<string, Set<string>>(fixed.map((path) => [path, new Set()]));
  const add = (path: string, anchors: readonly string[]) => {
    pages.set(path, new Set([...(pages.get(path) ?? []), ...anchors]));
  };
  const ids = (entries: readonly { readonly id: string }[]) => entries.map(({ id }) => id);
  for (const lesson of library.lessons) add(sitePaths.lesson(lesson.id), headingIds(lesson, ""));
  for (const rig of library.rigs) add(sitePaths.rig(rig.id), headingIds(rig, "notes-"));
  for (const page of library.pages) add(sitePaths.page(page.id), headingIds(page, ""));
  add(sitePaths.floats, ids(library.floats));
  add(sitePaths.shot, ids(library.scales));
  add(sitePaths.baits, ids(library.baits.map(({ bait }) => bait)));
  add(sitePaths.knots, ids(library.knots));
  add(sitePaths.fish, ids(library.species));
  add(
    sitePaths.glossary,
    library.glossary.map(({ term }) => termId(term)),
  );
  return pages;
}

/** Ids that the headings of a text get on its page. */
function headingIds({ body }: Prose, prefix: string): readonly string[] {
  const tree = unified().use(remarkRehype).use(rehypeSlug, { prefix }).runSync(structuredClone(body));
  const ids: string[] = [];
  visit(tree, "element", ({ properties }) => {
    if (properties.id !== undefined) ids.push(String(properties.id));
  });
  return ids;
}
