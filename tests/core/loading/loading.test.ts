import { describe, expect, it } from "vitest";
import { chooseShot, lockFor, tubWithout } from "../../../src/core/loading/loading.ts";
import { pullG } from "../../../src/core/tackle/shot.ts";
import { valuesOf } from "../../support/findings.ts";
import { randomInstance, seededRandom, tradeShot, tradeTub } from "../loading-instances.ts";
import { chosen, names, pull, toleranceG, water } from "./choices.ts";

describe("choosing the shot", () => {
  const ofLead = (massG: number) => pullG(massG, "lead", water);

  it("locks a 2 AAA float with one AAA on each side, though one SSG would pull as much", () => {
    // 2 × 0.8 g = 1.6 g of lead; in water 1.6 · (1 − 999.7026/11340) = 1.6 · 0.9118428 = 1.4589485 g.
    const mix = chosen(tradeTub({ SSG: 5, AAA: 5, BB: 5 }, "lead"), ofLead(1.6));
    expect(names(mix.shot)).toEqual(["AAA", "AAA"]);
    expect(mix.halves!.map(names)).toEqual([["AAA"], ["AAA"]]);
    expect(mix.pullG).toBeCloseTo(1.4589485, 6);
    expect(mix.sparePullG).toBeCloseTo(0, 9);
    expect(names(chosen(tradeTub({ SSG: 5, AAA: 5 }, "lead"), ofLead(1.6), "one group").shot)).toEqual([
      "SSG",
    ]);
  });

  it("makes do without AAA when the tub has run out of them", () => {
    const mix = chosen(tradeTub({ BB: 3, "No 4": 10 }, "lead"), ofLead(1.6));
    // Fewest: 3 BB and 2 No 4 (1.2 + 0.4 g); halves 0.8 and 0.8 g.
    expect(names(mix.shot)).toEqual(["BB", "BB", "BB", "No 4", "No 4"]);
    expect(mix.halves!.map(names)).toEqual([
      ["BB", "BB"],
      ["BB", "No 4", "No 4"],
    ]);
  });

  it("halves evenly first and then keeps to fewer sizes", () => {
    // 0.8 g in three shot: 0.4 + 0.3 + 0.1 g halves evenly with three sizes, 0.4 + 0.2 + 0.2 g with two.
    const tub = tradeTub({ BB: 1, "No 1": 1, "No 4": 2, "No 6": 1 }, "lead");
    expect(names(chosen(tub, ofLead(0.8)).shot)).toEqual(["BB", "No 4", "No 4"]);
    // 0.7 g in two: 0.4 + 0.3 g. In three, when there is one BB too few: 0.3 + 0.2 + 0.2 g, 0.4 against 0.3 g.
    expect(names(chosen(tub, ofLead(0.7)).shot)).toEqual(["BB", "No 1"]);
    expect(names(chosen(tub.slice(1), ofLead(0.7)).halves![0])).toEqual(["No 4", "No 4"]);
  });

  it("takes more shot rather than halves that nobody can pinch evenly", () => {
    // 1.74 g of tin: SSG, No 6 and No 10 would be the fewest, 1.6 g against 0.14 g.
    const plenty = Number.POSITIVE_INFINITY;
    const tub = tradeTub({ SSG: plenty, AAA: plenty, "No 6": plenty, "No 10": plenty });
    const mix = chosen(tub, pullG(1.74, "tin", water));
    expect(mix.halves!.map(names)).toEqual([
      ["AAA", "No 6"],
      ["AAA", "No 10"],
    ]);
  });

  it("warns, with the pull of either, where no mix has near-equal halves", () => {
    const choice = chooseShot({
      tub: tradeTub({ SSG: 1, "No 8": 2 }, "lead"),
      targetPullG: ofLead(1.72),
      water,
      split: "halves",
    });
    expect(choice.ok && names(choice.value.shot)).toEqual(["SSG", "No 8", "No 8"]);
    expect(choice.findings).toEqual([
      {
        code: "loading.uneven-lock",
        severity: "warning",
        values: {
          heavierPullG: expect.closeTo(ofLead(1.6), 9) as number,
          lighterPullG: expect.closeTo(ofLead(0.12), 9) as number,
        },
      },
    ]);
  });

  it("warns where a single shot has to lock the float", () => {
    const choice = chooseShot({ tub: tradeTub({ AAA: 1 }), targetPullG: 0.8, water, split: "halves" });
    expect(choice.findings.map(({ code }) => code)).toContain("loading.one-sided-lock");
  });

  it("warns in figures where the tub runs out", () => {
    const tub = tradeTub({ BB: 2, "No 8": 1 }, "lead");
    const choice = chooseShot({ tub, targetPullG: 2, water, split: "halves" });
    expect(choice.ok && names(choice.value.shot)).toEqual(["BB", "BB", "No 8"]);
    const { pullG, sparePullG } = valuesOf(choice.findings, "loading.tub-runs-out");
    expect(pullG).toBeCloseTo(ofLead(0.86), 9);
    expect(sparePullG).toBeCloseTo(2 - ofLead(0.86), 9);
  });

  it("says in figures that nothing fits", () => {
    const choice = chooseShot({
      tub: tradeTub({ BB: 2, "No 8": 9 }, "lead"),
      targetPullG: 0.05,
      water,
      split: "halves",
    });
    expect(choice.ok).toBe(false);
    expect(choice.findings[0]!.code).toBe("loading.nothing-fits");
    expect(choice.findings[0]!.values).toMatchObject({ targetPullG: 0.05, smallestSize: "No 8" });
    expect(valuesOf(choice.findings, "loading.nothing-fits").smallestPullG).toBeCloseTo(ofLead(0.06), 9);
  });

  it.each([
    ["a tub with no shot", [], 1, "loading.no-shot"],
    ["a tub with none of the sizes", tradeTub({ SSG: 3 }), 1, "loading.no-shot"],
    ["used-up compartments", tradeTub({ AAA: 0 }), 1, "loading.no-shot"],
    ["a capacity smaller than hook and bait", tradeTub({ AAA: 1 }), -0.2, "loading.bad-target"],
    ["no figure", tradeTub({ AAA: 1 }), Number.NaN, "beyond-reckoning"],
    ["more than any float carries", tradeTub({ AAA: 1 }), 51, "loading.bad-target"],
    ["a shot without weight", [{ ...tradeShot("AAA"), massG: 0, count: 1 }], 1, "loading.bad-shot"],
    ["a shot of a kilogram", [{ ...tradeShot("AAA"), massG: 1000, count: 1 }], 1, "loading.bad-shot"],
    ["a count below nothing", [{ ...tradeShot("AAA"), count: -1 }], 1, "loading.bad-shot"],
    [
      "a weight that is no number",
      [{ ...tradeShot("AAA"), massG: Number.NaN, count: 1 }],
      1,
      "beyond-reckoning",
    ],
  ])("answers %s with a finding", (_, tub, targetPullG, code) => {
    const choice = chooseShot({ tub, targetPullG, water, split: "halves", sizes: ["AAA"] });
    expect(choice.ok).toBe(false);
    expect(choice.findings.map((found) => found.code)).toEqual([code]);
  });

  it("answers water without a temperature with a finding", () => {
    const choice = chooseShot({
      tub: tradeTub({ AAA: 1 }),
      targetPullG: 1,
      water: { tempC: Number.NaN, salinity: 0 },
      split: "halves",
    });
    expect(choice.findings.map(({ code }) => code)).toEqual(["beyond-reckoning"]);
  });

  it("gives the same mix however the tub is laid out", () => {
    const random = seededRandom(11);
    for (let n = 0; n < 40; n++) {
      const { tub, targetPullG } = randomInstance(random);
      const first = chooseShot({ tub, targetPullG, water, split: "halves" });
      const turned = chooseShot({ tub: [...tub].reverse(), targetPullG, water, split: "halves" });
      expect(turned).toEqual(first);
    }
  });

  it("never takes more than the tub holds", () => {
    const random = seededRandom(12);
    for (let n = 0; n < 100; n++) {
      const { tub, targetPullG } = randomInstance(random);
      const choice = chooseShot({ tub, targetPullG, water, split: "halves" });
      if (!choice.ok) continue;
      const { shot, halves, sparePullG } = choice.value;
      expect(sparePullG).toBeGreaterThan(-toleranceG);
      expect(halves![0].length + halves![1].length).toBe(shot.length);
      for (const { size, metal, count } of tub) {
        expect(shot.filter((one) => one.size === size && one.metal === metal).length).toBeLessThanOrEqual(
          count,
        );
      }
    }
  });

  it("takes fewer shot where pulls that close are to count as equal", () => {
    // Tin SSG 1.6 · 0.86281 = 1.3805 g and lead No 8 0.06 · 0.91184 = 0.0547 g: 1.4352 g with two shot, 4.8 mg short
    // of 1.44 g. The exact choice comes nearer by heaps of dust.
    const plenty = Number.POSITIVE_INFINITY;
    const tub = [
      ...tradeTub({ SSG: plenty, AAA: plenty, BB: plenty, "No 1": plenty, "No 4": plenty, "No 6": plenty }),
      ...tradeTub({ "No 8": plenty, "No 9": plenty, "No 10": plenty, "No 12": plenty }, "lead"),
    ];
    const exact = chooseShot({ tub, targetPullG: 1.44, water, split: "one group" });
    const close = chooseShot({ tub, targetPullG: 1.44, water, split: "one group", withinG: 0.005 });
    expect(close.ok && names(close.value.shot)).toEqual(["SSG", "No 8"]);
    expect(close.ok && close.value.sparePullG).toBeCloseTo(0.0048, 4);
    expect(exact.ok && exact.value.shot.length).toBeGreaterThan(12);
    expect(exact.ok && exact.value.sparePullG).toBeLessThan(0.001);
  });

  it("counts no pull as equal that is further off than it says", () => {
    const random = seededRandom(13);
    for (let n = 0; n < 100; n++) {
      const { tub, targetPullG } = randomInstance(random);
      const exact = chooseShot({ tub, targetPullG, water, split: "halves" });
      const close = chooseShot({ tub, targetPullG, water, split: "halves", withinG: 0.005 });
      if (!exact.ok || !close.ok) continue;
      expect(close.value.sparePullG - exact.value.sparePullG).toBeLessThanOrEqual(0.005 + toleranceG);
      expect(close.value.shot.length).toBeLessThanOrEqual(exact.value.shot.length);
    }
  });
});

