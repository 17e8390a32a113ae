// How long builds of guides of growing size take: cold, unchanged, and after an edit. `--sizes 19,100,1000` names the numbers
// of rigs, `--lessons 100` of lessons, `--runs 3` how often each is measured, `--json FILE` where the figures go, too.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { figure, machine, median } from "./contest.mjs";
import { edits, writeGuide } from "./write-guide.mjs";

const root = join(import.meta.dirname, "../..");
const tool = join(root, "dist/dotdown.js");
const { values: asked } = parseArgs({
  options: {
    sizes: { type: "string", default: "19,100" },
    lessons: { type: "string", default: "34" },
    runs: { type: "string", default: "3" },
    json: { type: "string" },
  },
});

/** Files that are built anew for each size, so that no run profits from another. */
function measured(folder, { rigs, lessons, seed }) {
  writeGuide(join(folder, "content"), { rigs, lessons, seed });
  const run = () => {
    const report = join(folder, "report.json");
    const args = ["build", "--quiet", "--content", join(folder, "content"), "--out", join(folder, "out")];
    const { status, stderr } = spawnSync(
      process.execPath,
      [join(import.meta.dirname, "measured.mjs"), report, tool, ...args],
      { env: { ...process.env, DOTDOWN_CACHE: join(folder, "kept") }, encoding: "utf8" },
    );
    if (status !== 0) throw new Error(stderr);
    return JSON.parse(readFileSync(report, "utf8"));
  };
  const cold = run();
  const taken = { cold, unchanged: run() };
  for (const [name, edit] of Object.entries(edits)) {
    edit(join(folder, "content"));
    taken[name] = run();
  }
  return taken;
}

/** The median of each figure over all runs, and the least and the most of the time. */
function summed(all) {
  const of = (key) => median(all.map((one) => one[key]));
  const walls = all.map(({ wallS }) => wallS);
  const stages = Object.keys(Object.assign({}, ...all.map(({ stagesS }) => stagesS)));
  return {
    wallS: of("wallS"),
    leastS: Math.min(...walls),
    mostS: Math.max(...walls),
    cpuS: of("cpuS"),
    peakMB: of("peakMB"),
    stagesS: Object.fromEntries(
      stages.map((name) => [name, median(all.map(({ stagesS }) => stagesS[name] ?? 0))]),
    ),
  };
}

const guides = [];
for (const rigs of asked.sizes.split(",").map(Number)) {
  const runs = Array.from({ length: Number(asked.runs) }, (_, seed) => {
    const folder = mkdtempSync(join(tmpdir(), "dotdown-bench-"));
    try {
      return measured(folder, { rigs, lessons: Number(asked.lessons), seed: 1 + seed });
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
  const builds = Object.fromEntries(
    Object.keys(runs[0]).map((name) => [name, summed(runs.map((run) => run[name]))]),
  );
  guides.push({ rigs, lessons: Number(asked.lessons), builds });
  for (const [name, one] of Object.entries(builds)) process.stdout.write(`${row(rigs, name, one)}\n`);
}

/** A line of the table in docs/bench.md. */
function row(rigs, name, { wallS, leastS, mostS, cpuS, peakMB, stagesS }) {
  const stages = Object.entries(stagesS)
    .sort(([, a], [, b]) => b - a)
    .slice(0, 4)
    .map(([stage, seconds]) => `${stage} ${figure(seconds)}`);
  const time = `${figure(wallS)} (${figure(leastS)}–${figure(mostS)})`;
  return `| ${[rigs, name, time, figure(cpuS), Math.round(peakMB), stages.join(", ")].join(" | ")} |`;
}

const figures = {
  date: new Date().toISOString().slice(0, 10),
  machine: machine(),
  runs: Number(asked.runs),
  guides,
};
process.stdout.write(`${JSON.stringify(figures.machine)}\n`);
if (asked.json) writeFileSync(asked.json, `${JSON.stringify(figures, null, 2)}\n`);
