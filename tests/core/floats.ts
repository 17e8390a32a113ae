import type { Float } from "../../src/core/float/float.ts";
import type { Water } from "../../src/core/water/water.ts";

/** Invented floats for the tests; figures chosen so that the sums can be done by hand. */

export const pool: Water = { tempC: 10, salinity: 0 };

/** A bodied float with a thin straight tip: body 12 mm across and 60 mm long, stem and tip of one diameter. */
export function tippedFloat(tipDiameterMm: number, changes: Partial<Float> = {}): Float {
  return {
    id: "tipped",
    title: "Tipped float",
    kind: "waggler",
    attachment: "bottom",
    heldByShot: true,
    profile: [
      { atMm: 0, diameterMm: 2 },
      { atMm: 20, diameterMm: 12 },
      { atMm: 80, diameterMm: 12 },
      { atMm: 90, diameterMm: tipDiameterMm },
      { atMm: 240, diameterMm: tipDiameterMm },
    ],
    capacityG: 4,
    capacityMetal: "lead",
    capacityBasis: "measured",
    selfLoadG: 0,
    tipShowingMm: 100,
    ...changes,
  };
}

/** A straight quill, 5 mm across and 200 mm long, marked 2 AAA. */
export const straightQuill: Float = {
  id: "straight-quill",
  title: "Straight quill",
  kind: "waggler",
  attachment: "bottom",
  heldByShot: true,
  profile: [
    { atMm: 0, diameterMm: 5 },
    { atMm: 200, diameterMm: 5 },
  ],
  capacityG: 1.6,
  capacityMetal: "lead",
  capacityBasis: "marked",
  selfLoadG: 0,
  tipShowingMm: 15,
};

/** A stick held top and bottom by rubbers, marked 4 No 4. */
export const stick: Float = {
  id: "stick",
  title: "Stick",
  kind: "stick",
  attachment: "top and bottom",
  heldByShot: false,
  profile: [
    { atMm: 0, diameterMm: 2 },
    { atMm: 60, diameterMm: 2 },
    { atMm: 90, diameterMm: 6 },
    { atMm: 120, diameterMm: 6 },
    { atMm: 140, diameterMm: 4 },
  ],
  capacityG: 0.8,
  capacityMetal: "lead",
  capacityBasis: "marked",
  selfLoadG: 0,
  tipShowingMm: 10,
};
