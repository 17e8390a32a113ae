// Loaded before a program: counts its steps on the disk and lets one of them, or all from there on, go wrong.
// FAULT says how: kill (dead before the step), stop (asked to stop, before the step), stop twice (and asked once more
// before the step after it), torn (dead in the middle of it), spoil (where an output comes into its
// place, somebody changes it), rival (where a folder is made, somebody else makes RIVAL first), or the code of an error,
// once, or with a + behind it from then on. FAULT_AT says at which step; the number of steps is printed in the end.
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";

const { FAULT = "", FAULT_AT = "0", RIVAL } = process.env;
const appendFile = fs.appendFileSync;
const code = FAULT.replace("+", "");
const isLasting = FAULT.endsWith("+");
let steps = 0;

const die = () => process.kill(process.pid, "SIGKILL");

for (const name of [
  "mkdirSync",
  "rmdirSync",
  "renameSync",
  "unlinkSync",
  "linkSync",
  "writeFileSync",
  "appendFileSync",
]) {
  const step = fs[name];
  fs[name] = (path, ...more) => {
    steps++;
    if (steps === Number(FAULT_AT) && FAULT === "kill") die();
    const asked = steps - Number(FAULT_AT);
    if ((FAULT === "stop" || FAULT === "stop twice") && asked === 0) process.kill(process.pid, "SIGINT");
    if (FAULT === "stop twice" && asked === 1) process.kill(process.pid, "SIGINT");
    if (steps === Number(FAULT_AT) && FAULT === "torn") {
      const [content, ...options] = more;
      if (name === "writeFileSync" || name === "appendFileSync")
        step(path, content.slice(0, content.length / 2), ...options);
      die();
    }
    if (steps === Number(FAULT_AT) && FAULT === "rival" && name === "mkdirSync") step(RIVAL);
    if (steps === Number(FAULT_AT) && FAULT === "spoil" && /\Wout$/.test(more[0])) {
      step(path, ...more);
      return appendFile(`${more[0]}/site/index.html`, "more");
    }
    if (/^E/.test(code) && (isLasting ? steps >= Number(FAULT_AT) : steps === Number(FAULT_AT)))
      throw Object.assign(new Error(`${code}: ${name} ${path}`), { code, syscall: name, path });
    return step(path, ...more);
  };
}
syncBuiltinESMExports();
process.on("exit", () => process.stdout.write(`${steps} steps\n`));
