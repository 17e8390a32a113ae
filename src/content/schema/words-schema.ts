import type { WordTree } from "../../model/word-tree.ts";
import type { JsonSchema } from "./as-json-schema.ts";
import { gapNotes, groupNote } from "./word-notes.ts";

const empty: JsonSchema = { type: "null" };

/** The schema of a file of words for editors: every key, with its English sentence. What is empty is not written yet. */
export function wordsJsonSchema(english: WordTree): JsonSchema {
  return { description: "Fixed words of pages and cards.", ...groupOf(english, "") };
}

function groupOf(tree: WordTree, path: string): JsonSchema {
  const properties = Object.entries(tree).map(([key, below]) => {
    const at = `${path}${key}`;
    if (typeof below === "string") return [key, sentenceOf(at, below)] as const;
    const description = groupNote(at);
    const anyOf = [groupOf(below, `${at}.`), empty];
    return [key, { ...(description !== undefined && { description }), anyOf }] as const;
  });
  return { type: "object", properties: Object.fromEntries(properties), additionalProperties: false };
}

function sentenceOf(key: string, english: string): JsonSchema {
  return { description: [english, ...gapNotes(key, english)].join("\n"), anyOf: [{ type: "string" }, empty] };
}
