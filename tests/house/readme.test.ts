import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { exitCodes } from "../../src/cli/command.ts";
import { commands } from "../../src/cli/run.ts";
import { cli, temporaryFolder, writeContent } from "../support/cli.ts";

const root = join(import.meta.dirname, "../..");
const read = (path: string) => readFileSync(join(root, path), "utf8");

const scripts: Readonly<Record<string, string>> = JSON.parse(read("package.json")).scripts;
const ownCommands = Object.keys(commands);
/** npm's own words that a text may name without a script. */
const npmCommands = ["install", "ci", "pack"];

const helps = new Map<string, string>();
for (const name of ownCommands) helps.set(name, (await cli(name, "--help")).result);

/** What a text tells its reader to type, in order: the commands, and each option with the command it belongs to. */
function* typed(text: string): Generator<{ script: string } | { command: string; option?: string }> {
  let command = "";
  const pattern = new RegExp(
    `npx dotdown (?<own>[\\w-]+)|npm (?:run )?(?<script>[a-z][\\w:]*)|\`(?<named>${ownCommands.join("|")})[ \`]|(?<![\\w-])(?<option>--[a-z][\\w-]*)`,
    "g",
  );
  for (const { groups } of text.matchAll(pattern)) {
    const { own, script, named, option } = groups!;
    if (script) yield { script };
    if (own) yield { command: own };
    command = own ?? script ?? named ?? command;
    if (option) yield { command, option };
  }
}

describe.each(["README.md", "DEVELOPERS.md", "docs/promises.md"])("%s", (name) => {
  const text = read(name);
  const all = [...typed(text)];

  test("names only scripts that there are", () => {
    const named = all.flatMap((entry) => ("script" in entry ? [entry.script] : []));
    expect(named.length).toBeGreaterThan(1);
    expect(named.filter((script) => !(script in scripts || npmCommands.includes(script)))).toEqual([]);
  });

  test("names only commands and options that the command line has", () => {
    const named = all.flatMap((entry) => ("command" in entry ? [entry] : []));
    const missing = named.filter(({ command, option }) => {
      const help = helps.get(command);
      return !help || (option !== undefined && !new RegExp(`${option}(?![\\w-])`).test(help));
    });
    expect(missing).toEqual([]);
  });

  test("names only files that there are", () => {
    const paths = [...text.matchAll(/`(?:bash )?((?:src|tests|templates|tools|content|\.ci)\/[\w./-]*)`/g)];
    expect(paths.map(([, path]) => path!).filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });
});

test("README.md tells of every command", () => {
  const named = [...typed(read("README.md"))].map((entry) => ("command" in entry ? entry.command : ""));
  expect(ownCommands.filter((name) => !named.includes(name))).toEqual([]);
});

test("README.md is read for options at all", () => {
  const options = [...typed(read("README.md"))].filter((entry) => "option" in entry && entry.option);
  expect(options.length).toBeGreaterThan(10);
});

test("the rig shown in README.md is one that the tool takes", async () => {
  const rig = /```markdown\n([\s\S]*?)```/.exec(read("README.md"))![1]!;
  const folder = writeContent(temporaryFolder(), { "rigs/shown.md": rig });
  const { code, report } = await cli(
    "sheet",
    "shown",
    "--content",
    join(root, "content"),
    "--content",
    folder,
  );
  expect({ code, report }).toEqual({ code: 0, report: "" });
});

test("README.md has the table of all exit codes", () => {
  const listed = [...read("README.md").matchAll(/^\| (\d+) \| \S.* \|$/gm)].map(([, code]) => Number(code));
  expect(listed).toEqual(Object.values(exitCodes));
});
