import type { Basis } from "../core/basis.ts";
import type { G, Mm, Share } from "../core/units.ts";

/** How hard it blows, from the least. */
export const windStrengths = ["calm", "breeze", "strong"] as const;
export type WindStrength = (typeof windStrengths)[number];

/** Whether it blows at least as hard as that. */
export const blows = (wind: WindStrength, of: WindStrength): boolean =>
  windStrengths.indexOf(wind) >= windStrengths.indexOf(of);

/** What rules a rig out. */
export type LimitRule =
  | { readonly rule: "water" }
  | { readonly rule: "rod" }
  | { readonly rule: "box" }
  | { readonly rule: "pace"; readonly most: Share }
  | { readonly rule: "depth"; readonly least: Share; readonly most: Share }
  | { readonly rule: "distance"; readonly fromMm: Mm; readonly loadEachMetreG: G }
  | { readonly rule: "two points"; readonly rodLengths: number }
  | { readonly rule: "line" }
  | { readonly rule: "snag"; readonly withinMm: Mm; readonly mainLineG: G }
  | { readonly rule: "level"; readonly above: number }
  | { readonly rule: "wind"; readonly of: WindStrength; readonly loadG: G };

/** Limits that no list of rules may go without. */
export const neededLimits = ["water", "rod", "box"] as const satisfies readonly LimitRule["rule"][];

/** What speaks for a rig, and how much. */
export type PointRule =
  | { readonly rule: "fish" | "depth" | "pace" | "level"; readonly points: number }
  | { readonly rule: "wind"; readonly of: WindStrength; readonly points: number };

/** `content/choosing.yaml`. */
export interface ChoosingRules {
  readonly basis: Basis;
  readonly limits: readonly LimitRule[];
  readonly points: readonly PointRule[];
}
