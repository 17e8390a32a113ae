import { describe, expect, test } from "vitest";
import { tryMutation } from "./mutations.ts";
import { tryRig } from "./rigs.ts";

/** Bounded and the same each time, unless `npm run fuzz -- --seed N --count N` asks for more. */
const seed = Number(process.env.FUZZ_SEED ?? 14);
const count = Number(process.env.FUZZ_COUNT ?? 300);
const from = Number(process.env.FUZZ_FROM ?? 0);
const cases = Array.from({ length: count }, (_, at) => from + at);

interface Tried {
  readonly kind: string;
  readonly case: number;
}

/** Says what became of all, and holds that no case was a fault; each fault is told with what repeats it. */
function expectNoFault(what: string, tried: readonly Tried[]): void {
  const kinds = [...new Set(tried.map(({ kind }) => kind))].sort();
  const counts = kinds.map((kind) => `${tried.filter((one) => one.kind === kind).length} ${kind}`);
  process.stderr.write(`seed ${seed}, ${tried.length} ${what}: ${counts.join(", ")}\n`);
  const faults = tried.filter(({ kind }) => kind === "fault");
  expect(faults, `repeat one by npm run fuzz -- --seed ${seed} --from CASE --count 1`).toEqual([]);
}

describe("no input ends in a fault", () => {
  test("the shipped content with changes that nobody thought of is read or refused with its place", async () => {
    const tried = [];
    for (const number of cases) tried.push(await tryMutation(seed, number));
    expectNoFault("changed guides", tried);
  }, 86_400_000);

  test("shipped rigs with figures out of all sense are solved or refused with a reason, every figure finite", () => {
    expectNoFault(
      "rigs",
      cases.flatMap((number) => [2 * number, 2 * number + 1]).map((number) => tryRig(seed, number)),
    );
  }, 86_400_000);
});
