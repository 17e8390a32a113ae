import { describe, expect, it } from "vitest";
import { inRounds, makeAnew } from "../../src/model/kept.ts";

describe("what is kept in rounds", () => {
  it("is found again in the round after it was asked for, and gone in the one after that", () => {
    const { keep, nextRound } = inRounds(makeAnew);
    let made = 0;
    const ask = (from: string) => keep("count", from, () => ++made);
    expect([ask("a"), ask("b"), ask("a")]).toEqual([1, 2, 1]);
    nextRound();
    expect(ask("a")).toBe(1);
    nextRound();
    expect([ask("a"), ask("b")]).toEqual([1, 3]);
  });
});
