import { describe, expect, it } from "vitest";
import { answer, noAnswer, warning } from "../../src/core/finding.ts";

describe("no figure without an end leaves the core", () => {
  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    "an answer with %s is a reason",
    (bad) => {
      for (const value of [bad, [1, bad], { tipMm: bad }, { rows: [{ massG: bad }] }]) {
        expect(answer(value)).toEqual(noAnswer("beyond-reckoning"));
      }
      expect(answer({ count: Number.NaN })).toEqual(noAnswer("beyond-reckoning"));
    },
  );

  it("but a count of what nobody counted may have none", () => {
    const tub = { tub: [{ massG: 0.4, count: Number.POSITIVE_INFINITY }], none: null, said: "Infinity" };
    expect(answer(tub)).toEqual({ ok: true, value: tub, findings: [] });
  });

  it("nor does a sentence with one", () => {
    expect(
      noAnswer("depth-below-draught", { draughtMm: Number.NaN, lengthMm: 1, depthMm: 1 }).findings,
    ).toEqual([{ code: "beyond-reckoning", severity: "error", values: {} }]);
    expect(warning("groundbait-too-much", { dryG: Number.POSITIVE_INFINITY })).toEqual({
      code: "beyond-reckoning",
      severity: "warning",
      values: {},
    });
  });
});

it("an answer with an error among what was found is none", () => {
  const [error] = noAnswer("depth-not-positive").findings;
  const findings = [warning("groundbait-too-much", { dryG: 1 }), error!];
  expect(answer(1, findings)).toEqual({ ok: false, findings });
  expect(answer(1, findings.slice(0, 1)).ok).toBe(true);
});
