import type { Float } from "../../src/core/float/float.ts";

type Own = Pick<Float, "id" | "title" | "profile" | "capacityG" | "tipShowingMm"> & Partial<Float>;

const marked = { capacityMetal: "lead", capacityBasis: "marked", selfLoadG: 0 } as const;

/** An invented waggler: held at its foot, by shot, its load written on it in lead shot. */
export const sampleWagglerFloat = (own: Own): Float => ({
  kind: "waggler",
  attachment: "bottom",
  heldByShot: true,
  ...marked,
  ...own,
});

/** An invented float that rubbers hold top and bottom. */
export const sampleRubberFloat = (kind: "stick" | "avon", own: Own): Float => ({
  kind,
  attachment: "top and bottom",
  heldByShot: false,
  ...marked,
  ...own,
});
