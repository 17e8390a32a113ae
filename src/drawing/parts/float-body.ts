import { diameterAtMm, type Profile, type ProfilePoint, topMm } from "../../core/float/profile.ts";
import { entry, first, last } from "../../core/lists.ts";
import { circle, type Point, point, thin } from "../items.ts";
import type { Ink, Item, PathStep, Stroke } from "../model.ts";
import type { Part } from "./part.ts";

interface FloatBody {
  readonly profile: Profile;
  /** Length of tip in the accent, counted from the top [mm of the float]. */
  readonly tipMm: number;
  /** Length of foot that holds a built-in load [mm of the float]. */
  readonly loadMm: number;
  /** Length of foot that is a stem of another material than the body, drawn in a tone [mm of the float]. */
  readonly stemMm?: number;
  /** Whether its outline is rounded between the points of its profile, in pictures large enough to see it. */
  readonly isSmooth?: boolean;
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

/** A tip thinner than this has its edge in its own colour, which a dark one would leave no room for [mm of paper]. */
const thinTipMm = 1.8;

/** How fast a side of the outline goes out at each of its points: never beyond them, level where it turns. */
function slopes(points: readonly ProfilePoint[]): number[] {
  const parts = points
    .slice(1)
    .map(
      ({ atMm, diameterMm }, i) =>
        (diameterMm - entry(points, i).diameterMm) / (atMm - entry(points, i).atMm || 1),
    );
  return points.map((_, i) => {
    const [below, above] = [parts[i - 1], parts[i]];
    if (below === undefined || above === undefined) return below ?? above ?? 0;
    return below * above <= 0 ? 0 : (2 * below * above) / (below + above);
  });
}

/** From one point of a side to the next. */
type Side = (
  from: ProfilePoint,
  to: ProfilePoint,
  slopeFrom: number,
  slopeTo: number,
  sign: 1 | -1,
) => PathStep;

/** A float from its profile, standing up: body in outline, tip in the accent, a stem grey, a built-in load black. */
export const floatBody: Part<FloatBody> = {
  draw: ({ profile, tipMm, loadMm, stemMm = 0, isSmooth = false, eye, at, lengthScale, widthScale }) => {
    const place = (atMm: number, diameterMm: number, sign: number) =>
      [at.xMm + (sign * diameterMm * widthScale) / 2, at.yMm - atMm * lengthScale] as const;
    const side: Side = (from, to, slopeFrom, slopeTo, sign) => {
      const end = place(to.atMm, to.diameterMm, sign);
      if (!isSmooth) return ["L", ...end];
      const third = (to.atMm - from.atMm) / 3;
      return [
        "C",
        ...place(from.atMm + third, from.diameterMm + slopeFrom * third, sign),
        ...place(to.atMm - third, to.diameterMm - slopeTo * third, sign),
        ...end,
      ];
    };
    const outline = (points: readonly ProfilePoint[], fill: Ink, stroke: Stroke): Item => {
      const slope = slopes(points);
      const up = points
        .slice(1)
        .map((to, i) => side(entry(points, i), to, entry(slope, i), entry(slope, i + 1), -1));
      const down = points
        .slice(1)
        .map((from, i) => side(from, entry(points, i), entry(slope, i + 1), entry(slope, i), 1))
        .reverse();
      const [foot, top] = [first(points), last(points)];
      const steps: PathStep[] = [
        ["M", ...place(foot.atMm, foot.diameterMm, -1)],
        ...up,
        ["L", ...place(top.atMm, top.diameterMm, 1)],
        ...down,
        ["Z"],
      ];
      return { kind: "path", steps, fill, stroke };
    };
    const top = topMm(profile);
    const tip = cutProfile(profile, top - tipMm, top);
    const isThin = Math.max(...tip.map((p) => p.diameterMm)) * widthScale < thinTipMm;
    const items: Item[] = [outline(cutProfile(profile, 0, top - tipMm), "paper", thin)];
    if (stemMm > 0) items.push(outline(cutProfile(profile, 0, stemMm), "tone", thin));
    items.push(outline(tip, "accent", isThin ? { ...thin, ink: "accent" } : thin));
    if (loadMm > 0) items.push(outline(cutProfile(profile, 0, loadMm), "ink", thin));
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
