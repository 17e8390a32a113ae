import type { Heading, Link, List, Paragraph, PhrasingContent, Strong, Table, TableRow, Text } from "mdast";
import type { TextTable } from "./tables.ts";

/** Spaces inside a figure with its unit, a count with what is counted, a size: narrow columns break elsewhere. */
const glued = /(?<=\d) (?=(?:mm|cm|m|ft|in|g|kg|lb|s)\b|×)|(?<=×) |(?<=\bNo) (?=\d)/g;

const plain = (value: string): Text => ({ type: "text", value });

/** A table of words and figures as a part of a text. */
export function tableNode({ head, rows }: TextTable): Table {
  const row = (cells: readonly string[]): TableRow => ({
    type: "tableRow",
    children: cells.map((value) => ({
      type: "tableCell",
      children: [plain(value.replace(glued, "\u00a0"))],
    })),
  });
  return { type: "table", align: head.map(() => null), children: [row(head), ...rows.map(row)] };
}

export const heading = (value: string, depth: 2 | 3 | 4 = 2): Heading => ({
  type: "heading",
  depth,
  children: [plain(value)],
});

export const paragraph = (...children: readonly (string | PhrasingContent)[]): Paragraph => ({
  type: "paragraph",
  children: children.map((child) => (typeof child === "string" ? plain(child) : child)),
});

export const strong = (value: string): Strong => ({ type: "strong", children: [plain(value)] });

/** What is to be seen first. */
export const strongParagraph = (value: string): Paragraph => paragraph(strong(value));

export const link = (url: string, value: string): Link => ({ type: "link", url, children: [plain(value)] });

export const bullets = (points: readonly (string | Paragraph)[]): List => list(points, false);

export const numbered = (points: readonly (string | Paragraph)[]): List => list(points, true);

function list(points: readonly (string | Paragraph)[], ordered: boolean): List {
  const paragraphs = points.map((point) => (typeof point === "string" ? paragraph(point) : point));
  return {
    type: "list",
    ordered,
    spread: false,
    children: paragraphs.map((point) => ({ type: "listItem", spread: false, children: [point] })),
  };
}
