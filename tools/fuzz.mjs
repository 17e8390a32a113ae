// Runs the fuzz tests longer, or one case of them again: npm run fuzz -- --seed N --count N, or --seed N --from CASE --count 1
import { spawnSync } from "node:child_process";
import { parseArgs } from "node:util";

const number = { type: "string" };
const { values } = parseArgs({ options: { seed: number, count: number, from: number } });
const wrong = Object.entries(values).find(([, value]) => !/^\d{1,9}$/.test(value));
if (wrong) {
  process.stderr.write(`--${wrong[0]} ${wrong[1]} is no whole number\n`);
  process.exit(2);
}
const { seed = "14", count = "10000", from = "0" } = values;
const env = { ...process.env, FUZZ_SEED: seed, FUZZ_COUNT: count, FUZZ_FROM: from };
const run = ["vitest", "run", "--project", "slow", "tests/fuzz"];
process.exit(spawnSync("npx", run, { stdio: "inherit", env }).status ?? 1);
