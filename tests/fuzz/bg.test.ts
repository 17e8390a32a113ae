import { test } from "vitest";
import { tryMutation } from "/tmp/wt/hostile/tests/fuzz/mutations.ts";

test("bg", async () => {
  const n: Record<string, number> = {};
  const t0 = performance.now();
  const count = Number(process.env.N ?? 40),
    from = Number(process.env.FROM ?? 0);
  for (let i = from; i < from + count; i++) {
    const o = await tryMutation(Number(process.env.SEED ?? 1), i);
    n[o.kind] = (n[o.kind] ?? 0) + 1;
    if (o.kind === "fault") process.stderr.write(`FAULT ${i} ${o.path}: ${o.detail.slice(0, 500)}\n`);
    if (process.env.SHOW) process.stderr.write(`${i} ${o.kind} ${o.path}: ${o.detail.slice(0, 300)}\n`);
  }
  process.stderr.write(JSON.stringify(n) + " " + Math.round((performance.now() - t0) / count) + " ms each\n");
}, 1e8);
