import type { Root } from "hast";
import rehypeStringify from "rehype-stringify";
import { unified } from "unified";
import type { Child } from "../markup/jsx-runtime.ts";
import { toHast } from "./to-hast.ts";

const writer = unified().use(rehypeStringify, { allowDangerousHtml: true });

/** An element tree as a whole HTML document. */
export function renderDocument(html: Child): string {
  const tree: Root = { type: "root", children: [{ type: "doctype" }, ...toHast(html)] };
  return `${writer.stringify(tree)}\n`;
}

/** The words of an element tree, for the search; what is marked `data-unsearched` would only drown them. */
export function textOf(child: Child): string {
  const parts: string[] = [];
  const walk = (node: ReturnType<typeof toHast>[number]) => {
    if (node.type === "text") parts.push(node.value);
    if (node.type === "element" && node.properties["data-unsearched"] === undefined) {
      node.children.forEach(walk);
    }
  };
  toHast(child).forEach(walk);
  return parts.join(" ").replace(/\s+/g, " ").trim();
}
