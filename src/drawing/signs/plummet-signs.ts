import { bold, partWay, point, polygon, polyline } from "../items.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { float } from "./sign-float.ts";
import { bed, span, stopped, surfaceMm, unlike, water } from "./sign-parts.ts";

/** A float that is short against the depth, with a plummet on its line. */
const plumbed = (x: number, footMm: number): Item[] => [
  ...float({ xMm: x, tip: 0.4, lengthMm: 6 }, footMm - 13.6),
  ...parts.plummet.draw({ at: point(x, footMm), heightMm: 3.2 }),
];

const slope = { top: point(0, 15.5), bottom: point(36, 23.6) };
const slopeMm = (x: number) => partWay(slope.top, slope.bottom, x / 36).yMm;

/** Signs that are seen while the depth is found. */
export const plummetSigns = {
  // Clear of the bed it should take the float under, which stays up.
  "plummet-hangs": () => [...water(), bed(), ...plumbed(15, 18.4), ...stopped(21, 1.4, 7.6, 14.4)],
  "plummet-on-slope": () => [
    ...water(),
    polygon([slope.top, slope.bottom, point(36, 24), point(0, 24)], "paper"),
    polyline([slope.top, slope.bottom], bold),
    ...unlike(point(18, 13.2)),
    ...[5, 26].flatMap((x) => [
      ...plumbed(x, slopeMm(x) - 0.4),
      ...span(point(x + 4.5, surfaceMm + 0.4), point(x + 4.5, slopeMm(x + 4.5) - 0.3)),
    ]),
  ],
} satisfies Readonly<Record<string, () => readonly Item[]>>;
