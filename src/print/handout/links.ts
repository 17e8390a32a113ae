import type { Root } from "mdast";
import { first, known } from "../../core/lists.ts";
import type { Item } from "../../drawing/model.ts";
import { joiner } from "../../markup/boxes.ts";
import { publicAddress } from "../../model/addresses.ts";
import type { MarkdownText } from "../../model/library.ts";
import { parseLink } from "../../model/links.ts";
import { visit } from "../../model/visit.ts";
import type { Words } from "../../words/words.ts";
import type { Links, LinkTarget } from "../pdf/pdf-links.ts";
import type { Press } from "../press.ts";

/**
 * A text with each link under the name that documents know it by: the address of another site, or the page of
 * this guide's site that it leads to. Links by reference become plain ones.
 */
export function withLinkNames({ path }: Pick<MarkdownText, "path">, body: Root): Root {
  const named = structuredClone(body);
  const addresses = new Map<string, string>();
  visit(named, "definition", ({ identifier, url }) => {
    if (!addresses.has(identifier)) addresses.set(identifier, url);
  });
  visit(named, "linkReference", ({ identifier, children }, index, parent) => {
    parent!.children[index!] = { type: "link", url: known(addresses, identifier), children };
    return index;
  });
  visit(named, "link", (link) => {
    link.url = nameOf(link.url, path);
  });
  return named;
}

/** A page of the site by its path, with an anchor or not; a way out by its address; nothing for what leads nowhere. */
function nameOf(url: string, path: string): string {
  const link = parseLink(url, path);
  if (link.kind === "outside") return link.address;
  if (link.kind !== "page") return "";
  return link.anchor === undefined ? link.page : `${link.page}#${link.anchor}`;
}

/** The names that a text's links will have, as it is written. */
export function linkNamesOf({ path }: Pick<MarkdownText, "path">, body: Root): readonly string[] {
  const names = new Set<string>();
  visit(body, (node) => {
    if (node.type === "link" || node.type === "definition") names.add(nameOf(node.url, path));
  });
  return [...names];
}

/** The names of a text's links, each once. */
export function linksOf(named: Root): readonly string[] {
  const names = new Set<string>();
  visit(named, "link", ({ url }) => void names.add(url));
  return [...names];
}

/** Those of links that lead to pages of the document. */
export const linksWithin = (links: readonly string[], within: ReadonlySet<string>) =>
  links.filter((name) => within.has(pageOfLink(name)));

/** Stands for the number of a page until that is known: as wide as any number of three figures. */
const unknownPage = "000";

/**
 * A text whose links to pages of the document say on which page that is, with a number to be put in later.
 */
export function withPageMarks(named: Root, within: ReadonlySet<string>, words: Words): Root {
  const marked = structuredClone(named);
  visit(marked, "link", ({ url, children }) => {
    if (!within.has(pageOfLink(url))) return;
    children.push({ type: "text", value: ` ${unbroken(pageMark(unknownPage, words))}` });
  });
  return marked;
}

function pageMark(page: string, words: Words): string {
  return words("handout.at-page", { page });
}

/** A mark that no line ends in, whatever signs and words it has, so that it is found whole once it is set. */
const unbroken = (mark: string) => [...mark].join(joiner);

/**
 * The marks of a text with the numbers of pages, from 0, put in, and what follows on a line moved up to them; without those
 * of what is left out of the document.
 */
export function withPageNumbers(
  items: readonly Item[],
  pages: ReadonlyMap<string, number>,
  press: Pick<Press, "kit" | "fonts">,
): Item[] {
  const { kit, fonts } = press;
  const unknown = pageMark(unknownPage, kit.words);
  let lineMm = Number.NaN;
  let closerMm = 0;
  return items.map((item): Item => {
    if (item.kind === "group") return { ...item, items: withPageNumbers(item.items, pages, press) };
    if (item.kind !== "text") return item;
    if (item.yMm !== lineMm) [lineMm, closerMm] = [item.yMm, 0];
    const { link, text, sizeMm, face } = item;
    const xMm = item.xMm - closerMm;
    if (link === undefined) return closerMm === 0 ? item : { ...item, xMm };
    const page = pages.get(pageOfLink(link));
    const numbered = text.replace(unknown, page === undefined ? "" : pageMark(String(page + 1), kit.words));
    closerMm += fonts.measure(text, sizeMm, face) - fonts.measure(numbered, sizeMm, face);
    return { ...item, xMm, text: numbered };
  });
}

/** What names of links come to in a document: the numbers, from 0, of the pages that they lead to. */
export function pagesLedTo(names: readonly string[], pages: ReadonlyMap<string, number>) {
  return names.map((name) => [name, pages.get(pageOfLink(name))]);
}

/** The page that the name of a link leads to. */
export const pageOfLink = (name: string) => first(name.split("#"));

const isWithin = (name: string) => name.startsWith("site/");

/** What the links of a document lead to. */
interface LinkContext {
  readonly words: Words;
  readonly siteAddress?: string | undefined;
  /** Numbers, from 0, of the pages of the document that pages of the site stand on, by their paths. */
  readonly pages?: ReadonlyMap<string, number>;
}

/** The links of these names; one that leads out of the document and to no site is left out. */
export function linksTo(names: readonly string[], context: LinkContext): Links {
  const targets = [...new Set(names)].map((name) => [name, targetOf(name, context)] as const);
  return new Map(
    targets.flatMap(([name, target]): [string, LinkTarget][] => (target ? [[name, target]] : [])),
  );
}

function targetOf(name: string, { words, siteAddress, pages }: LinkContext): LinkTarget | undefined {
  const page = pages?.get(pageOfLink(name));
  if (page !== undefined) return { page, about: words("handout.link.page", { page: page + 1 }) };
  const address = isWithin(name) ? siteAddress && publicAddress(name, siteAddress) : name;
  return address ? { address, about: words("handout.link.address", { address }) } : undefined;
}
