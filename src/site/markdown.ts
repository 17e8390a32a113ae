import type { Element, ElementContent, Root } from "hast";
import type { Root as MarkdownRoot } from "mdast";
import rehypeSlug from "rehype-slug";
import remarkRehype from "remark-rehype";
import { unified } from "unified";
import type { CaptionedPicture } from "../../templates/pages/view.ts";
import type { BasisSign } from "../model/basis-sign.ts";
import { parseLink } from "../model/links.ts";
import type { FilmReference, ImageReference, PictureNode, PictureReference } from "../model/pictures.ts";
import { visit } from "../model/visit.ts";

export interface MarkdownOptions {
  /** Path of the Markdown file; its last folder says what it is, and its links start from there. */
  readonly path: string;
  /** Heading level that the file's highest headings get. */
  readonly level: number;
  /** Put before the ids of headings, where a page holds more than one text. */
  readonly idPrefix: string;
  /** Name of the next table of the page, for screen readers: it may scroll sideways. */
  readonly nextTableName: () => string;
  readonly href: (target: string) => string;
  /** The drawings of a picture as SVG, with their captions. */
  readonly pictures: (reference: PictureReference, idPrefix: string) => readonly CaptionedPicture[];
  /** A film with its strip and its player. */
  readonly film: (reference: FilmReference, idPrefix: string) => ElementContent[];
  /** A photo, or a drawing of the guide's own. */
  readonly image: (reference: ImageReference) => Element;
  /** Makes words of the glossary links. */
  readonly linkTerms: (tree: Root) => void;
}

/** Markdown as HTML nodes: links lead to pages, headings have ids and fit their place, wide tables scroll alone. */
export function markdownToHast(body: MarkdownRoot, options: MarkdownOptions): ElementContent[] {
  let pictures = 0;
  const picture = (_: unknown, { reference }: PictureNode): ElementContent[] => {
    if (reference.picture === "image") return [figure(options.image(reference), reference.caption)];
    const idPrefix = `${options.idPrefix}picture-${++pictures}`;
    if (reference.picture === "film") return options.film(reference, idPrefix);
    const drawings = options.pictures(reference, idPrefix);
    return drawings.map(({ svg, caption }) => figure({ type: "raw", value: svg }, caption));
  };
  const sign = (_: unknown, node: BasisSign) => basisSign(node, addressOf(node.url, options));
  const tree = unified()
    .use(remarkRehype, { handlers: { picture, basisSign: sign } })
    .use(rehypeSlug, { prefix: options.idPrefix })
    .runSync(withAddresses(body, options)) as Root;
  placeHeadings(tree, options.level);
  options.linkTerms(tree);
  visit(tree, "element", (node, index, parent) => {
    if (node.tagName === "table" && parent && index !== undefined) {
      parent.children[index] = scrollBox(node, options.nextTableName());
      return "skip";
    }
  });
  return tree.children.filter((node): node is ElementContent => node.type !== "doctype");
}

function figure(picture: ElementContent, caption: string | undefined): Element {
  const below = caption === undefined ? [] : [element("figcaption", [{ type: "text", value: caption }])];
  return {
    type: "element",
    tagName: "figure",
    properties: { className: ["picture"] },
    children: [picture, ...below],
  };
}

/** Read out as its name; a click leads to what it means. */
function basisSign({ sign, spoken }: BasisSign, href: string): Element {
  const properties = { className: ["basis"], href, title: spoken, ariaLabel: spoken };
  return { type: "element", tagName: "a", properties, children: [{ type: "text", value: sign }] };
}

function element(tagName: string, children: ElementContent[]): Element {
  return { type: "element", tagName, properties: {}, children };
}

function placeHeadings(tree: Root, level: number): void {
  const headings: Element[] = [];
  visit(tree, "element", (node) => {
    if (/^h[1-6]$/.test(node.tagName)) headings.push(node);
  });
  const highest = Math.min(...headings.map((node) => Number(node.tagName[1])));
  for (const node of headings) {
    node.tagName = `h${Math.min(6, Number(node.tagName[1]) - highest + level)}`;
  }
}

/** A text whose links are addresses as seen from the page. */
function withAddresses(body: MarkdownRoot, options: MarkdownOptions): MarkdownRoot {
  const leading = structuredClone(body);
  visit(leading, ["link", "definition"], (node) => {
    if (node.type === "link" || node.type === "definition") node.url = addressOf(node.url, options);
  });
  return leading;
}

function addressOf(url: string, { path, href }: MarkdownOptions): string {
  const link = parseLink(url, path);
  if (link.kind === "outside") return link.address;
  // Links that lead nowhere are errors of the content, found before any page is made.
  if (link.kind !== "page") return "";
  return href(link.anchor === undefined ? link.page : `${link.page}#${link.anchor}`);
}

function scrollBox(table: Element, name: string): Element {
  const properties = { className: ["scroll"], ariaLabel: name, tabIndex: 0 };
  return { type: "element", tagName: "section", properties, children: [table] };
}
