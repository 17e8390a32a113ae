// What benches share: contestants that run in turn, their figures, and the machine.
import { readdirSync, readFileSync } from "node:fs";
import { cpus } from "node:os";

export const median = (numbers) => numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)];

export const figure = (value) => value.toFixed(value < 10 ? 2 : 1);

/** What figures were taken on. */
export function machine() {
  const all = cpus();
  return { node: process.version, system: process.platform, processor: all[0]?.model, cores: all.length };
}

/** Ticks of the processor in a second, as Linux counts them for programs. Source: proc(5). */
const ticksPerS = 100;

/** Seconds of the processor that this process has taken, and on Linux those that it started, too. */
function cpuS() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6 + startedTicks() / ticksPerS;
}

/** Ticks that all processes below this one have taken; those that have ended count with the ones they were started by. */
function startedTicks() {
  const all = statsOfAll();
  const below = (pid) =>
    all.filter(({ parent }) => parent === pid).reduce((sum, one) => sum + one.ticks + below(one.pid), 0);
  return below(process.pid) + (all.find(({ pid }) => pid === process.pid)?.ended ?? 0);
}

/** Behind the name in brackets are the parent, field 4, and four times from field 14 on. Source: proc(5). */
function statsOfAll() {
  if (process.platform !== "linux") return [];
  const pids = readdirSync("/proc").filter((name) => /^\d+$/.test(name));
  return pids.flatMap((pid) => {
    try {
      const fields = readFileSync(`/proc/${pid}/stat`, "utf8")
        .replace(/^.*\) /s, "")
        .split(" ")
        .map(Number);
      const [user, system, endedUser, endedSystem] = fields.slice(11, 15);
      const ended = endedUser + endedSystem;
      return [{ pid: Number(pid), parent: fields[1], ticks: user + system + ended, ended }];
    } catch {
      return []; // It has ended by now.
    }
  });
}

/**
 * Runs contestants one after another, so often, after a round that is not counted: whatever else the machine does meets
 * them all alike.
 *
 * @param contestants by name, what each does; it is told the round, so that it can make every one another
 */
export async function inTurn(contestants, runs) {
  const taken = new Map(Object.keys(contestants).map((name) => [name, []]));
  for (let round = 0; round <= runs; round++) {
    for (const [name, run] of Object.entries(contestants)) {
      globalThis.gc?.();
      const [from, cpuFrom] = [performance.now(), cpuS()];
      await run(round);
      const one = { wallS: (performance.now() - from) / 1e3, cpuS: cpuS() - cpuFrom };
      if (round > 0) taken.get(name).push(one);
    }
  }
  return [...taken].map(([name, all]) => {
    const walls = all.map(({ wallS }) => wallS);
    const times = all.map((one) => one.cpuS);
    return {
      name,
      wallS: median(walls),
      leastS: Math.min(...walls),
      mostS: Math.max(...walls),
      cpuS: median(times),
      leastCpuS: Math.min(...times),
      mostCpuS: Math.max(...times),
    };
  });
}

/** Figures of contestants as a table, each held against the first. */
export function table([first, ...others]) {
  const row = ({ name, wallS, leastS, mostS, cpuS, leastCpuS, mostCpuS }) => [
    name,
    `${figure(wallS)} (${figure(leastS)}–${figure(mostS)})`,
    `${figure(cpuS)} (${figure(leastCpuS)}–${figure(mostCpuS)})`,
    figure(first.wallS / wallS),
    figure(first.cpuS / cpuS),
  ];
  const head = ["", "wall s (least–most)", "CPU s (least–most)", "first ÷ this, wall", "first ÷ this, CPU"];
  const lines = [head, head.map(() => "---"), ...[first, ...others].map(row)];
  return lines.map((cells) => `| ${cells.join(" | ")} |`).join("\n");
}
