import type { PlacedRig, Swim } from "../../../src/drawing/scenes/swim.ts";
import type { SolvedDepth, SolvedRig } from "../../../src/model/solved.ts";
import { sampleWaggler } from "../../support/sample-rig.ts";

/** An invented still water: a shelf along the bank, a ledge, and a deep part that slopes gently. */
export const makebelievePool: Swim = {
  title: "Makebelieve Pool, the shelf",
  bed: [
    { fromBankMm: 0, depthMm: 500 },
    { fromBankMm: 1500, depthMm: 1000 },
    { fromBankMm: 4500, depthMm: 1100 },
    { fromBankMm: 5500, depthMm: 1900 },
    { fromBankMm: 14000, depthMm: 2100 },
  ],
  ledgeFromBankMm: 4500,
};

/** The sample rig set for a depth; the shot keep their places, as they do when a float is moved. */
export function setFor(depthMm: number, overdepthMm: number): { solved: SolvedRig; depth: SolvedDepth } {
  const depth = sampleWaggler.depths[0]!;
  const floatToHookMm = depthMm + overdepthMm - depth.draughtMm;
  const lineShot = depth.lineShot.filter(({ fromHookMm }) => fromHookMm < floatToHookMm);
  return { solved: sampleWaggler, depth: { ...depth, depthMm, overdepthMm, floatToHookMm, lineShot } };
}

export const placed: readonly PlacedRig[] = [
  { fromBankMm: 3000, ...setFor(1050, 0) },
  { fromBankMm: 7500, ...setFor(1947, -150) },
  { fromBankMm: 11500, ...setFor(2041, 200) },
];
