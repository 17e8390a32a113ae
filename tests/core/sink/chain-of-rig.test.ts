import { expect, test } from "vitest";
import { neighbours } from "../../../src/core/lists.ts";
import { chainOfRig } from "../../../src/core/sink/chain-of-rig.ts";
import { rigWith } from "./rigs.ts";

// Nylon is 1.14 g/ml (handbook value of polyamide 6, from memory), water of 15 °C 0.9991 g/ml (Tanaka et al. 2001); a
// cylinder across the flow takes along as much water as it displaces.
const sectionMm2 = (Math.PI / 4) * 0.15 * 0.15;
const bare = chainOfRig(rigWith([]), () => 100).chain.nodes;

test("each bare place of the line carries half of the piece above it and half of the one below", () => {
  const places = neighbours(bare);
  expect(places.length).toBeGreaterThan(10);
  for (const [{ link, movedMassG, weightUn }, { link: below }] of places) {
    const volumeMm3 = sectionMm2 * ((link.lengthMm + below.lengthMm) / 2);
    expect(movedMassG / (volumeMm3 * (1.14e-3 + 0.9991e-3))).toBeCloseTo(1, 4);
    expect(weightUn / (volumeMm3 * (1.14e-3 - 0.9991e-3) * 9806.65)).toBeCloseTo(1, 3);
  }
});

test("the pieces are the whole line from the float to the hook, none longer than asked for", () => {
  expect(bare.reduce((sum, { link }) => sum + link.lengthMm, 0)).toBeCloseTo(2000, 9);
  expect(Math.max(...bare.map(({ link }) => link.lengthMm))).toBeLessThanOrEqual(100);
});
