// A process that runs test files with mutants; one that does not answer in time is ended.
import { fork } from "node:child_process";

/** @typedef {{ mutant: number, candidates: number[], journal: string, files: string[] }} Job */
/** @typedef {"passes" | "fails" | "too long"} Outcome */

/** Each ends a process and all that it started: left alone, one that hangs runs for ever. */
const stops = new Set();
process.on("exit", () => {
  for (const stop of stops) stop();
});
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => process.exit(1));

/** A process that runs one job after another; a new one is started where it was ended. */
export function worker(env) {
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
    /**
     * @param {Job} job
     * @param {{ limitS: () => number, sign?: () => number }} until ended after so many seconds in which the sign of life
     * stays as it is
     * @returns {Promise<Outcome>}
     */
    async run(job, { limitS, sign = () => 0 }) {
      if (!child) await start();
      return new Promise((done, fail) => {
        let [seen, silentS] = [sign(), 0];
        const timer = setInterval(() => {
          const now = sign();
          silentS = now === seen ? silentS + 1 : 0;
          seen = now;
          if (silentS < limitS()) return;
          clearInterval(timer);
          stop();
          done("too long");
        }, 1000);
        child.removeAllListeners();
        child.once("message", ({ outcome, fault }) => {
          clearInterval(timer);
          if (fault) fail(new Error(fault));
          else done(outcome);
        });
        child.once("exit", () => {
          clearInterval(timer);
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
