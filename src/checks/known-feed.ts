import type { Library } from "../model/library.ts";
import { message } from "../model/message.ts";
import type { ContentCheck } from "./check.ts";

const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/\p{L}+/gu) ?? [];

/** A word without its plural's ending. */
const stem = (word: string) => word.replace(/e?s$/, "");

/** Every word by which the guide knows something to eat: its baits, and what its glossary and synonyms explain. */
function knownWords({ baits, glossary, synonyms }: Library): ReadonlySet<string> {
  const named = [
    ...baits.flatMap(({ bait }) => [bait.id, bait.title]),
    ...glossary.flatMap(({ term, also }) => [term, ...also]),
    ...synonyms.flat(),
  ];
  return new Set(named.flatMap(wordsOf).map(stem));
}

/** Feed of which the guide has not heard in any of its words. */
export const knownFeed: ContentCheck = ({ library }) => {
  const known = knownWords(library);
  const baits = library.baits.map(({ bait }) => bait.title.toLowerCase());
  return library.rigs.flatMap(({ rig, placeOf }) =>
    wordsOf(rig.feed.what).some((word) => known.has(stem(word)))
      ? []
      : [message("unknown-feed", placeOf(["feed", "what"]), { feed: rig.feed.what, baits })],
  );
};
