import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { depthGuide } from "../../src/core/depth/depth-guide.ts";
import { plumbingSteps } from "../../src/core/depth/plumbing.ts";
import { recordDepth } from "../../src/core/depth/rod-reach.ts";
import { feedForSession } from "../../src/core/feed/feed.ts";
import { groundbait } from "../../src/core/feed/groundbait.ts";
import type { Finding } from "../../src/core/finding.ts";
import { attachments, type Float } from "../../src/core/float/float.ts";
import { checkFloat } from "../../src/core/float/float-check.ts";
import { feelForBed } from "../../src/core/flow/feel-for-bed.ts";
import { kitFor } from "../../src/core/tackle/kit.ts";
import { lineChain } from "../../src/core/tackle/knots.ts";
import { metals } from "../../src/core/tackle/shot.ts";
import { pool, straightQuill } from "./floats.ts";

fc.configureGlobal({ seed: 20, numRuns: 200 });

/** Figures as they may come from a slip of the finger, and now and then a good one. */
const figure = fc.oneof(
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, -0, -1, 1e-300, 1e300),
  fc.double(),
  fc.double({ min: 0, max: 100, noNaN: true }),
  fc.double({ min: 0, max: 3000, noNaN: true }),
);

const float: fc.Arbitrary<Float> = fc
  .record({
    profile: fc.array(fc.record({ atMm: figure, diameterMm: figure }), { maxLength: 5 }),
    risen: fc.boolean(),
    capacityG: figure,
    capacityMetal: fc.constantFrom(...metals),
    capacityBasis: fc.constantFrom("marked" as const, "measured" as const),
    attachment: fc.constantFrom(...attachments),
    selfLoadG: fc.oneof(fc.constant(0), figure),
    tipShowingMm: figure,
    weighed: fc.option(figure, { nil: undefined }),
  })
  .map(({ risen, weighed, profile, ...rest }) => ({
    ...rest,
    id: "any",
    title: "Any",
    kind: "any",
    heldByShot: true,
    profile: risen ? [{ atMm: 0, diameterMm: 5 }, ...profile.toSorted((a, b) => a.atMm - b.atMm)] : profile,
    ...(weighed === undefined ? {} : { weighedMassG: weighed }),
  }));

/** Every number in a value, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

function expectAnswerOrReason(result: { ok: boolean; value?: unknown; findings: readonly Finding[] }): void {
  expect(numbersIn(result).filter(Number.isNaN)).toEqual([]);
  expect(result.ok).toBe(result.findings.every(({ severity }) => severity === "warning"));
}

describe("figures that cannot be give a reason, never a throw and never what is no number", () => {
  it("for a float", () => {
    fc.assert(
      fc.property(float, (any) => {
        expect(numbersIn(checkFloat(any, pool)).filter(Number.isNaN)).toEqual([]);
      }),
    );
  });

  it("for a depth guide", () => {
    const shot = fc.record({
      size: fc.constant("any"),
      massG: figure,
      metal: fc.constantFrom(...metals),
      fromHookMm: figure,
      role: fc.constantFrom("lock" as const, "spread" as const, "telltale" as const),
    });
    fc.assert(
      fc.property(
        fc.record({
          float: fc.oneof(float, fc.constant(straightQuill)),
          water: fc.oneof(fc.constant(pool), fc.record({ tempC: figure, salinity: figure })),
          depthMm: figure,
          shot: fc.array(shot, { maxLength: 3 }),
          hookAndBaitPullG: fc.oneof(fc.constant(0), figure),
          settingMm: figure,
        }),
        (input) => expectAnswerOrReason(depthGuide(input)),
      ),
    );
  });

  it("for plumbing, feed, groundbait, knots, kit and records", () => {
    fc.assert(
      fc.property(figure, figure, figure, (a, b, c) => {
        expectAnswerOrReason(
          plumbingSteps({ float: straightQuill, water: pool, markMm: 15, keptPullG: 0.1 }, a, b, c),
        );
        expectAnswerOrReason(feelForBed(a, b));
        expectAnswerOrReason(feedForSession({ what: "any", portionMl: a, everyS: b, forS: c }));
        expectAnswerOrReason(groundbait(a, b));
        expectAnswerOrReason(recordDepth(a, b, c));
        expectAnswerOrReason(kitFor(a, [[{ kind: "hook", name: "any", count: b }]], c, () => 10));
        const line = (strengthG: number) => ({ strengthG, diameterMm: 0.1 });
        const knot = { id: "any", title: "Any", basis: "from memory" as const };
        const tied = {
          where: "hook" as const,
          knot: { ...knot, strengthShareLow: c, strengthShareHigh: 0.9 },
        };
        expectAnswerOrReason(lineChain({ mainLine: line(a), hookLine: line(b), knots: [tied] }));
      }),
    );
  });
});
