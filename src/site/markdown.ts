import { posix } from "node:path";
import type { Element, ElementContent, Root } from "hast";
import type { Root as MarkdownRoot } from "mdast";
import rehypeSlug from "rehype-slug";
import remarkRehype from "remark-rehype";
import { unified } from "unified";
import { visit } from "unist-util-visit";
import { pageOfContent } from "./paths.ts";

export interface MarkdownOptions {
  /** Path of the Markdown file below the content folder, which its links start from. */
  readonly contentPath: string;
  /** Heading level that the file's highest headings get. */
  readonly level: number;
  /** Put before the ids of headings, where a page holds more than one text. */
  readonly idPrefix: string;
  /** Name of the nth table, for screen readers: it may scroll sideways. */
  readonly tableName: (number: number) => string;
  readonly href: (target: string) => string;
}

/** Markdown as HTML nodes: links lead to pages, headings have ids and fit their place, wide tables scroll alone. */
export function markdownToHast(body: MarkdownRoot, options: MarkdownOptions): ElementContent[] {
  const tree = unified()
    .use(remarkRehype)
    .use(rehypeSlug, { prefix: options.idPrefix })
    .runSync(structuredClone(body)) as Root;
  placeHeadings(tree, options.level);
  let tables = 0;
  visit(tree, "element", (node, index, parent) => {
    if (node.tagName === "a") redirect(node, options);
    if (node.tagName === "table" && parent && index !== undefined) {
      parent.children[index] = scrollBox(node, options.tableName(++tables));
      return "skip";
    }
  });
  return tree.children.filter((node): node is ElementContent => node.type !== "doctype");
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

function redirect(link: Element, { contentPath, href }: MarkdownOptions): void {
  const address = String(link.properties.href ?? "");
  const [path = "", anchor] = address.split("#");
  if (path === "" || /^[a-z]+:/i.test(path)) return;
  const page = pageOfContent(posix.join(posix.dirname(contentPath), path));
  if (page) link.properties.href = href(anchor === undefined ? page : `${page.split("#")[0]}#${anchor}`);
}

function scrollBox(table: Element, name: string): Element {
  const properties = { className: ["scroll"], ariaLabel: name, tabIndex: 0 };
  return { type: "element", tagName: "section", properties, children: [table] };
}
