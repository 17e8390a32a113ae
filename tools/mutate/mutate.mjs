// How much the tests notice: changes the sources one place at a time and runs the tests that reach it.
//
//   npm run mutate -- PATH… [--logic 250] [--constants 120] [--seed 1] [--tests tests/core,tests/solve] [--budget 300]
//     [--again FILE] [--rest FILE]
//
// --logic, --constants  so many of each kind, chosen by chance, the same for the same seed; all without
// --tests               folders or files of tests to run first; without, those that mirror the sources; then all the others
// --only                no others
// --budget              seconds of tests to give a mutant that they reach outside of tests, each time with the sources
//                       read anew; all the tests that lead to it without
// --again               the mutants that live, or took too long, in the results of an earlier run, kept in FILE
// --rest                those of the sample of which the results of a run that was ended say nothing yet
//
// Each test runs as it is and then with each mutant that it reaches, in one process. What is reached while a file is
// read, or in a hook, is tried afterwards: one mutant after another, with everything read anew.
//
// Numbers that `unseen.mjs` lists are no other figures 5 % away: they count as equivalent, and are not tried.
//
// Each result is one line on stdout as it comes, the table stands behind the last; progress goes to stderr.
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { worker } from "./jobs.mjs";
import { instrumented } from "./mutants.mjs";
import { testsReaching } from "./reach.mjs";
import { openIn, restOf, resultLine, table } from "./results.mjs";
import { tryOn } from "./try-on.mjs";
import { isUnseen } from "./unseen.mjs";

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    logic: { type: "string", default: "Infinity" },
    constants: { type: "string", default: "Infinity" },
    seed: { type: "string", default: "1" },
    tests: { type: "string" },
    only: { type: "boolean", default: false },
    budget: { type: "string", default: "Infinity" },
    again: { type: "string" },
    rest: { type: "string" },
  },
});
if (positionals.length === 0) throw new Error("name files or folders, such as src/core/float");

const sources = positionals
  .flatMap(filesBelow)
  .filter((path) => /\.tsx?$/.test(path) && !/\.d\.ts$/.test(path));
const paths = {};
const mutants = [];
for (const path of sources) {
  const first = mutants.length + 1;
  paths[resolve(path)] = first;
  const found = instrumented(path, readFileSync(path, "utf8"), first).mutants;
  mutants.push(...found.map((mutant) => ({ ...mutant, path })));
}
const chosen = chosenOf(mutants);

// Everything that the tests write goes in here, and is gone at the end.
const folder = mkdtempSync(join(tmpdir(), "mutants-"));
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
const isWithout = (mutant) => isUnseen(mutant, (path) => readFileSync(path, "utf8"));
const wanted = chosen.filter((mutant) => !isWithout(mutant)).map(({ id }) => id);
const job = worker({ ...process.env, MUTATE: JSON.stringify({ paths, wanted }), TMPDIR: folder });

/** The number of none: its tests end at their first failure as with any other. */
const noMutant = -1;
const byId = new Map(chosen.map((mutant) => [mutant.id, mutant]));
const results = [];
const open = () => wanted.filter((id) => byId.has(id));
for (const { id } of chosen.filter(isWithout)) settled(id, "equivalent");
const tests = testsReaching([...new Set(chosen.map(({ path }) => path))]);
const rooms = options.tests?.split(",") ?? mirrors(sources);
const ofRooms = tests.filter((path) => rooms.some((room) => path === room || path.startsWith(`${room}/`)));
const others = options.only ? [] : tests.filter((path) => !ofRooms.includes(path));
say(
  `${chosen.length} of ${mutants.length} mutants in ${sources.length} files; ${ofRooms.length} and ${others.length} test files`,
);
const seen = { seconds: new Map(), inside: new Set(), outside: new Set() };
for (const files of [ofRooms, others]) {
  if (open().length > 0) await tryOn(job, { files, candidates: open(), folder, seen, settle: settled, say });
  for (const id of open().filter((one) => seen.outside.has(one))) await readAnewWith(id, files);
}
for (const id of open()) settled(id, seen.inside.has(id) || seen.outside.has(id) ? "lives" : "not reached");
job.stop();
tell(`\n${table(results)}`);
process.exit(0);

/** Tries a mutant that is reached outside of tests with it on from the start: its file's own tests, then the quickest. */
async function readAnewWith(id, tests) {
  const { path } = byId.get(id);
  const leading = new Set(testsReaching([path]));
  const own = path.replace(/^src/, "tests").replace(/\.tsx?$/, ".test");
  const files = [...seen.seconds]
    .filter(([file]) => tests.includes(file) && leading.has(file))
    .sort(([a, ofA], [b, ofB]) => Number(b.startsWith(own)) - Number(a.startsWith(own)) || ofA - ofB);
  let spent = 0;
  const within = files.filter(([, seconds], at) => {
    spent += seconds;
    return at === 0 || spent <= Number(options.budget);
  });
  if (within.length === 0) return;
  const limitS = 60 + 10 * within.reduce((sum, [, seconds]) => sum + seconds, 0);
  const run = (mutant) =>
    job.run(
      { mutant, candidates: [], journal: "", files: within.map(([file]) => resolve(file)) },
      { limitS: () => limitS },
    );
  const outcome = await run(id);
  if (outcome === "too long") settled(id, outcome);
  // Tests that fail with none on, too, tell nothing of it.
  if (outcome === "fails" && (await run(noMutant)) === "passes") settled(id, "killed");
}

function settled(id, fate) {
  const result = { ...byId.get(id), fate };
  byId.delete(id);
  results.push(result);
  tell(resultLine(result));
}

/** The folders of tests that hold these sources: their own rooms, and for the sums what is made of them. */
function mirrors(paths) {
  const rooms = new Set(paths.map((path) => `tests/${path.split("/")[1]}`));
  if (rooms.has("tests/core")) rooms.add("tests/solve");
  return [...rooms];
}

function say(line) {
  process.stderr.write(`${line}\n`);
}

function tell(line) {
  process.stdout.write(`${line}\n`);
}

function filesBelow(path) {
  if (statSync(path).isFile()) return [path];
  return readdirSync(path, { recursive: true, encoding: "utf8" })
    .map((name) => join(path, name))
    .filter((name) => statSync(name).isFile())
    .sort();
}

function chosenOf(all) {
  if (options.again !== undefined) return openIn(readFileSync(options.again, "utf8"), all);
  const sample = sampled(all);
  return options.rest === undefined ? sample : restOf(readFileSync(options.rest, "utf8"), sample);
}

/** A part of the mutants of each kind by chance, the same for the same seed. */
function sampled(all) {
  let state = Number(options.seed) >>> 0;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  const shuffled = all
    .map((mutant) => ({ mutant, at: next() }))
    .sort((a, b) => a.at - b.at)
    .map(({ mutant }) => mutant);
  const left = { logic: Number(options.logic), constant: Number(options.constants) };
  // In the order of chance, so that a part of them is a sample too.
  return shuffled.filter(({ kind }) => left[kind]-- > 0);
}
