import { diameterAtMm, type Profile, type ProfilePoint, topMm } from "../../core/float/profile.ts";
import { circle, type Point, point, polygon, thin } from "../items.ts";
import type { Item } from "../model.ts";
import type { Part } from "./part.ts";

interface FloatBody {
  readonly profile: Profile;
  /** Length of tip in the accent, counted from the top [mm of the float]. */
  readonly tipMm: number;
  /** Length of foot that holds a built-in load [mm of the float]. */
  readonly loadMm: number;
  /** Whether it ends in an eye that the line runs through. */
  readonly eye: boolean;
  /** Where the lower end of the profile is. */
  readonly at: Point;
  /** Drawn length per length, and drawn width per diameter. */
  readonly lengthScale: number;
  readonly widthScale: number;
}

export const floatEyeRadiusMm = 0.55;

/** The part of a profile between two heights. */
function cutProfile(profile: Profile, fromMm: number, toMm: number): ProfilePoint[] {
  const end = (atMm: number) => ({ atMm, diameterMm: diameterAtMm(profile, atMm) });
  return [end(fromMm), ...profile.filter((p) => p.atMm > fromMm && p.atMm < toMm), end(toMm)];
}

/** A float from its profile, standing up: body in outline, tip in the accent, a built-in load black. */
export const floatBody: Part<FloatBody> = {
  draw: ({ profile, tipMm, loadMm, eye, at, lengthScale, widthScale }) => {
    const outline = (points: readonly ProfilePoint[]) => {
      const side = (sign: 1 | -1) =>
        points.map((p) =>
          point(at.xMm + (sign * p.diameterMm * widthScale) / 2, at.yMm - p.atMm * lengthScale),
        );
      return [...side(-1), ...side(1).reverse()];
    };
    const top = topMm(profile);
    const items: Item[] = [
      polygon(outline(cutProfile(profile, 0, top - tipMm)), "paper", thin),
      polygon(outline(cutProfile(profile, top - tipMm, top)), "accent", thin),
    ];
    if (loadMm > 0) items.push(polygon(outline(cutProfile(profile, 0, loadMm)), "ink", thin));
    if (eye) {
      const middle = point(at.xMm, at.yMm + floatEyeRadiusMm);
      items.push(circle(middle, floatEyeRadiusMm, { fill: "paper", stroke: thin }));
    }
    return items;
  },
  sample: {
    profile: [
      { atMm: 0, diameterMm: 2 },
      { atMm: 60, diameterMm: 3 },
      { atMm: 110, diameterMm: 7.5 },
      { atMm: 130, diameterMm: 7 },
      { atMm: 150, diameterMm: 3 },
    ],
    tipMm: 20,
    loadMm: 20,
    eye: true,
    at: point(15, 18),
    lengthScale: 0.11,
    widthScale: 0.4,
  },
};
