import type { FrontMatterProblem, MessageValues, TypeFix, YamlProblem } from "../model/message-table.ts";
import type { WordedMessage } from "./worded-message.ts";

const closing: Readonly<Record<string, string>> = { "[": "]", "{": "}" };

/** What is wrong with the way in which keys and values are written, without a word of YAML's own. */
export const yamlWords: Readonly<Record<YamlProblem, (said: string, firstLine?: number) => WordedMessage>> = {
  "no colon": (said) => ({
    reason: `"${said}" is no key with its value: a colon and a space are missing`,
    hint: `write it like ${said.replace(/\s*[=:：]\s*|\s+/, ": ")}`,
  }),
  comment: (said) => ({
    reason: "among the keys, a comment is a line that starts with # and a space",
    hint: `write it like # ${said}`,
  }),
  quotes: (said) => ({
    reason: "this value has signs that mean something else here: it must stand in quotes",
    hint: `write it like ${said}`,
  }),
  "not closed": (said) => ({
    reason: `${said} is not closed`,
    hint: `put a ${closing[said] ?? said} where it ends; what stands behind a space and a # counts for nothing`,
  }),
  comma: () => ({
    reason: "keys between { and }, or entries between [ and ], are not parted by commas",
    hint: "write it like { what: maggots, portion: 10 ml }",
  }),
  indent: () => ({
    reason: "the line does not start below the others of its group",
    hint: "let all keys of a group, and all dashes of a list, start in one column, moved in by spaces",
  }),
  dash: (said) => ({
    reason: "a dash that starts an entry of a list has a space behind it",
    hint: `write it like - ${said.replace(/^-+/, "")}`,
  }),
  tab: () => ({ reason: "the line starts with a tab", hint: "move it in by spaces" }),
  twice: (said, firstLine) => ({
    reason: `"${said}" stands here twice`,
    hint:
      firstLine === undefined
        ? "take one of the two out"
        : `the first stands in line ${firstLine}; take one of the two out, or write what they say in one`,
  }),
  "second document": () => ({
    reason: "a line --- ends the keys before their time",
    hint: "take it out: a .yaml file has keys alone",
  }),
  other: (said) => ({ reason: `this is not YAML: ${said}` }),
};

/** How a text comes to have no keys before it. */
export const frontMatterWords: Readonly<Record<FrontMatterProblem, (first: string) => WordedMessage>> = {
  none: () => ({
    reason: "the file has no front matter",
    hint: "start it with a line ---, then `title: …`, then a line ---",
  }),
  "not closed": () => ({
    reason: "the front matter that starts here has no end",
    hint: "put a line --- below its last key, above the text",
  }),
  "not opened": () => ({
    reason: "the keys have no line --- above them",
    hint: "put one above the first key",
  }),
  "other dashes": (first) => ({
    reason: `the file starts with "${first}" in place of ---`,
    hint: "write three plain dashes, and nothing else in that line",
  }),
  "below something": () => ({
    reason: "something stands above the front matter, an empty line perhaps",
    hint: "let the file start with the line ---",
  }),
};

const typeFixes: Readonly<Record<TypeFix, (typed: string) => string>> = {
  "in quotes": (typed) => `write it in quotes: "${typed}"`,
  "without quotes": (typed) => `write it without quotes: ${typed}`,
  "in brackets": (typed) => `write it in brackets: [${typed}]`,
  "without brackets": (typed) => `write it without brackets: ${typed}`,
  "from and to": (typed) =>
    `write from which to which, in brackets; both may be the same: [${typed}, ${typed}]`,
  "as a group": (typed) => `write it like ${typed}`,
  "as entries": (typed) => `start each entry with a dash and a space: - ${typed}`,
  "behind the colon": () => "write it behind the colon, or take the line out where it need not be said",
  like: (typed) => `write it like ${typed}`,
  "line out": () => "take the line out: where nothing is said, all is taken",
  "colon in quotes": (typed) => `a colon and a space make a key of what stands before them; write "${typed}"`,
  "hash in quotes": (typed) => `what stands behind a # counts for nothing; write "${typed}", if it is meant`,
};

/** A value of another type than its key asks for. */
export function wrongType({ key, expected, found, fix }: MessageValues["wrong-type"]): WordedMessage {
  const reason = `"${key}" should be ${expected}, but is ${found}`;
  return { reason, ...(fix && { hint: typeFixes[fix.by](fix.typed) }) };
}
