import { test } from "vitest";
import { tryRig } from "./rigs.ts";

test("x", () => {
  const n: Record<string, number> = {};
  const t0 = performance.now();
  const count = Number(process.env.N ?? 40),
    from = Number(process.env.FROM ?? 0);
  let worst = 0;
  for (let i = from; i < from + count; i++) {
    const a = performance.now();
    const o = tryRig(Number(process.env.SEED ?? 1), i);
    const ms = performance.now() - a;
    if (ms > Math.max(3000, worst)) {
      worst = ms;
      process.stderr.write(`slow ${i} ${Math.round(ms)} ms ${o.detail.slice(0, 200)}\n`);
    }
    n[o.kind] = (n[o.kind] ?? 0) + 1;
    if (o.kind === "fault") process.stderr.write(`FAULT ${i}: ${o.detail.slice(0, 400)}\n`);
  }
  process.stderr.write(JSON.stringify(n) + " " + Math.round((performance.now() - t0) / count) + " ms each\n");
}, 1e8);