describe("the lock", () => {
  it("takes only the sizes that it may", () => {
    const tub = tradeTub({ AAA: 4, BB: 4, "No 4": 8 });
    const lock = (sizes?: readonly string[]) => {
      const found = lockFor(tub, [], pullG(1.6, "lead", water), water, sizes);
      return found.ok ? names(found.value.shot) : found.findings;
    };
    expect(lock()).toEqual(["AAA", "AAA"]);
    expect(lock(["BB", "No 4"])).toEqual(["BB", "BB", "BB", "BB"]);
  });

  it("carries what the line leaves, out of what the line leaves in the tub", () => {
    const tub = tradeTub({ BB: 4, "No 4": 4, "No 8": 6 }, "lead");
    const onLine = [tradeShot("No 4", "lead"), tradeShot("No 8", "lead")];
    const lock = lockFor(tub, onLine, pullG(1.6, "lead", water), water);
    // 1.6 − 0.2 − 0.06 = 1.34 g. Fewest for 1.32 g are 3 BB and 2 No 8, at best 0.8 against 0.52 g, 60.6 %. With one
    // shot more, 2 BB, 2 No 4 and 2 No 8, both groups have 0.66 g.
    expect(lock.ok && names(lock.value.shot)).toEqual(["BB", "BB", "No 4", "No 4", "No 8", "No 8"]);
    expect(lock.ok && lock.value.massG).toBeCloseTo(1.32, 9);
  });

  it("says so where the line has taken everything", () => {
    const lock = lockFor(tradeTub({ BB: 4 }), [tradeShot("SSG")], pull(tradeShot("SSG")), water);
    expect(lock.findings.map(({ code }) => code)).toEqual(["loading.nothing-left-for-lock"]);
  });

  it("counts a tub down shot by shot", () => {
    const tub = tradeTub({ BB: 2, "No 8": 1 });
    const shot = [tradeShot("BB"), tradeShot("No 8")];
    expect(tubWithout(tub, shot)).toEqual(tradeTub({ BB: 1 }));
    expect(tubWithout(tub, [tradeShot("BB", "lead")])).toEqual(tub);
  });
});
