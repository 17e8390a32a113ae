// How much the tests notice: changes the sources one place at a time and runs the tests that reach it.
//
//   npm run mutate -- PATH… [--logic 250] [--constants 120] [--seed 1] [--tests tests/core,tests/solve] [--jobs 2]
//     [--budget 60] [--minutes 10] [--again FILE] [--reach FILE]
//
// --logic, --constants  so many of each kind, chosen by chance, the same for the same seed; all without
// --tests               folders of tests to run; without, those that mirror the sources
// --budget              seconds of tests to give each mutant, as they take without one: what nothing has killed by then
//                       lives; all the tests that reach it without
// --minutes             begins no mutant later than this; those done are a smaller sample
// --again               the mutants that live, or took too long, in the results of an earlier run, kept in FILE
//
// --reach               what the tests reach is read from FILE, or written there where there is none: for more runs of
//                       the same sources and tests
//
// Each result is one line on stdout as it comes, the table stands behind the last; progress goes to stderr.
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { eachOf } from "./jobs.mjs";
import { instrumented } from "./mutants.mjs";
import { testsReaching } from "./reach.mjs";
import { openIn, resultLine, table } from "./results.mjs";

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    logic: { type: "string", default: "Infinity" },
    constants: { type: "string", default: "Infinity" },
    seed: { type: "string", default: "1" },
    tests: { type: "string" },
    jobs: { type: "string", default: "2" },
    budget: { type: "string", default: "Infinity" },
    minutes: { type: "string", default: "Infinity" },
    again: { type: "string" },
    reach: { type: "string" },
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
const chosen =
  options.again === undefined ? sampled(mutants) : openIn(readFileSync(options.again, "utf8"), mutants);

// Everything that the tests write goes in here, and is gone at the end.
const folder = mkdtempSync(join(tmpdir(), "mutants-"));
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
const env = { ...process.env, MUTATE: JSON.stringify({ paths }), TMPDIR: folder };
const jobs = { count: Number(options.jobs), env };

const testFolders = options.tests?.split(",") ?? mirrors(sources);
const tests = testsReaching(sources).filter((path) =>
  testFolders.some((folder) => path.startsWith(`${folder}/`)),
);
say(
  `${chosen.length} of ${mutants.length} mutants in ${sources.length} files; ${tests.length} test files reach them`,
);
const reach = inOrder(await knownReach());
tell(`\n${table(await runAll(chosen))}`);
process.exit(0);

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

/** What each test file reaches, as an earlier run has found it or as it is found now. */
async function knownReach() {
  const { reach: path } = options;
  if (path && existsSync(path)) return JSON.parse(readFileSync(path, "utf8"));
  const found = await reachOf(tests);
  if (path) writeFileSync(path, JSON.stringify(found));
  return found;
}

async function reachOf(files) {
  const found = [];
  await eachOf(files, jobs, async (file, run, at) => {
    const reachedPath = join(folder, `reached-${at}.json`);
    const from = performance.now();
    if ((await run({ mutant: 0, reachedPath, files: [resolve(file)] }, 600)) !== "passes") {
      say(`${file} fails without any mutant and is left out`);
      return;
    }
    const seconds = (performance.now() - from) / 1000;
    say(`${file} takes ${seconds.toFixed(1)} s`);
    found.push({ file, seconds, reached: JSON.parse(readFileSync(reachedPath, "utf8")) });
  });
  return found;
}

/** For each mutant the test files that run it: its file's own tests, then the quickest first. */
function inOrder(reach) {
  const found = new Map();
  for (const { file, seconds, reached } of reach) {
    for (const id of reached) found.set(id, [...(found.get(id) ?? []), { file, seconds }]);
  }
  for (const [id, list] of found) {
    const { path } = mutants[id - 1];
    const own = (file) =>
      file.replace(/^tests/, "src").replace(/\.test\.tsx?$/, "") === path.replace(/\.tsx?$/, "");
    list.sort((a, b) => Number(own(b.file)) - Number(own(a.file)) || a.seconds - b.seconds);
  }
  return found;
}

function withinBudget(files) {
  let spent = 0;
  return files.filter(({ seconds }, at) => {
    spent += seconds;
    return at === 0 || spent <= Number(options.budget);
  });
}

async function runAll(list) {
  const done = [];
  const endsAt = performance.now() + 60_000 * Number(options.minutes);
  await eachOf(list, jobs, async (mutant, run) => {
    if (performance.now() > endsAt) return;
    const reached = withinBudget(reach.get(mutant.id) ?? []);
    const limitS = 10 + 2 * reached.reduce((sum, { seconds }) => sum + seconds, 0);
    const job = { mutant: mutant.id, reachedPath: "", files: reached.map(({ file }) => resolve(file)) };
    const outcome = reached.length === 0 ? "not reached" : await run(job, limitS);
    const fate = { passes: "lives", fails: "killed" }[outcome] ?? outcome;
    done.push({ ...mutant, fate });
    tell(resultLine({ ...mutant, fate }));
    if (done.length % 25 === 0) say(`${done.length} of ${list.length}`);
  });
  return done;
}
