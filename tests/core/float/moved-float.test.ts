import { expect, test } from "vitest";
import { moveFloat, rigVariants, variantsOf } from "../../../src/core/float/moved-float.ts";
import { floatParts, rubberHeightsMm } from "../../../src/drawing/float/float-parts.ts";
import { lineShape } from "../../../src/drawing/rig/current-shape.ts";

import type { SolvedDepth } from "../../../src/model/solved.ts";
import {
  avon,
  sampleAvon,
  sampleRigs,
  sampleStick,
  sampleWaggler,
  stick,
  waggler,
} from "../../support/sample-rig.ts";

const setOverdepth = (depth: SolvedDepth, overdepthMm: number) => ({
  overdepthMm,
  floatToHookMm: depth.floatToHookMm + overdepthMm - depth.overdepthMm,
});

const all = sampleRigs.flatMap((rig) =>
  rig.depths.flatMap((depth) => rigVariants.map((variant) => ({ rig, depth, variant }))),
);

test.each(all)(
  "$rig.rig.id, $variant: float-to-hook moves with the overdepth, no shot below the float",
  ({ rig, depth, variant }) => {
    const moved = moveFloat(depth, rig.rig.water, variant);
    expect(moved.floatToHookMm - depth.floatToHookMm).toBeCloseTo(moved.overdepthMm - depth.overdepthMm, 9);
    expect(moved.lineShot).toEqual(depth.lineShot);
    for (const shot of moved.lineShot) expect(shot.fromHookMm).toBeLessThan(moved.floatToHookMm);
  },
);

test("over depth rests the lowest shot in still water; in running water a rig stays as it is set", () => {
  const still = moveFloat(sampleWaggler.depths[0]!, sampleWaggler.rig.water, "over depth");
  expect(still.lineShot[0]!.fromHookMm).toBeLessThan(still.overdepthMm);
  for (const variant of rigVariants) {
    const { overdepthMm } = moveFloat(sampleStick.depths[0]!, sampleStick.rig.water, variant);
    expect(overdepthMm).toBe(sampleStick.depths[0]!.overdepthMm);
  }
  expect(variantsOf(sampleStick.depths[0]!, "flowing")).toEqual(["set"]);
});

test("a rig set with shot on the bed stands as high as its guide says", () => {
  const [first] = sampleWaggler.depths;
  const tipAsSetMm = first!.depthGuide.find((one) => one.overdepthMm === 330)!.tipShowingMm!;
  expect(tipAsSetMm).toBeGreaterThan(first!.tipShowingMm);
  const laid = { ...first!, ...setOverdepth(first!, 330), tipAsSetMm };
  const drawn = moveFloat(laid, sampleWaggler.rig.water, "set");
  expect(drawn.tipShowingMm).toBe(tipAsSetMm);
  expect(drawn.draughtMm + drawn.tipShowingMm).toBeCloseTo(first!.draughtMm + first!.tipShowingMm, 9);
});

test("up in the water lifts the hook to half depth where the shot leave room, by whole centimetres", () => {
  const depth = sampleAvon.depths[0]!;
  const leastMm = Math.max(-depth.depthMm / 2, 765 + 100 + depth.draughtMm - depth.depthMm);
  const { overdepthMm } = moveFloat(depth, "still", "up in the water");
  expect(overdepthMm % 10).toBeCloseTo(0, 9);
  expect(overdepthMm - leastMm).toBeGreaterThanOrEqual(0);
  expect(overdepthMm - leastMm).toBeLessThan(10);
});

test("a rig has no variant that it is set to already, or that its shot or its float forbid", () => {
  const [depth] = sampleWaggler.depths;
  expect(variantsOf(depth!, "still")).toEqual(["set", "over depth", "up in the water"]);
  const laid = { ...depth!, ...setOverdepth(depth!, 330) };
  expect(variantsOf(laid, "still")).not.toContain("over depth");
  const highest = Math.max(...depth!.lineShot.map((shot) => shot.fromHookMm));
  const shallow = { ...depth!, depthMm: highest, ...setOverdepth(depth!, 0) };
  expect(variantsOf(shallow, "still")).not.toContain("up in the water");
  expect(variantsOf({ ...depth!, tipShowingMm: 0 }, "still")).not.toContain("up in the water");
});

test("the line hangs straight in still water; in the current it leaves from the eye", () => {
  expect(lineShape(sampleWaggler.depths[0]!).lean(500)).toBe(0);
  const depth = sampleStick.depths[0]!;
  const { lean, upMm } = lineShape(depth);
  expect(lean(depth.floatToHookMm)).toBeCloseTo(0, 6);
  // Drawn as it is fished, its float held back by a tenth.
  const hang = depth.inWater!.flow.find(({ heldBackShare }) => heldBackShare === 0.1)!;
  expect(lean(0)).toBeCloseTo(hang.leadMm, 6);
  expect(upMm(depth.floatToHookMm)).toBeCloseTo(hang.hookDepthMm - depth.draughtMm, 1);
});

test("the parts of a float are found from its outline, from the top down", () => {
  const told = (float: typeof waggler) =>
    floatParts(float).map((part) => `${part.name} ${Math.round(part.fromMm)}–${Math.round(part.toMm)}`);
  expect(told(waggler)).toEqual(["tip 185–200", "body 0–185"]);
  expect(told(stick)).toEqual(["tip 142–150", "body 77–142", "stem 0–77"]);
  expect(told(avon)).toEqual(["tip 119–170", "body 79–119", "stem 0–79"]);
  const [lower, upper] = rubberHeightsMm(avon);
  expect(lower).toBeGreaterThan(0);
  expect(upper).toBeLessThan(150);
});
