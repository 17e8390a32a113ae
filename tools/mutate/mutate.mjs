// How much the tests notice: changes the sources one place at a time and runs the tests that reach it.
//
//   npm run mutate -- src/core/float src/solve [--sample 200] [--seed 1] [--only logic|constant] [--tests tests/core,tests/solve]
//     [--jobs 2]
import { fork } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { instrumented } from "./mutants.mjs";
import { testsReaching } from "./reach.mjs";

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    sample: { type: "string" },
    seed: { type: "string", default: "1" },
    only: { type: "string" },
    tests: { type: "string" },
    jobs: { type: "string", default: "2" },
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
const chosen = sampled(mutants.filter(({ kind }) => options.only === undefined || kind === options.only));

const folder = mkdtempSync(join(tmpdir(), "mutants-"));
const env = { ...process.env, MUTATE: JSON.stringify({ paths }) };
const testFolders = options.tests?.split(",") ?? mirrors(sources);
const tests = testsReaching(sources).filter((path) =>
  testFolders.some((folder) => path.startsWith(`${folder}/`)),
);
say(
  `${chosen.length} of ${mutants.length} mutants in ${sources.length} files; ${tests.length} test files reach them`,
);

const reach = await reachOf(tests);
const results = await runAll(chosen);
report(results);
rmSync(folder, { recursive: true });
process.exit(0);

/** The folders of tests that hold these sources: their own rooms, and for the sums what is made of them. */
function mirrors(paths) {
  const rooms = new Set(paths.map((path) => `tests/${path.split("/")[1]}`));
  if (rooms.has("tests/core")) rooms.add("tests/solve");
  return [...rooms];
}

/** Progress goes to stderr, results to stdout. */
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

/** A part of the mutants by chance, the same for the same seed. */
function sampled(all) {
  if (options.sample === undefined) return all;
  let state = Number(options.seed) >>> 0;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  return all
    .map((mutant) => ({ mutant, at: next() }))
    .sort((a, b) => a.at - b.at)
    .slice(0, Number(options.sample))
    .map(({ mutant }) => mutant)
    .sort((a, b) => a.id - b.id);
}

/** A process that runs test files; one that does not answer in time is ended. */
function worker() {
  let child;
  const start = () =>
    new Promise((done) => {
      child = fork("tools/mutate/worker.mjs", { env, stdio: ["ignore", "ignore", "ignore", "ipc"] });
      child.once("message", done);
    });
  return {
    async run(job, limitS) {
      if (!child?.connected) await start();
      return new Promise((done) => {
        const timer = setTimeout(() => {
          child.removeAllListeners("message");
          child.kill("SIGKILL");
          child = undefined;
          done({ passes: false });
        }, 1000 * limitS);
        child.once("message", (answer) => {
          clearTimeout(timer);
          done(answer);
        });
        child.send(job);
      });
    },
    stop: () => child?.kill("SIGKILL"),
  };
}

/** For each mutant the test files that run it, the quickest first. */
async function reachOf(files) {
  const found = new Map();
  await eachOf(files, async (file, one, at) => {
    const reachedPath = join(folder, `reached-${at}.json`);
    const from = performance.now();
    const { passes, fault } = await one.run({ mutant: 0, reachedPath, files: [resolve(file)] }, 300);
    if (!passes) {
      say(`${file} fails without any mutant and is left out${fault ? `: ${fault}` : ""}`);
      return;
    }
    const seconds = (performance.now() - from) / 1000;
    for (const id of JSON.parse(readFileSync(reachedPath, "utf8"))) {
      found.set(id, [...(found.get(id) ?? []), { file, seconds }]);
    }
  });
  for (const list of found.values()) list.sort((a, b) => a.seconds - b.seconds);
  return found;
}

/** Does the same with each of a list, in several processes at a time. */
async function eachOf(list, act) {
  const queue = list.map((item, at) => ({ item, at }));
  await Promise.all(
    Array.from({ length: Number(options.jobs) }, async () => {
      const one = worker();
      for (let next = queue.shift(); next; next = queue.shift()) await act(next.item, one, next.at);
      one.stop();
    }),
  );
}

async function runAll(list) {
  const done = [];
  await eachOf(list, async (mutant, one) => {
    const reached = reach.get(mutant.id) ?? [];
    const limitS = 20 + 4 * reached.reduce((sum, { seconds }) => sum + seconds, 0);
    const files = reached.map(({ file }) => resolve(file));
    const lives =
      files.length === 0 || (await one.run({ mutant: mutant.id, reachedPath: "", files }, limitS)).passes;
    done.push({ ...mutant, lives, reached: files.length });
    if (done.length % 25 === 0) say(`${done.length} of ${list.length}`);
  });
  return done.sort((a, b) => a.id - b.id);
}

function report(all) {
  for (const { path, line, kind, was, now, reached } of all.filter(({ lives }) => lives)) {
    tell(`${path}:${line}  ${kind}  ${was}  →  ${now}${reached === 0 ? "  (no test reaches it)" : ""}`);
  }
  const folders = [...new Set(all.map(({ path }) => path.split("/").slice(0, 3).join("/")))];
  tell("\n| where | logic killed | constants killed |\n| --- | --- | --- |");
  for (const where of [...folders, ""]) {
    const here = all.filter(({ path }) => path.startsWith(where));
    const share = (kind) => {
      const of = here.filter((one) => one.kind === kind);
      const killed = of.filter(({ lives }) => !lives).length;
      return of.length === 0
        ? "–"
        : `${killed} of ${of.length} (${Math.round((100 * killed) / of.length)} %)`;
    };
    tell(`| ${where || "all"} | ${share("logic")} | ${share("constant")} |`);
  }
}
