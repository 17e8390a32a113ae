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
