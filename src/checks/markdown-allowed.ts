import type { Nodes } from "mdast";
import { toString as textOf } from "mdast-util-to-string";
import { type Message, message, type Place } from "../model/message.ts";
import type { LeftOut } from "../model/message-table.ts";
import { onceOfText } from "../model/once-of-text.ts";
import { positionOf } from "../model/source-position.ts";
import { visit } from "../model/visit.ts";

/** What Markdown has and page or paper have not; `messages.ts` says of each what to write instead. */
function leftOut(node: Nodes): LeftOut | undefined {
  switch (node.type) {
    case "html":
      return isComment(node.value) ? undefined : "html";
    case "footnoteReference":
    case "footnoteDefinition":
      return "footnote";
    case "delete":
      return "struck out";
    case "listItem":
      return typeof node.checked === "boolean" ? "box to tick" : undefined;
    case "containerDirective":
      return "container";
    case "paragraph":
      return /^\|.*\|\n\|.*\|/.test(textOf(node)) ? "table without its line" : undefined;
    default:
      return undefined;
  }
}

/** A note to other authors, which no reader sees. */
export function isComment(html: string): boolean {
  return /^(?:<!--(?:(?!-->)[\s\S])*-->\s*)+$/.test(html.trim());
}

/**
 * Markdown that a page or a handout could not show, each an error at its place: HTML,
 * footnotes, struck-out words, boxes to tick, tables that are none, and headings of more than two levels. The rest of CommonMark and the
 * tables of GFM are for both alike.
 */
export const checkMarkdown = onceOfText(({ path, body }): readonly Message[] => {
  const messages: Message[] = [];
  const placeOf = (node: Nodes): Place => {
    const { line, column } = positionOf(node).start;
    return { file: path, line, column };
  };
  let highest: number | undefined;
  visit(body, (node) => {
    const construct = leftOut(node);
    if (construct !== undefined) messages.push(message("markdown-left-out", placeOf(node), { construct }));
    if (node.type !== "heading") return;
    highest ??= node.depth;
    if (node.depth < highest || node.depth > highest + 1) {
      const values = { found: "#".repeat(node.depth), highest: "#".repeat(highest) };
      messages.push(message("heading-level", placeOf(node), values));
    }
  });
  return messages;
});
