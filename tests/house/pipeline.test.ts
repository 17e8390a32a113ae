import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parseSync, Visitor } from "oxc-parser";
import { expect, test } from "vitest";
import { importsOf } from "../../tools/imports.mjs";

const root = join(import.meta.dirname, "../..");
const read = (path: string) => readFileSync(join(root, path), "utf8");

const pipeline = "src/build/build.ts";
const picture = /^```\n(content\/[\s\S]*?)^```/m.exec(read("DEVELOPERS.md"))![1]!;
/** `──read──▶`: what is done on the way. */
const verbs = [...picture.matchAll(/─(\w+)─+▶/g)].map(([, verb]) => verb!);
/** `data (JSON)`: what is made of it. */
const made = [...picture.matchAll(/(\w+) \([A-Z]+(?:, [A-Z]+)*\)/g)].map(([, name]) => name!);

/** Functions of other files that the pipeline calls, in the order in which they stand. */
function calls(): string[] {
  const imported = new Set(importsOf(root, pipeline).flatMap(({ names }) => names ?? []));
  const found: { readonly name: string; readonly at: number }[] = [];
  new Visitor({
    CallExpression({ callee, start }) {
      if (callee.type === "Identifier" && imported.has(callee.name))
        found.push({ name: callee.name, at: start });
    },
  }).visit(parseSync(pipeline, read(pipeline)).program);
  return found.sort((a, b) => a.at - b.at).map(({ name }) => name);
}

/** What the pipeline calls and is no stage. */
const helpers = ["hasErrors", "withoutConsequences", "withPlace", "stageDone"];

test("the picture at the head of DEVELOPERS.md names the calls of the pipeline, in their order", () => {
  const [write, ...before] = verbs.toReversed();
  // Who builds writes: the pipeline gives files, and the command line puts them on the disk.
  expect(write).toBe("write");
  expect(read("src/cli/build-anew.ts")).toMatch(/output\.replace\(\S*outputFiles\(/);
  const stages = [...before.toReversed(), ...made];
  expect(stages.length).toBeGreaterThan(6);
  const stageOf = (name: string) => stages.find((stage) => name.startsWith(stage)) ?? name;
  const called = calls()
    .filter((name) => !helpers.includes(name))
    .map(stageOf);
  expect(called.filter((stage, at) => stage !== called[at - 1])).toEqual(stages);
});
