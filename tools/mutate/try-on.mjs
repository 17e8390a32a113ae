// Tries mutants on the tests that reach them, and reads the journal of it.
import { existsSync, readFileSync, rmSync } from "node:fs";
import { join, relative, resolve } from "node:path";

/** @typedef {import("./runner.ts").Line} Line */

/** Seconds that a file may take without any mutant, of which it says nothing. */
const silentS = 300;

/**
 * Runs test files one after another, each test with the mutants that it reaches. One that hangs is settled as too long,
 * and the rest goes on from the file it hung in.
 *
 * @param seen what was found out on the way: seconds by file, mutants reached in tests and outside of them
 */
export async function tryOn(job, { files, candidates, folder, seen, settle, say }) {
  const journal = join(folder, "journal.jsonl");
  const open = new Set(candidates);
  let left = files;
  while (left.length > 0 && open.size > 0) {
    rmSync(journal, { force: true });
    const outcome = await job.run(
      { mutant: 0, candidates: [...open], journal, files: left.map((file) => resolve(file)) },
      { limitS: () => toldLines().at(-1)?.limitS ?? silentS, sign: () => toldLines().length },
    );
    const lines = toldLines();
    read(lines);
    const at = lines.findLast((line) => "file" in line);
    if (outcome === "passes" || !at) return;
    // Tests that fail without any mutant do not stop the run: it has come to its end.
    if (outcome === "fails" && lines.some((line) => line.done === at.file)) return;
    const last = lines.at(-1);
    const hung = "trying" in last ? last.trying : undefined;
    if (hung !== undefined && open.delete(hung)) settle(hung, "too long");
    const from = left.indexOf(relative("", at.file));
    say(`${at.file} hung${hung === undefined ? " and is left out" : ""}`);
    left = left.slice(hung === undefined ? from + 1 : from);
  }

  /** @returns {readonly Line[]} */
  function toldLines() {
    const whole = existsSync(journal) ? readFileSync(journal, "utf8") : "";
    // A line that is being written is none yet.
    const lines = whole.slice(0, whole.lastIndexOf("\n") + 1).split("\n");
    return lines.filter(Boolean).map((line) => JSON.parse(line));
  }

  /** @param {readonly Line[]} lines */
  function read(lines) {
    for (const line of lines) {
      if ("trying" in line) seen.inside.add(line.trying);
      if ("killed" in line && open.delete(line.killed)) settle(line.killed, "killed");
      if ("done" in line) {
        seen.seconds.set(relative("", line.done), line.seconds);
        for (const id of line.outside) seen.outside.add(id);
      }
    }
  }
}
