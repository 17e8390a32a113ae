import type { Link, Paragraph, Parents, PhrasingContent } from "mdast";
import { toString as textOf } from "mdast-util-to-string";
import { type Message, message } from "../model/message.ts";
import { positionOf } from "../model/source-position.ts";
import { visit } from "../model/visit.ts";
import { type ContentCheck, toldOnce } from "./check.ts";
import { formsOf } from "./glossary-forms.ts";
import { pageTexts } from "./texts.ts";

/** More words than this are a sentence with weight on it, not a term. */
const termWordsMax = 3;

/**
 * Terms that a text brings in and the glossary does not have. A term is what is emphasised inside a sentence
 * (`we call it **dead depth**`) or leads to the glossary. Bold words at the start of a paragraph, with a full stop, or
 * of more than three words are something else.
 */
export const unexplainedTerms: ContentCheck = (checked) => {
  const { library } = checked;
  const known = new Set(library.glossary.flatMap(formsOf));
  const tell = toldOnce(checked, "unexplained terms", [...known], ({ path, body }) => {
    const messages: Message[] = [];
    visit(body, "paragraph", (paragraph: Paragraph) => {
      visit(paragraph, (node, index, parent) => {
        if (!isTerm(node as PhrasingContent, index, parent as Parents)) return;
        const term = textOf(node);
        if (known.has(term.toLowerCase())) return;
        const { line, column } = positionOf(node).start;
        messages.push(message("term-not-explained", { file: path, line, column }, { term }));
      });
    });
    return messages;
  });
  return pageTexts(library).flatMap(tell);
};

function isTerm(node: PhrasingContent, index: number | undefined, parent: Parents | undefined): boolean {
  if (node.type === "link") return /(?:^|\/)glossary\.(?:html|yaml)#/.test((node as Link).url);
  if (node.type !== "emphasis" && node.type !== "strong") return false;
  const text = textOf(node);
  const starts = index === 0 && parent?.type === "paragraph";
  return !starts && !/[.!?:,]$/.test(text) && !/\d/.test(text) && text.split(/\s+/).length <= termWordsMax;
}
