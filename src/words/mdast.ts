import type { Heading, List, Paragraph, PhrasingContent, Table } from "mdast";
import type { TextTable } from "./tables.ts";

/** Parts of a text that is made, not written. */
const plain = (value: string): PhrasingContent => ({ type: "text", value });

export const headingOf = (value: string, depth: 2 | 3 = 2): Heading => ({
  type: "heading",
  depth,
  children: [plain(value)],
});

export const paragraphOf = (...children: readonly (string | PhrasingContent)[]): Paragraph => ({
  type: "paragraph",
  children: children.map((child) => (typeof child === "string" ? plain(child) : child)),
});

export const strongOf = (value: string): PhrasingContent => ({ type: "strong", children: [plain(value)] });

export const linkTo = (url: string, value: string): PhrasingContent => ({
  type: "link",
  url,
  children: [plain(value)],
});

/** A list of points, each of them a paragraph. */
export const listOf = (points: readonly Paragraph[], ordered = false): List => ({
  type: "list",
  ordered,
  spread: false,
  children: points.map((point) => ({ type: "listItem", spread: false, children: [point] })),
});

export const tableOf = ({ head, rows }: TextTable): Table => ({
  type: "table",
  children: [head, ...rows].map((cells) => ({
    type: "tableRow",
    children: cells.map((cell) => ({ type: "tableCell", children: [plain(cell)] })),
  })),
});
