import { describe, expect, it } from "vitest";
import { totalPullG } from "../../../src/core/loading/loading.ts";
import type { PatternSpec } from "../../../src/core/patterns/pattern.ts";
import { placePattern } from "../../../src/core/patterns/table.ts";
import { tradeTub } from "../loading-instances.ts";
import { codes, lead, placed, stick, told, waggler, water } from "./rooms.ts";

describe("strung out", () => {
  const spec: PatternSpec = {
    kind: "strung out",
    size: "No 8",
    gapMm: 300,
    telltale: { size: "No 10" },
  };

  it("stands at the stated gap from just above the loop up", () => {
    expect(told(placed(spec, waggler))).toEqual([
      "No 10 telltale 315",
      "No 8 spread 615",
      "No 8 spread 915",
      "No 8 spread 1215",
      "No 8 spread 1515",
    ]);
  });

  it("leaves load to the lock in shallow water and takes no more than the line may carry in deep water", () => {
    expect(placed(spec, { ...waggler, floatToHookMm: 700 })).toHaveLength(2);
    const deep = placed(spec, { ...waggler, depthMm: 8000, floatToHookMm: 7800 });
    // 0.48 g: one No 10 of 0.04 g and seven No 8 of 0.06 g are 0.46 g, an eighth would make 0.52 g.
    expect(deep).toHaveLength(8);
    expect(deep.at(-1)!.fromHookMm).toBe(315 + 7 * 300);
  });

  it("is the telltale alone where that is all that the line carries, whatever the gap asked for", () => {
    const alone = { ...waggler, linePullMaxG: lead(0.04) };
    expect(told(placed({ ...spec, gapMm: 5000 }, alone))).toEqual(["No 10 telltale 315"]);
  });

  it("stops where the tub does", () => {
    const tub = tradeTub({ BB: 9, "No 8": 2, "No 10": 1 }, "lead");
    expect(placed(spec, { ...waggler, tub })).toHaveLength(3);
  });

  it("carries the whole load of a float without a lock, closer together where the line is short", () => {
    const whole: PatternSpec = {
      ...spec,
      size: "No 4",
      alsoSizes: ["No 6", "No 8", "No 10"],
      telltale: { size: "No 8" },
    };
    const shot = placed(whole, stick);
    // 0.8 g less the No 8 is 0.74 g: exactly two No 4, a No 6 and four No 8. Seven shot from 615 up to 1430 mm.
    expect(told(shot)).toEqual([
      "No 8 telltale 315",
      "No 8 spread 615",
      "No 8 spread 751",
      "No 8 spread 887",
      "No 8 spread 1023",
      "No 6 spread 1158",
      "No 4 spread 1294",
      "No 4 spread 1430",
    ]);
    expect(totalPullG(shot, water)).toBeLessThanOrEqual(stick.pullG + 1e-9);
    // Six gaps from 615 to 1430 mm are 135.8 mm each, not the 300 asked for.
    const finding = placePattern(whole, stick).findings.find(({ code }) => code === "pattern.gap-closed");
    expect(finding).toMatchObject({ code: "pattern.gap-closed", values: { askedMm: 300 } });
    expect((finding!.values as { gapMm: number }).gapMm).toBeCloseTo(815 / 6, 9);
    expect(codes(spec, waggler)).toEqual([]);
  });
});

