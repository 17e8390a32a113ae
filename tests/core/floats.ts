import type { Float } from "../../src/core/float/float.ts";
import type { Water } from "../../src/core/water/water.ts";
import { sampleRubberFloat, sampleWagglerFloat } from "../support/sample-float.ts";

/** Invented floats for the tests; figures chosen so that the sums can be done by hand. */

export const pool: Water = { tempC: 10, salinity: 0 };

/** A bodied float with a thin straight tip: body 12 mm across and 60 mm long, stem and tip of one diameter. */
export function tippedFloat(tipDiameterMm: number, changes: Partial<Float> = {}): Float {
  return sampleWagglerFloat({
    id: "tipped",
    title: "Tipped float",
    profile: [
      { atMm: 0, diameterMm: 2 },
      { atMm: 20, diameterMm: 12 },
      { atMm: 80, diameterMm: 12 },
      { atMm: 90, diameterMm: tipDiameterMm },
      { atMm: 240, diameterMm: tipDiameterMm },
    ],
    capacityG: 4,
    capacityBasis: "measured",
    tipShowingMm: 100,
    ...changes,
  });
}

/** A straight quill, 5 mm across and 200 mm long, marked 2 AAA. */
export const straightQuill = sampleWagglerFloat({
  id: "straight-quill",
  title: "Straight quill",
  profile: [
    { atMm: 0, diameterMm: 5 },
    { atMm: 200, diameterMm: 5 },
  ],
  capacityG: 1.6,
  tipShowingMm: 15,
});

/** A stick held top and bottom by rubbers, marked 4 No 4. */
export const stick = sampleRubberFloat("stick", {
  id: "stick",
  title: "Stick",
  profile: [
    { atMm: 0, diameterMm: 2 },
    { atMm: 60, diameterMm: 2 },
    { atMm: 90, diameterMm: 6 },
    { atMm: 120, diameterMm: 6 },
    { atMm: 140, diameterMm: 4 },
  ],
  capacityG: 0.8,
  tipShowingMm: 10,
});
