import type { Checked, ContentCheck } from "../../src/checks/check.ts";
import { readLibrary } from "../../src/content/read-library.ts";
import type { Message } from "../../src/model/message.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { makeFigures } from "../../src/words/figures.ts";
import { makeWords } from "../../src/words/words.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

type Changes = Readonly<Record<string, string | null>>;

/** The smallest content with some files changed, as a check sees it. */
export function checkedOf(changes: Changes): Checked {
  const { value: library, messages } = readLibrary(sourcesOf(contentWith(changes)));
  if (!library) throw new Error(JSON.stringify(messages));
  const rigs = library.rigs.flatMap(({ rig }) => {
    const solved = solveRig(rig);
    return solved.ok ? [solved.value] : [];
  });
  const words = makeWords(library.words);
  return { library, rigs, words, figures: makeFigures("metric first", words, "en"), saidFrom: "" };
}

/** The first lesson with this text; its first line is line 8 of the file. */
export function lesson(body: string): Record<string, string> {
  return { "lessons/first.md": lessonFile(1, body) };
}

export function lessonFile(order: number, body: string): string {
  return `---
order: ${order}
part: Start
title: Lesson ${order}
summary: A lesson for tests.
---

${body}
`;
}

/** What a check has to tell of the changed content, each as its place, its code and its values. */
export function toldBy(check: ContentCheck, changes: Changes) {
  return check(checkedOf(changes)).map(brief);
}

export function brief({ place: { file, line, column }, code, values }: Message) {
  return { at: `${file}:${line}:${column}`, code, ...values };
}
