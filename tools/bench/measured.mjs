// Runs the compiled tool as it is and writes what it took to the file that the first argument names.
import { writeFileSync } from "node:fs";
import { Session } from "node:inspector";
import { performance } from "node:perf_hooks";

const [report, tool, ...args] = process.argv.slice(2);
const session = new Session();
session.connect();
session.post("Profiler.enable");
session.post("Profiler.setSamplingInterval", { interval: 5000 });
session.post("Profiler.start");
process.argv.splice(1, process.argv.length, tool, ...args);

process.on("exit", () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  const used = {
    wallS: performance.now() / 1e3,
    cpuS: (userCPUTime + systemCPUTime) / 1e6,
    peakMB: maxRSS / 1e3,
  };
  session.post("Profiler.stop", (_, { profile }) => {
    writeFileSync(report, JSON.stringify({ ...used, stagesS: stagesOf(profile) }));
  });
});
await import(tool);

/** Seconds within each stage, by the names of the functions that are the stages. */
function stagesOf({ nodes, samples, timeDeltas }) {
  const stages = {
    readSources: "read",
    checkSources: "check",
    solveRigs: "solve",
    checkContent: "check",
    printFiles: "lay out and paint",
    siteFiles: "site",
    swap: "write",
    endWork: "write",
    "(garbage collector)": "clear up",
  };
  const parents = new Map(nodes.flatMap(({ id, children = [] }) => children.map((child) => [child, id])));
  const names = new Map(nodes.map(({ id, callFrame }) => [id, callFrame.functionName]));
  const stageOf = (id) => {
    for (let at = id; at !== undefined; at = parents.get(at)) {
      const name = names.get(at);
      if (Object.hasOwn(stages, name)) return stages[name];
    }
    return "other";
  };
  const seconds = {};
  samples.forEach((id, i) => {
    const stage = stageOf(id);
    seconds[stage] = (seconds[stage] ?? 0) + timeDeltas[i] / 1e6;
  });
  return seconds;
}
