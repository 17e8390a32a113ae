import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Option } from "commander";
import { fileKinds } from "../content/schema/file-kinds.ts";
import { jsonSchemaOf } from "../content/schema/json-schema.ts";
import type { FileKind } from "../content/schema/key-notes.ts";
import { keyReference } from "../content/schema/key-reference.ts";
import { wordsJsonSchema } from "../content/schema/words-schema.ts";
import { readYaml } from "../content/yaml-source.ts";
import type { WordTree } from "../model/word-tree.ts";
import { type CliCommand, exitCodes, UsageError } from "./command.ts";
import { guideOfThePackage } from "./content-option.ts";
import { reading, writeTrouble } from "./trouble.ts";

export const schemaCommand: CliCommand = {
  name: "schema",
  describe: (command) =>
    command
      .summary("write what each file may hold, for editors")
      .description(
        "Writes a JSON Schema for each kind of file, with what each key means: an editor that knows the standard completes and explains keys with them.",
      )
      .option("--out <folder>", "folder to write them to", "schemas")
      .addOption(new Option("--keys", "list every key as a text to read instead").conflicts("out")),
  async run(_args, options, terminal) {
    if (options.keys) {
      terminal.result(keyReference());
      return exitCodes.fine;
    }
    const out = String(options.out);
    const kinds = (Object.keys(fileKinds) as FileKind[]).map((kind) => [kind, jsonSchemaOf(kind)] as const);
    const files = [...kinds, ["words", wordsJsonSchema(await englishWords())] as const].map(
      ([kind, schema]) => ({
        path: join(out, `${kind}.schema.json`),
        text: `${JSON.stringify({ $comment: mark, ...schema }, null, 2)}\n`,
      }),
    );
    const others = files.find(({ path }) => existsSync(path) && !readFileSync(path, "utf8").includes(mark));
    if (others)
      throw new UsageError(
        `${others.path} is not of dotdown's making and stays as it is; name another folder with --out`,
      );
    try {
      mkdirSync(out, { recursive: true });
      for (const { path, text } of files) writeFileSync(path, text);
    } catch (error) {
      throw writeTrouble(error, out, "what was there before may be in part replaced");
    }
    terminal.result(`${files.length} schemas in ${out}\n`);
    return exitCodes.fine;
  },
};

/** The fixed words as they come with the tool. */
async function englishWords(): Promise<WordTree> {
  const file = join(guideOfThePackage(), "words/en.yaml");
  const text = await reading(file, () => readFileSync(file, "utf8"));
  return readYaml(text, file).data as WordTree;
}

/** Tells the tool's own files from others of the same name. */
const mark = "Made by dotdown schema.";
