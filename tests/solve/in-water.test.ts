import { describe, expect, it } from "vitest";
import { readLibrary } from "../../src/content/read-library.ts";
import { type InWater, solveInWater } from "../../src/solve/in-water.ts";
import type { Rig } from "../../src/solve/rig.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

const plainRig = readLibrary(sourcesOf(contentWith())).value!.rigs[0]!.rig;

function inWater(changes: Partial<Rig> = {}): InWater {
  const rig = { ...plainRig, ...changes };
  const solved = solveRig(rig);
  if (!solved.ok) throw new Error(JSON.stringify(solved.findings));
  const water = solveInWater(solved.value, solved.value.depths[0]!);
  if (!water.ok) throw new Error(JSON.stringify(water.findings));
  return water.value;
}

const flowing: Partial<Rig> = { water: "flowing", pacesMs: [0.2, 0.5] };

describe("a rig in still water", () => {
  it("sinks ever deeper, sooner in a heap than laid out straight", () => {
    const [straight, heap] = inWater().sink;
    expect([straight!.landing, heap!.landing]).toEqual(["straight", "heap"]);
    for (const { tenthsS } of [straight!, heap!]) {
      expect(tenthsS).toHaveLength(10);
      expect(tenthsS.every((time, i) => time > (tenthsS[i - 1] ?? 0))).toBe(true);
    }
    expect(heap!.tenthsS[9]).toBeLessThan(straight!.tenthsS[9]!);
  });

  it("spends its fall in three thirds that add up to the last tenth's time", () => {
    const [straight] = inWater().sink;
    const sum = straight!.thirdsS.reduce((total, third) => total + third, 0);
    expect(sum).toBeCloseTo(straight!.tenthsS[9]!, 9);
  });

  it("has no flow, and says how its bait falls against the feed", () => {
    expect(inWater().flow).toEqual([]);
    expect(inWater().againstFeed?.thirds).toHaveLength(3);
  });
});

describe("a rig in running water", () => {
  it("has a figure for each pace and each share held back", () => {
    const pairs = inWater(flowing).flow.map(({ paceMs, heldBackShare }) => [paceMs, heldBackShare]);
    expect(pairs).toEqual([0.2, 0.5].flatMap((pace) => [0, 0.5, 1].map((share) => [pace, share])));
  });

  it("trails when it runs free and leads when it is stopped", () => {
    for (const { heldBackShare, leadMm } of inWater(flowing).flow) {
      if (heldBackShare === 0) expect(leadMm).toBeLessThan(0);
      if (heldBackShare === 1) expect(leadMm).toBeGreaterThan(0);
    }
  });

  it("wants its feed the further upstream the faster the water", () => {
    const free = inWater(flowing).flow.filter(({ heldBackShare }) => heldBackShare === 0);
    expect(free[1]!.feedUpstreamMm).toBeGreaterThan(free[0]!.feedUpstreamMm);
  });

  it("lets a float held top and bottom be stopped, where one held by its foot goes under", () => {
    const atFoot = inWater(flowing).holdBackMax.map(({ share }) => share);
    const float = { ...plainRig.float, attachment: "top and bottom" as const };
    const atBoth = inWater({ ...flowing, float }).holdBackMax.map(({ share }) => share);
    expect(atBoth).toEqual([1, 1]);
    expect(atFoot[1]).toBeLessThan(1);
  });
});
