import type { Root } from "mdast";
import { entry } from "../core/lists.ts";
import { digestOf, digestOnce } from "../model/digest.ts";
import { makeAnew } from "../model/kept.ts";
import type { Library } from "../model/library.ts";
import { literal } from "../model/literal.ts";
import { message } from "../model/message.ts";
import { visit } from "../model/visit.ts";
import type { WordTree } from "../model/word-tree.ts";
import type { ContentCheck } from "./check.ts";
import { formsOf } from "./glossary-forms.ts";
import { allTexts } from "./texts.ts";

/** Words of the glossary that stand nowhere else, in no text, card or table and in no other word's meaning. */
export const unusedTerms: ContentCheck = ({ library, keep = makeAnew }) => {
  const { glossary } = library;
  const lent = new Set(library.lent.values());
  if (glossary.every(({ place }) => lent.has(place.file))) return [];
  const forms = glossary.map(
    (term) => new RegExp(`(?<![\\p{L}\\d])(?:${formsOf(term).map(literal).join("|")})(?![\\p{L}\\d])`, "u"),
  );
  const inGlossary = digestOf(forms.map(String));
  const usedIn = (of: object, words: () => string): readonly number[] =>
    keep("terms in a text", digestOf(inGlossary, digestOnce(of)), () => {
      const text = words()
        .replace(/[ \n]+/g, " ")
        .toLowerCase();
      return forms.flatMap((form, at) => (form.test(text) ? [at] : []));
    });
  const entries = wordsOfEntries(library);
  const used = new Set([
    ...allTexts(library).flatMap(({ body }) => usedIn(body, () => wordsOf(body))),
    ...usedIn(entries, () => entries.join("\n")),
    ...Object.values(library.words).flatMap((group) =>
      usedIn({ group }, () => sentencesOf({ group }).join("\n")),
    ),
  ]);
  const meanings = glossary.map(({ meaning }) => meaning.toLowerCase());
  return glossary.flatMap(({ term, place }, at) => {
    const isMeant = () => meanings.some((meaning, other) => other !== at && entry(forms, at).test(meaning));
    return used.has(at) || isMeant() ? [] : [message("term-not-used", place, { term })];
  });
};

/** All that readers see of the content but for its texts, its fixed words, and the glossary itself. */
function wordsOfEntries(library: Library): readonly string[] {
  const { lessons, pages, floats, rigs, baits, species, troubles, scales, knots } = library;
  return [
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
