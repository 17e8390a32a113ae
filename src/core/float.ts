import type { Metal } from "./shot.ts";

/** How the line is held to the float. */
export const attachments = ["bottom", "top and bottom", "sliding"] as const;
export type Attachment = (typeof attachments)[number];

/** A point of a float's outline: its diameter at a height above the lower eye. Straight lines join the points. */
export interface ProfilePoint {
  readonly atMm: number;
  readonly diameterMm: number;
}

/** A float as the sums see it. */
export interface Float {
  readonly id: string;
  readonly title: string;
  /** The trade's word for its shape, such as `stick`. */
  readonly kind: string;
  readonly attachment: Attachment;
  /** Whether shot pinched either side of the eye hold it on the line (else rubbers or a stop knot do). */
  readonly heldByShot: boolean;
  /** From the lower eye (0) to the top of the tip, rising. */
  readonly profile: readonly ProfilePoint[];
  /** Shot it takes, weighed in air and of `capacityMetal`, when `tipShowingMm` of tip shows. */
  readonly capacityG: number;
  readonly capacityMetal: Metal;
  readonly capacityBasis: "marked" | "measured";
  /** Load built into the float [g]; part of its own mass, not of its capacity. */
  readonly selfLoadG: number;
  /** Tip above the water at capacity. */
  readonly tipShowingMm: number;
  /** The float's own mass where it was weighed; else it follows from the profile. */
  readonly weighedMassG?: number;
}

/** Length from the lower eye to the top of the tip. */
export function lengthMm(float: Float): number {
  return float.profile[float.profile.length - 1]!.atMm;
}

/** Diameter of the top of the tip. */
export function tipDiameterMm(float: Float): number {
  return float.profile[float.profile.length - 1]!.diameterMm;
}
