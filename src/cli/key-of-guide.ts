import { keyNotes } from "../content/schema/key-notes.ts";

/**
 * What to say to an option that no command has, but `guide.yaml` a key.
 *
 * @param refused what the command line was told of it
 * @returns nothing for any other
 */
export function keyOfGuide(refused: string): string | undefined {
  const [, key] = /^error: unknown option '--([a-z-]+)/.exec(refused) ?? [];
  if (key === undefined || !Object.hasOwn(keyNotes.guide, key)) return undefined;
  return `${key} is a key of guide.yaml, which says it for the whole guide, such as in content/guide.yaml`;
}
