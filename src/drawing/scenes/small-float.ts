import { topMm } from "../../core/float/profile.ts";
import type { Rig } from "../../model/rig.ts";
import type { Point } from "../items.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { rotated, turnFromUpright } from "../transform.ts";

/** Widest part of a float for its length, in pictures where its true shape would be too thin to see. */
const widthShare = 0.2;

/** A rig's float as a scene shows it: standing on `foot`, of a length that suits the picture. */
export function smallFloat({ float }: Rig, foot: Point, lengthMm: number): readonly Item[] {
  const { profile, tipShowingMm, attachment } = float;
  const top = topMm(profile);
  return parts.floatBody.draw({
    profile,
    tipMm: Math.max(tipShowingMm, top * 0.12),
    loadMm: 0,
    eye: attachment !== "top and bottom",
    at: foot,
    lengthScale: lengthMm / top,
    widthScale: (widthShare * lengthMm) / Math.max(...profile.map(({ diameterMm }) => diameterMm)),
  });
}

/** The same out of the water, on a line that is tight up to the rod: along it where that holds its top, else hanging from its eye. */
export function floatInAir(rig: Rig, foot: Point, rodTip: Point, lengthMm: number): Item[] {
  const isAlong = rig.float.attachment === "top and bottom";
  return rotated(smallFloat(rig, foot, lengthMm), isAlong ? turnFromUpright(foot, rodTip) : 180, foot);
}
