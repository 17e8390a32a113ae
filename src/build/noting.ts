import { digestOnce } from "../model/digest.ts";
import type { Library } from "../model/library.ts";
import type { LiveRigs } from "../words/live/references.ts";
import type { TableKit } from "../words/table-kit.ts";
import type { WordKey } from "../words/word-key.ts";
import { sentenceIn, type Words } from "../words/words.ts";
import { kitSaying } from "./kit-of.ts";

/** What was asked for as something was made, as it was then: sentences of the words, and digests of rigs. */
export interface Asked {
  readonly words: ReadonlyMap<WordKey, string | undefined>;
  readonly rigs: ReadonlyMap<string, string | undefined>;
}

/** Words, figures and rigs of a guide, which note what is asked of them. */
interface Noting {
  readonly kit: TableKit;
  readonly rigs: LiveRigs;
  /** Makes something, and gives what that asked for. */
  noted<T>(make: () => T): { readonly made: T; readonly asked: Asked };
  /** Whether all that was asked for is as it was. */
  stands(asked: Asked): boolean;
}

export function noting(library: Pick<Library, "guide" | "words">, words: Words, rigs: LiveRigs): Noting {
  const sentence = (key: WordKey) => sentenceIn(library.words, key);
  const digest = (id: string) => {
    const solved = rigs.get(id);
    // The sums of a rig follow from the rig.
    return solved && digestOnce(solved.rig);
  };
  let asked = nothingAsked();
  const note = (id: string) => asked.rigs.set(id, digest(id));
  const noteAll = () => {
    for (const id of rigs.keys()) note(id);
  };
  const notingWords: Words = (key, values) => {
    asked.words.set(key, sentence(key));
    return words(key, values);
  };
  return {
    kit: kitSaying(notingWords, library.guide),
    rigs: {
      get: (id) => {
        note(id);
        return rigs.get(id);
      },
      keys: () => {
        noteAll();
        return rigs.keys();
      },
      values: () => {
        noteAll();
        return rigs.values();
      },
    },
    noted: (make) => {
      asked = nothingAsked();
      return { made: make(), asked };
    },
    stands: (before) =>
      [...before.words].every(([key, said]) => sentence(key) === said) &&
      [...before.rigs].every(([id, was]) => digest(id) === was),
  };
}

const nothingAsked = () => ({
  words: new Map<WordKey, string | undefined>(),
  rigs: new Map<string, string | undefined>(),
});
