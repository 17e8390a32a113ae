// Processes that run test files with a mutant switched on; one that does not answer in time is ended.
import { fork } from "node:child_process";

/** @typedef {{ mutant: number, reachedPath: string, files: string[] }} Job */
/** @typedef {"passes" | "fails" | "too long"} Outcome */

/**
 * Does the same with each of a list, in several processes at a time.
 *
 * @template T
 * @param {T[]} list
 * @param {{ count: number, env: NodeJS.ProcessEnv }} jobs how many processes, and what they know
 * @param {(item: T, run: (job: Job, limitS: number) => Promise<Outcome>, at: number) => Promise<void>} act
 */
export async function eachOf(list, { count, env }, act) {
  const queue = list.map((item, at) => ({ item, at }));
  await Promise.all(
    Array.from({ length: count }, async () => {
      const one = worker(env);
      for (let next = queue.shift(); next; next = queue.shift()) await act(next.item, one.run, next.at);
      one.stop();
    }),
  );
}

/** Each ends a process and all that it started: left alone, one that hangs runs for ever. */
const stops = new Set();
process.on("exit", () => {
  for (const stop of stops) stop();
});
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => process.exit(1));

function worker(env) {
  let child;
  const start = () =>
    new Promise((done) => {
      // A group of its own, so that what it starts ends with it.
      child = fork("tools/mutate/worker.mjs", {
        env,
        detached: true,
        stdio: ["ignore", "ignore", "inherit", "ipc"],
      });
      child.once("message", done);
    });
  const stop = () => {
    child?.removeAllListeners();
    try {
      if (child) process.kill(-child.pid, "SIGKILL");
    } catch {
      // It has ended by itself.
    }
    child = undefined;
  };
  stops.add(stop);
  return {
    async run(job, limitS) {
      if (!child) await start();
      return new Promise((done, fail) => {
        const timer = setTimeout(() => {
          stop();
          done("too long");
        }, 1000 * limitS);
        child.removeAllListeners();
        child.once("message", ({ outcome, fault }) => {
          clearTimeout(timer);
          if (fault) fail(new Error(fault));
          else done(outcome);
        });
        child.once("exit", () => {
          clearTimeout(timer);
          child = undefined;
          // A mutant that ends the process it runs in is noticed by whoever waits for it.
          done("fails");
        });
        child.send(job);
      });
    },
    stop,
  };
}
