import type { PhrasingContent } from "mdast";
import { last } from "../../src/core/lists.ts";
import { Inline } from "../../src/markup/boxes.ts";
import type { Child, Element } from "../../src/markup/jsx-runtime.ts";

/**
 * Words with single spaces, none of which parts a figure from its unit at the end of a line: `10 cm`, `3 ft`, `No 8`,
 * `2 × BB`. What joins signs stays.
 */
export function boundText(text: string): string {
  return text
    .replace(/[^\S\uFEFF]+/g, " ")
    .replace(
      /(?<=[\d¼½¾]) (?=(?:mm|cm|m|km|g|kg|ml|l|s|min|h|ft|in|lb|oz|pt|%|°C|×)(?![\p{L}\d]))/gu,
      "\u00A0",
    )
    .replace(/(?<=\bNo) (?=\d)|(?<=×) /gu, "\u00A0");
}

/** The words of a paragraph, heading or cell in their faces, with their links. */
export function inline(nodes: readonly PhrasingContent[]): Child {
  return nodes.map((node): Element | string => {
    switch (node.type) {
      case "text":
      case "inlineCode":
        return boundText(node.value);
      case "strong":
        return <Inline face="bold">{inline(node.children)}</Inline>;
      case "emphasis":
        return <Inline face="italic">{inline(node.children)}</Inline>;
      case "link":
        return <Inline link={node.url}>{inline(node.children)}</Inline>;
      case "basisSign":
        return <Inline spoken={node.spoken}>{node.sign}</Inline>;
      case "break":
        return " ";
      case "html":
        return "";
      default:
        throw new Error(`no way to print a "${node.type}" in a line`);
    }
  });
}

/** The words of a paragraph as its author broke them into lines. */
export function linesOf(nodes: readonly PhrasingContent[]): PhrasingContent[][] {
  const lines: PhrasingContent[][] = [[]];
  for (const node of nodes) {
    if (node.type === "break") lines.push([]);
    else last(lines).push(node);
  }
  return lines;
}
