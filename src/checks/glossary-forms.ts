import type { Term } from "../model/library.ts";

/** Every way a word of the glossary may be written, in small letters: itself, its other forms, and their plurals. */
export function formsOf({ term, also, unlinked }: Term): readonly string[] {
  return [term, ...also, ...unlinked].flatMap((form) => {
    const one = form.toLowerCase();
    return [one, plural(one)];
  });
}

function plural(word: string): string {
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}ies`;
  return /(?:s|x|z|ch|sh)$/.test(word) ? `${word}es` : `${word}s`;
}
