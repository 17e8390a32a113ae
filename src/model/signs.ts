import { waterKinds } from "../core/water/water.ts";

/** When a sign is seen: what a reader is asked first who does not know what the float means. */
export const signTimes = [
  "as it settles",
  "while you wait",
  "on a bite",
  "with a fish on",
  "casting and winding in",
] as const;
export type SignTime = (typeof signTimes)[number];

/** On which water; most signs are seen on both. */
export const signWaters = [...waterKinds, "either"] as const;
export type SignWater = (typeof signWaters)[number];

/** Small pictures of what is seen, without words. */
export const signPictures = [
  "goes-under",
  "stands-tall",
  "lies-flat",
  "half-cocked",
  "sinks-lower",
  "drifts-with-wind",
  "moves-against-wind",
  "dips-at-a-hump",
  "dives-held-back",
  "leans-held-back",
  "runs-ahead",
  "quick-dips",
  "bobs-back",
  "rises-flat",
  "stops-early",
  "slides-away",
  "empty-skin",
  "bites-stop",
  "no-bites",
  "fish-high",
  "fish-low",
  "tangled",
  "corkscrew",
  "slides-down",
  "will-not-slide",
  "falls-short",
  "breaks-at-hook",
  "curly-end",
  "breaks-at-shot",
  "breaks-above-float",
  "comes-out",
  "in-weed",
  "hook-deep",
  "bare-hook",
  "casters-rise",
  "ball-breaks",
  "porridge",
  "weed-on-hook",
  "plummet-hangs",
  "plummet-on-slope",
  "card-differs",
] as const;
export type SignPicture = (typeof signPictures)[number];
