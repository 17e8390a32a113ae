import { describe, expect, it } from "vitest";
import { checkLead, type LeadRule, leadAllowed } from "../../../src/core/tackle/lead-rule.ts";
import { ballDiameterMm } from "../../../src/core/tackle/shot.ts";
import { gPerOunce } from "../../../src/core/units.ts";

/** Government rod fishing rules page for England and Wales: up to 0.06 g, and over 28.35 g. */
const england: LeadRule = {
  place: "England and Wales",
  allowedUpToG: 0.06,
  allowedAboveG: 28.35,
  source: "rod fishing rules",
  checked: "2026-11-20",
};

describe("the rule on lead", () => {
  it.each([
    [0.01, true],
    [0.06, true],
    [0.0601, false],
    [0.1, false],
    [0.8, false],
    [28.35, false],
    [28.3501, true],
    [40, true],
    [Number.NaN, false],
  ])("lets %d g be used: %s", (massG, allowed) => {
    expect(leadAllowed(massG, england)).toBe(allowed);
  });

  it("forbids an ounce itself, which is not over the limit", () => {
    expect(leadAllowed(gPerOunce, england)).toBe(false);
  });

  it("goes by the stated mass: a ball of the English No 8 diameter would be too heavy", () => {
    expect(ballDiameterMm(0.06, "lead")).toBeLessThan(2.21);
    expect(leadAllowed(0.06, england)).toBe(true);
  });

  it("may allow no heavy lead at all", () => {
    const { allowedAboveG: _, ...denmark } = england;
    expect(leadAllowed(40, denmark)).toBe(false);
  });

  it("warns once for each size of lead that is forbidden, and of no other metal", () => {
    const shot = [
      { size: "AAA", massG: 0.8, metal: "tin" as const },
      { size: "No 4", massG: 0.2, metal: "lead" as const },
      { size: "BB", massG: 0.4, metal: "lead" as const },
      { size: "No 4", massG: 0.2, metal: "lead" as const },
      { size: "No 8", massG: 0.06, metal: "lead" as const },
    ];
    expect(checkLead(shot, england)).toEqual([
      {
        code: "lead-not-allowed",
        severity: "warning",
        values: { size: "BB", massG: 0.4, allowedUpToG: 0.06, place: "England and Wales" },
      },
      {
        code: "lead-not-allowed",
        severity: "warning",
        values: { size: "No 4", massG: 0.2, allowedUpToG: 0.06, place: "England and Wales" },
      },
    ]);
  });
});
