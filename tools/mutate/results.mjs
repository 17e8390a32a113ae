// Results of mutants as lines, to be read by people and by a later run.

/** @typedef {import("./mutants.mjs").Mutant & { path: string }} Placed */
/** @typedef {"killed" | "too long" | "lives" | "not reached" | "equivalent"} Fate too long: stopped at its time limit, which a test run would notice */

const lives = (fate) => fate === "lives" || fate === "not reached";
const change = ({ kind, was, now }) => `${kind}  ${was}  →  ${now}`;

/** @param {Placed & { fate: Fate }} result */
export const resultLine = (result) =>
  `${result.fate.padEnd(11)}  ${result.path}:${result.line}  ${change(result)}`;

/**
 * Mutants that live in the results of an earlier run, or took too long there: by their lines, or where those have moved
 * since, by what they change.
 *
 * @param {string} text
 * @param {Placed[]} mutants
 */
export function openIn(text, mutants) {
  const open = [...text.matchAll(/^(.{11}) {2}(\S+):(\d+) {2}(.+)$/gm)].filter(
    ([, fate]) => lives(fate.trim()) || fate.trim() === "too long",
  );
  const found = open.flatMap(([, , path, line, changed]) => {
    const alike = mutants.filter((mutant) => mutant.path === path && change(mutant) === changed);
    const there = alike.filter((mutant) => mutant.line === Number(line));
    return there.length > 0 ? there : alike;
  });
  return [...new Set(found)];
}

/**
 * Mutants of which the results of a run of the same sources, ended before its time, say nothing yet.
 *
 * @param {string} text
 * @param {Placed[]} mutants
 */
export function restOf(text, mutants) {
  const lines = new Set(text.split("\n").map((line) => line.slice(11)));
  return mutants.filter((mutant) => !lines.has(resultLine({ ...mutant, fate: "lives" }).slice(11)));
}

/**
 * Shares killed, by folder.
 *
 * @param {(Placed & { fate: Fate })[]} all
 */
export function table(all) {
  const folders = [...new Set(all.map(({ path }) => path.split("/").slice(0, 3).join("/")))].sort();
  const rows = [...folders, ""].map((where) => {
    const here = all.filter(({ path }) => path.startsWith(where));
    const share = (kind) => {
      const of = here.filter((one) => one.kind === kind);
      if (of.length === 0) return "–";
      const same = of.filter(({ fate }) => fate === "equivalent").length;
      const killed = of.filter(({ fate }) => !lives(fate)).length - same;
      const percent = (whole) => `${Math.round((100 * killed) / whole)} %`;
      const apart = same > 0 ? `; ${percent(of.length - same)} of those that ${same} listed ones leave` : "";
      return `${killed} of ${of.length} (${percent(of.length)}${apart})`;
    };
    return `| ${where || "all"} | ${share("logic")} | ${share("constant")} |`;
  });
  return ["| where | logic killed | constants killed |", "| --- | --- | --- |", ...rows].join("\n");
}
