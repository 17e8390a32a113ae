import { expect, test } from "vitest";
import { lengthMm } from "../../../src/core/float/float.ts";
import { diameterAtMm } from "../../../src/core/float/profile.ts";
import { seenMm, seenTip } from "../../../src/drawing/float/seen-tip.ts";
import { sampleRigs } from "../../support/sample-rig.ts";

test.each(sampleRigs.map(({ rig }) => [rig.id, rig.float] as const))(
  "%s: a tip that would not be seen is drawn longer, and what is below it as it is",
  (_, float) => {
    const drawn = seenTip(float, 3 * float.tipShowingMm);
    expect(drawn.tipShowingMm).toBeCloseTo(3 * float.tipShowingMm, 9);
    expect(lengthMm(drawn) - lengthMm(float)).toBeCloseTo(2 * float.tipShowingMm, 9);
    const markMm = lengthMm(float) - float.tipShowingMm;
    for (const share of [0, 0.3, 0.7, 1])
      expect(diameterAtMm(drawn.profile, share * markMm)).toBeCloseTo(
        diameterAtMm(float.profile, share * markMm),
        9,
      );
    // Half the tip under water is half of it on the drawing; what is under is as far down as it is.
    expect(seenMm(float.tipShowingMm / 2, float, drawn)).toBeCloseTo(drawn.tipShowingMm / 2, 9);
    expect(seenMm(-7, float, drawn)).toBe(-7);
  },
);

test("a tip that is seen stays as it is, and what stands above the water may be more than the marked tip", () => {
  const { float } = sampleRigs[0]!.rig;
  expect(seenTip(float, 1).tipShowingMm).toBeCloseTo(float.tipShowingMm, 9);
  const upperMm = 2 * float.tipShowingMm;
  const drawn = seenTip(float, 2 * upperMm, upperMm);
  expect(drawn.tipShowingMm).toBeCloseTo(2 * float.tipShowingMm, 9);
  expect(lengthMm(drawn)).toBeCloseTo(lengthMm(float) + upperMm, 9);
});
