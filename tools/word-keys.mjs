// Reads the words file and writes the type of its keys, so that the compiler knows every word that can be asked for.
import { readFileSync, writeFileSync } from "node:fs";
import { parse } from "yaml";

const keysOf = (tree, path) =>
  Object.entries(tree).flatMap(([key, value]) =>
    typeof value === "string" ? [`${path}${key}`] : keysOf(value, `${path}${key}.`),
  );

const keys = keysOf(parse(readFileSync("content/words/en.yaml", "utf8")), "").sort();
const lines = keys.map((key) => `  | ${JSON.stringify(key)}`);
writeFileSync(
  "src/words/word-key.ts",
  `// Made by tools/word-keys.mjs from content/words/en.yaml.\n\n/** Path of a sentence in a words file. */\nexport type WordKey =\n${lines.join("\n")};\n`,
);
