// Reads the words file and writes the type of its keys, so that the compiler knows every word that can be asked for, and
// the gaps of each sentence, so that an author's own words can be held against them.
import { readFileSync, writeFileSync } from "node:fs";
import { parse } from "yaml";

const sentencesOf = (tree, path) =>
  Object.entries(tree).flatMap(([key, value]) =>
    typeof value === "string" ? [[`${path}${key}`, value]] : sentencesOf(value, `${path}${key}.`),
  );

const made = "// Made by tools/word-keys.mjs from content/words/en.yaml.\n\n";
const sentences = sentencesOf(parse(readFileSync("content/words/en.yaml", "utf8")), "").sort();
const keys = sentences.map(([key]) => `  | ${JSON.stringify(key)}`);
writeFileSync(
  "src/words/word-key.ts",
  `${made}/** Path of a sentence in a words file. */\nexport type WordKey =\n${keys.join("\n")};\n`,
);
const gaps = sentences.map(([key, sentence]) => {
  const names = [...sentence.matchAll(/\{(\w+)(?:\}|, plural,)/g)].map(([, gap]) => gap);
  return `  ${JSON.stringify(key)}: ${JSON.stringify([...new Set(names)])},`;
});
writeFileSync(
  "src/words/word-gaps.ts",
  `${made}/** Gaps of each sentence, which the tool fills. */\nexport const wordGaps: Readonly<Record<string, readonly string[]>> = {\n${gaps.join("\n")}\n};\n`,
);