describe("bulk", () => {
  const spec: PatternSpec = {
    kind: "bulk",
    sizes: ["No 4", "No 6", "No 8"],
    share: 0.7,
    fromHookMm: 900,
    droppers: ["No 8", "No 10"],
    telltale: { size: "No 12" },
  };

  it("sets droppers evenly between bulk and telltale", () => {
    const shot = placed(spec, stick);
    // 0.8 − 0.06 − 0.04 − 0.02 = 0.68 g: three No 4 and a No 8 are 0.66 g in four shot, with three No 4 no other
    // shot comes nearer; 0.68 g is two No 4, a No 6 and three No 8.
    expect(told(shot).slice(0, 3)).toEqual(["No 12 telltale 315", "No 10 dropper 510", "No 8 dropper 705"]);
    const bulk = shot.slice(3);
    expect(bulk.map(({ size }) => size)).toEqual(["No 8", "No 8", "No 8", "No 6", "No 4", "No 4"]);
    expect(bulk[0]!.fromHookMm).toBe(900);
    expect(totalPullG(shot, water)).toBeCloseTo(stick.pullG, 9);
  });

  it("takes its share on a locked float and never more than the line may carry", () => {
    const share = placed({ ...spec, share: 0.1 }, waggler);
    // A tenth of 1.6 g is 0.16 g: a No 6 and a No 8.
    expect(share.slice(3).map(({ size }) => size)).toEqual(["No 8", "No 6"]);
    const most = placed(spec, waggler);
    expect(totalPullG(most, water)).toBeLessThanOrEqual(waggler.linePullMaxG + 1e-9);
  });

  it("leaves out sizes lighter than the heaviest shot below it, be that a dropper", () => {
    const light: PatternSpec = { ...spec, sizes: ["No 6", "No 10"] };
    expect(
      placed(light, stick)
        .slice(3)
        .map(({ size }) => size),
    ).not.toContain("No 10");
    expect(placePattern(light, stick).findings).toContainEqual(
      expect.objectContaining({ code: "pattern.size-left-out", values: { size: "No 10", below: "No 8" } }),
    );
  });

  it("warns where a single shot is all of it", () => {
    // A tenth of 1.6 g: one No 4 of 0.2 g is too much, a No 6 alone comes nearest.
    const alone: PatternSpec = { ...spec, sizes: ["No 4", "No 6"], share: 0.1 };
    expect(codes(alone, waggler)).toEqual(["pattern.group-of-one"]);
    expect(codes({ ...spec, share: 0.1 }, waggler)).toEqual([]);
  });

  it("says what depth would do where the water is too shallow", () => {
    const found = placePattern(spec, { ...stick, depthMm: 800, floatToHookMm: 780 }).findings[0]!;
    expect(found.code).toBe("pattern.too-shallow");
    const { neededDepthMm, neededFloatToHookMm } = found.values as Record<string, number>;
    expect(neededDepthMm).toBe(Math.ceil((800 + neededFloatToHookMm! - 780) / 10) * 10);
    expect(codes(spec, { ...stick, depthMm: neededDepthMm!, floatToHookMm: neededFloatToHookMm! })).toEqual(
      [],
    );
    expect(codes(spec, { ...stick, depthMm: 800, floatToHookMm: neededFloatToHookMm! - 1 })).toEqual([
      "pattern.too-shallow",
    ]);
  });

  it("goes down the hook length only where the telltale does and the bulk leaves no other room", () => {
    const canal: PatternSpec = {
      kind: "bulk",
      sizes: ["No 8"],
      share: 1,
      fromHookMm: 320,
      droppers: ["No 12"],
      telltale: { size: "No 12", fromHookMm: 100 },
    };
    expect(told(placed(canal, { ...stick, pullG: lead(0.22) })).slice(0, 2)).toEqual([
      "No 12 telltale 100",
      "No 12 dropper 210",
    ]);
    // With the bulk well up, the droppers stay above the loop.
    expect(
      told(placed({ ...canal, fromHookMm: 700, droppers: ["No 11", "No 12"] }, stick)).slice(0, 3),
    ).toEqual(["No 12 telltale 100", "No 12 dropper 315", "No 11 dropper 508"]);
  });

  it("refuses a bulk on the hook length and moves one that was asked for on the knot", () => {
    expect(codes({ ...spec, droppers: [], fromHookMm: 200 }, stick)).toEqual(["pattern.bulk-on-hook-length"]);
    const onKnot: PatternSpec = {
      ...spec,
      droppers: [],
      fromHookMm: 300,
      telltale: { size: "No 12", fromHookMm: 80 },
    };
    expect(codes(onKnot, stick)).toEqual(["pattern.moved-off-knot"]);
    expect(placed(onKnot, stick)[1]!.fromHookMm).toBe(315);
  });
});

describe("spread bulk", () => {
  it("opens the bulk out evenly over its length, heavier shot higher", () => {
    const shot = placed(
      {
        kind: "spread bulk",
        sizes: ["No 4", "No 6"],
        share: 1,
        fromHookMm: 600,
        overMm: 300,
        droppers: [],
        telltale: { size: "No 6" },
      },
      stick,
    );
    expect(told(shot)).toEqual([
      "No 6 telltale 315",
      "No 6 bulk 600",
      "No 4 bulk 700",
      "No 4 bulk 800",
      "No 4 bulk 900",
    ]);
  });
});

describe("shirt button", () => {
  it("shares the line out in equal steps", () => {
    const shot = placed(
      { kind: "shirt button", sizes: ["No 4"], telltale: { size: "No 4", fromHookMm: 280 } },
      { ...stick, hookLengthMm: 200 },
    );
    // 0.8 g are four No 4; (1480 − 280) / 4 = 300 mm apart and below the float.
    expect(told(shot)).toEqual([
      "No 4 telltale 280",
      "No 4 spread 580",
      "No 4 spread 880",
      "No 4 spread 1180",
    ]);
  });

  it("tapered, lets gaps and sizes fall towards the hook", () => {
    const shot = placed(
      { kind: "tapered shirt button", sizes: ["No 4", "No 6", "No 8"], telltale: { size: "No 8" } },
      stick,
    );
    expect(new Set(shot.map(({ size }) => size)).size).toBe(3);
    const gaps = shot.slice(1).map(({ fromHookMm }, i) => fromHookMm - shot[i]!.fromHookMm);
    // In even steps, to three times the lowest for the one to the float: common practice, no source.
    for (const [i, gap] of gaps.entries()) {
      expect(gap / gaps[0]!).toBeCloseTo(1 + ((3 - 1) * i) / gaps.length, 6);
    }
    expect(totalPullG(shot, water)).toBeCloseTo(stick.pullG, 9);
  });
});

describe("lift", () => {
  const spec: PatternSpec = { kind: "lift", anchor: "SSG", fromHookMm: 50 };

  it("sets one shot near the hook that may be too much for the float", () => {
    const shot = placed(spec, { ...stick, pullG: lead(1.4) });
    expect(told(shot)).toEqual(["SSG anchor 50"]);
  });

  it("warns of an anchor that leaves the float standing", () => {
    expect(codes(spec, { ...stick, pullG: lead(1.7) })).toEqual(["pattern.anchor-too-light"]);
  });
});

describe("all at the float", () => {
  it("leaves the line bare, and needs a lock", () => {
    expect(placed({ kind: "all at the float" }, waggler)).toEqual([]);
    expect(codes({ kind: "all at the float" }, stick)).toEqual(["pattern.no-lock"]);
  });
});
