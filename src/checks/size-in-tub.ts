import { withId } from "../core/lists.ts";
import type { Tub } from "../core/tackle/shot.ts";
import type { Library, MarkdownText } from "../model/library.ts";
import { type Message, message, type Place } from "../model/message.ts";
import { blocksOf, sentencesOf } from "./blocks.ts";
import { type ContentCheck, toldOnce } from "./check.ts";
import { shotNames } from "./shot-names.ts";

/** A sentence that tells its reader to do something with a shot, which must then be at hand. */
const acts =
  /\b(?:add|put|pinch|use|hang|clip|squeeze|take\s(?:off|on|one|a|the|two)|slide|move|swap|change)\b/i;

interface Sentence {
  readonly text: string;
  placeAt(offset: number): Place;
}

/** The shot that a reader of some sentences has. */
interface Box {
  readonly title: string;
  readonly tub: Tub;
}

/**
 * Sizes of shot that a reader is told to use and does not have: a rig's text goes by the rig's tub, every other by the
 * guide's. Sizes that are only spoken of must be in one of the guide's tubs.
 */
export const sizeInTub: ContentCheck = (checked) => {
  const { library } = checked;
  const names = shotNames(withId(library.scales, library.guide.scaleId));
  const own = withId(library.tubs, library.guide.tubId);
  const any: Box = { title: "all tubs", tub: library.tubs.flatMap(({ tub }) => tub) };
  const boxOf = ({ rig }: Library["rigs"][number]): Box =>
    library.tubs.find(({ tub }) => tub === rig.tub) ?? own;
  const lacking = (sentences: readonly Sentence[], box: Box) =>
    sentences.flatMap((sentence) => notIn(sentence, acts.test(sentence.text) ? box : any, names));
  const inBody = <T extends MarkdownText>(boxFor: (text: T) => Box) =>
    toldOnce<T>(
      checked,
      "sizes in no tub",
      [names.source, any],
      (text) => lacking(sentencesIn(text.body, text.path), boxFor(text)),
      boxFor,
    );
  const inRig = inBody(boxOf);
  return [
    ...[...library.lessons, ...library.pages].flatMap(inBody(() => own)),
    ...library.troubles.flatMap(({ causes, remedies, place }) =>
      lacking(
        [...causes, ...remedies].map((text) => ({ text, placeAt: () => place })),
        own,
      ),
    ),
    ...library.rigs.flatMap((entry) => {
      const listed = (["use-when", "not-when", "change-first"] as const).flatMap((key) =>
        entry[listOf[key]].map((text, at) => ({ text, placeAt: () => entry.placeOf([key, at]) })),
      );
      return [...lacking(listed, boxOf(entry)), ...inRig(entry)];
    }),
  ];
};

const listOf = { "use-when": "useWhen", "not-when": "notWhen", "change-first": "changeFirst" } as const;

function sentencesIn(body: Library["lessons"][number]["body"], path: string): readonly Sentence[] {
  return blocksOf(body, path).flatMap((block) =>
    sentencesOf(block).map(({ at, text }) => ({ text, placeAt: (offset) => block.placeAt(at + offset) })),
  );
}

function notIn({ text, placeAt }: Sentence, { title, tub }: Box, names: RegExp): readonly Message[] {
  const allowed = [...new Set(tub.map(({ size }) => size))];
  return [...text.matchAll(names)].flatMap(({ 2: found, index }) => {
    const size = found!.replace(/\s/, " ");
    return allowed.includes(size)
      ? []
      : [message("size-in-no-tub", placeAt(index), { size, tub: title, allowed })];
  });
}
