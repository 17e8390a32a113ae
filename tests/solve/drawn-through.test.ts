import { describe, expect, it } from "vitest";
import { readLibrary } from "../../src/content/read-library.ts";
import type { Rig } from "../../src/model/rig.ts";
import type { SolvedDepth } from "../../src/model/solved.ts";
import { drawnThrough } from "../../src/solve/drawn-through.ts";
import { solveRig } from "../../src/solve/solve-rig.ts";
import { contentWith, sourcesOf } from "../support/smallest-content.ts";

const plainRig = readLibrary(sourcesOf(contentWith())).value!.rigs[0]!.rig;

function through(changes: Partial<Rig>): SolvedDepth {
  const solved = solveRig({ ...plainRig, ...changes });
  if (!solved.ok) throw new Error(JSON.stringify(solved.findings));
  return drawnThrough(solved.value, solved.value.depths[0]!)!;
}

describe("a depth to draw through by hand", () => {
  it("has still water's setting centimetre by centimetre", () => {
    const settings = through({}).depthGuide.map(({ overdepthMm }) => overdepthMm);
    expect(settings.length).toBeGreaterThan(10);
    for (const [at, settingMm] of settings.slice(1).entries()) {
      expect(Math.abs(settingMm - settings[at]!)).toBeLessThanOrEqual(10 + 1e-9);
    }
  });

  it("has the first pace alone, from run free to stopped", () => {
    const shares = through({ water: "flowing", pacesMs: [0.2, 0.5] }).inWater!.flow.map(
      ({ paceMs, heldBackShare }) => {
        expect(paceMs).toBe(0.2);
        return heldBackShare;
      },
    );
    expect(shares).toHaveLength(21);
    expect(shares.filter((share) => Number.isInteger(share * 2))).toEqual([0, 0.5, 1]);
  });
});
