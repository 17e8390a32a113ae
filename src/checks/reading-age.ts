import { toString as wordOf } from "nlcst-to-string";
import { ParseEnglish } from "parse-english";
import { syllable } from "syllable";
import { message } from "../model/message.ts";
import { visit } from "../model/visit.ts";
import { type Block, blocksOf, liveFigure } from "./blocks.ts";
import { type ContentCheck, toldOnce } from "./check.ts";

/**
 * The grade must stay below this. A reader of 11 to 12 years is in the sixth grade of a school in the USA, whose
 * readers the formula was made for; 6.9 is its last month.
 */
const gradeBelow = 7;

/** Age at which a reader starts a grade: the first grade starts at six. */
const ageOf = (grade: number): number => Math.floor(grade) + 5;

const english = new ParseEnglish();

type Counts = Record<"sentence" | "word" | "syllable", number>;

/** Sentences, words and syllables of an English text. A figure counts as one syllable, however it is read out. */
export function countsOf(text: string): Counts {
  const counts = { sentence: 0, word: 0, syllable: 0 };
  visit(english.parse(text), (node) => {
    if (node.type === "SentenceNode") counts.sentence++;
    if (node.type !== "WordNode") return;
    counts.word++;
    counts.syllable += Math.max(1, syllable(wordOf(node)));
  });
  return counts;
}

/** Whole sentences: paragraphs, and steps of a list that end like a sentence. Tables and short lists are no prose. */
function isProse({ kind, text }: Block): boolean {
  return kind === "paragraph" || (kind === "list item" && /[.!?]$/.test(text.trim()));
}

/**
 * Grade of Flesch and Kincaid. Source: Kincaid, Fishburne, Rogers and Chissom 1975, Research Branch Report 8-75, Naval
 * Technical Training Command.
 */
function gradeOf({ sentence, word, syllable }: Counts): number {
  return 0.39 * (word / sentence) + 11.8 * (syllable / word) - 15.59;
}

/** Lessons that are hard to read for eleven- to twelve-year-olds, with the place of their hardest paragraph. */
export const readingAge: ContentCheck = (checked) =>
  checked.library.lessons.flatMap(
    toldOnce(checked, "reading age", [], ({ path, body }) => {
      const blocks = blocksOf(body, path)
        .filter(isProse)
        .map((block) => ({ block, counts: countsOf(block.text.replaceAll(liveFigure, "some")) }));
      const total = (count: keyof Counts) => blocks.reduce((sum, { counts }) => sum + counts[count], 0);
      const grade = gradeOf({
        sentence: total("sentence"),
        word: total("word"),
        syllable: total("syllable"),
      });
      if (!(grade >= gradeBelow)) return [];
      const hardest = blocks.reduce((a, b) => (gradeOf(b.counts) > gradeOf(a.counts) ? b : a));
      const shown = grade.toFixed(1);
      const values = { grade: shown, age: ageOf(Number(shown)), gradeBelow, ageBelow: ageOf(gradeBelow) };
      return [message("hard-to-read", hardest.block.placeAt(0), values)];
    }),
  );
