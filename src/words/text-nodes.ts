import type { Heading, List, Paragraph, Table, TableRow } from "mdast";
import type { TextTable } from "./tables.ts";

/** Spaces inside a figure with its unit, a count with what is counted, a size: narrow columns break elsewhere. */
const glued = /(?<=\d) (?=(?:mm|cm|m|ft|in|g|kg|lb|s)\b|×)|(?<=×) |(?<=\bNo) (?=\d)/g;

/** A table of words and figures as a part of a text. */
export function tableNode({ head, rows }: TextTable): Table {
  const row = (cells: readonly string[]): TableRow => ({
    type: "tableRow",
    children: cells.map((value) => ({
      type: "tableCell",
      children: [{ type: "text", value: value.replace(glued, "\u00a0") }],
    })),
  });
  return { type: "table", align: head.map(() => null), children: [row(head), ...rows.map(row)] };
}

export const heading = (value: string, depth: 2 | 3 = 2): Heading => ({
  type: "heading",
  depth,
  children: [{ type: "text", value }],
});

export const paragraph = (value: string): Paragraph => ({
  type: "paragraph",
  children: [{ type: "text", value }],
});

/** What is to be seen first. */
export const strongParagraph = (value: string): Paragraph => ({
  type: "paragraph",
  children: [{ type: "strong", children: [{ type: "text", value }] }],
});

export const bullets = (entries: readonly string[]): List => ({
  type: "list",
  ordered: false,
  spread: false,
  children: entries.map((entry) => ({ type: "listItem", spread: false, children: [paragraph(entry)] })),
});
