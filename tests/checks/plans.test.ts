import { expect, it } from "vitest";
import { plansOfCoaches } from "../../src/checks/plans.ts";
import { samplePlan } from "../support/sample-plan.ts";
import { toldBy } from "./checked.ts";

it("a plan without any heading is told at its head", () => {
  const whole = samplePlan();
  const bare = `${whole.slice(0, whole.indexOf("\n## "))}\nWords.\n`;
  expect(toldBy(plansOfCoaches, { "plans/first.md": bare })).toMatchObject([
    { at: "content/plans/first.md:1:1", code: "plan-sections" },
  ]);
  expect(toldBy(plansOfCoaches, { "plans/first.md": whole })).toEqual([]);
});
