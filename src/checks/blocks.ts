import type { Nodes, Paragraph, Root } from "mdast";
import { last } from "../core/lists.ts";
import type { Place } from "../model/message.ts";
import { placeAfter, positionOf } from "../model/source-position.ts";
import { EXIT, SKIP, visit } from "../model/visit.ts";

/** A paragraph or a table cell: words that are read in one go. */
export interface Block {
  readonly kind: "paragraph" | "list item" | "table cell";
  /** Its words; a live figure in a sentence is one character, `liveFigure`. */
  readonly text: string;
  /** Place of a character of the text; 0 is the start of the block. */
  placeAt(offset: number): Place;
}

/** Stands in a block's text for a figure that the tool puts in. */
export const liveFigure = "\uFFFC";

/** The blocks of a text in order: no headings, no code, no directives that stand alone. */
export function blocksOf(body: Nodes, file: string): readonly Block[] {
  const blocks: Block[] = [];
  visit(body, (node, _, parent) => {
    if (node.type === "heading" || node.type === "leafDirective") return SKIP;
    if (node.type !== "paragraph" && node.type !== "tableCell") return;
    const kind =
      node.type === "tableCell" ? "table cell" : parent?.type === "listItem" ? "list item" : "paragraph";
    blocks.push(blockOf(node, kind, file));
    return SKIP;
  });
  return blocks;
}

function blockOf(block: Paragraph | Nodes, kind: Block["kind"], file: string): Block {
  const left = positionOf(block).start.column;
  const pieces: { at: number; text: string; line: number; column: number }[] = [];
  let text = "";
  visit(block, (node) => {
    const figure = node.type === "textDirective" && node.children.length === 0;
    const piece = figure ? liveFigure : "value" in node ? String(node.value) : "";
    if (piece !== "") pieces.push({ at: text.length, text: piece, ...positionOf(node).start });
    text += piece;
  });
  return {
    kind,
    text,
    placeAt(offset) {
      const piece = pieces.findLast(({ at }) => at <= offset);
      if (!piece) return { file, line: positionOf(block).start.line, column: left };
      return { file, ...placeAfter(piece.text, offset - piece.at, piece, left) };
    },
  };
}

/** Sentences of a block with where each starts. A figure's decimal point ends none. */
export function sentencesOf({
  text,
}: Pick<Block, "text">): readonly { readonly at: number; readonly text: string }[] {
  return [...text.matchAll(/\S[\s\S]*?(?:[.!?](?=\s|$)|$)/g)].map(({ 0: sentence, index }) => ({
    at: index,
    text: sentence,
  }));
}

/** The parts of a text between its headings. */
export function sectionsOf(body: Root): readonly Root[] {
  const sections: Root["children"][] = [[]];
  for (const node of body.children) {
    if (node.type === "heading") sections.push([]);
    last(sections).push(node);
  }
  return sections.filter((children) => children.length > 0).map((children) => ({ type: "root", children }));
}

/** Whether a text has a node that a test holds for. */
export function hasNode(body: Nodes, test: (node: Nodes) => boolean): boolean {
  let found = false;
  visit(body, (node) => {
    found ||= test(node);
    return found ? EXIT : undefined;
  });
  return found;
}
