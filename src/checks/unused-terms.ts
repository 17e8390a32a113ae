import type { Root } from "mdast";
import { visit } from "unist-util-visit";
import type { Library } from "../model/library.ts";
import { literal } from "../model/literal.ts";
import { message } from "../model/message.ts";
import type { WordTree } from "../model/word-tree.ts";
import type { ContentCheck } from "./check.ts";
import { formsOf } from "./glossary-forms.ts";
import { allTexts } from "./texts.ts";

/** Words of the glossary that stand nowhere else, in no text, card or table and in no other word's meaning. */
export const unusedTerms: ContentCheck = ({ library }) => {
  const texts = writtenTexts(library)
    .join("\n")
    .replace(/[ \n]+/g, " ")
    .toLowerCase();
  const meanings = library.glossary.map(({ meaning }) => meaning.toLowerCase());
  return library.glossary.flatMap((term, at) => {
    const anyForm = new RegExp(
      `(?<![\\p{L}\\d])(?:${formsOf(term).map(literal).join("|")})(?![\\p{L}\\d])`,
      "u",
    );
    const used =
      anyForm.test(texts) || meanings.some((meaning, other) => other !== at && anyForm.test(meaning));
    return used ? [] : [message("term-not-used", term.place, { term: term.term })];
  });
};

/** All that readers see of the content but for the glossary itself. */
function writtenTexts(library: Library): readonly string[] {
  const { lessons, pages, floats, rigs, baits, species, troubles, scales, knots, words } = library;
  return [
    ...allTexts(library).map(({ body }) => wordsOf(body)),
    ...[...lessons, ...pages, ...floats, ...rigs].flatMap(({ title, summary }) => [title, summary]),
    ...lessons.map(({ part }) => part),
    ...rigs.flatMap(({ useWhen, notWhen, changeFirst, catches }) => [
      ...useWhen,
      ...notWhen,
      ...changeFirst,
      ...catches,
    ]),
    ...rigs.flatMap(({ rig }) => [rig.feed.what, rig.feed.note ?? "", rig.pattern.kind, rig.setting]),
    ...floats.flatMap(({ float, marking }) => [float.kind, marking]),
    ...baits.map(({ bait }) => bait.title),
    ...species.flatMap(({ title, asks }) => [title, asks]),
    ...troubles.flatMap(({ sign, causes, remedies }) => [sign, ...causes, ...remedies]),
    ...scales.flatMap(({ sizes }) => sizes.map(({ name }) => name)),
    ...knots.map(({ title }) => title),
    ...sentencesOf(words),
  ];
}

/** The words of a text, its headings too, each piece apart from the next. */
function wordsOf(body: Root): string {
  const pieces: string[] = [];
  visit(body, "text", ({ value }) => {
    pieces.push(value);
  });
  return pieces.join(" ");
}

function sentencesOf(tree: WordTree): readonly string[] {
  return Object.values(tree).flatMap((node) => (typeof node === "string" ? [node] : sentencesOf(node)));
}
