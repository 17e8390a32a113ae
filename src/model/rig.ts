import type { Basis } from "../core/basis.ts";
import type { Plummet } from "../core/depth/plumbing.ts";
import type { Setting } from "../core/depth/setting.ts";
import type { Outfit } from "../core/depth/whip.ts";
import type { Feed } from "../core/feed/feed.ts";
import type { Float } from "../core/float/float.ts";
import type { PatternSpec } from "../core/patterns/pattern.ts";
import type { TiedKnot } from "../core/tackle/knots.ts";
import type { LeadRule } from "../core/tackle/lead-rule.ts";
import type { Line } from "../core/tackle/line.ts";
import type { ShotScale, Tub } from "../core/tackle/shot.ts";
import type { G, KgM3, Mm, Ms, Share } from "../core/units.ts";
import type { Water, WaterKind } from "../core/water/water.ts";

export type { Feed } from "../core/feed/feed.ts";
export type { Knot } from "../core/tackle/knots.ts";
export type { Line } from "../core/tackle/line.ts";

export interface Hook {
  readonly size: number;
  readonly massG: G;
  readonly basis: Basis;
}

/** A hook bait, with its fall where somebody measured it. */
export interface Bait {
  readonly id: string;
  readonly title: string;
  readonly massG: G;
  readonly densityKgM3: KgM3;
  /** Measured fall speed of the bare bait [m/s]. */
  readonly fallMs?: Ms;
  readonly basis: Basis;
}

/**
 * A rig with every name looked up: all that solving needs, and nothing of where it was written. The command line
 * makes it from content, the browser from content and a form.
 */
export interface Rig {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  readonly water: WaterKind;
  readonly float: Float;
  readonly mainLine: Line;
  readonly hookLine: Line;
  /** Hook length, from loop to bend of the hook. */
  readonly hookLengthMm: Mm;
  readonly hook: Hook;
  readonly bait: Bait;
  readonly feed: Feed;
  readonly setting: Setting;
  /** Line beyond the depth (over depth > 0, off bottom or up in the water < 0). */
  readonly overdepthMm: Mm;
  readonly depthsMm: readonly Mm[];
  readonly pattern: PatternSpec;
  /** Least share of the load that locks the float, by pull; 0 for floats that shot do not hold. */
  readonly lockShareMin: number;
  readonly tub: Tub;
  readonly scaleId: string;
  readonly scaleTitle: string;
  /** What the scale has, in the tub or not. */
  readonly scaleSizes: ShotScale["sizes"];
  readonly conditions: Water;
  /** Surface pace of flowing water [m/s]; the paces the rig is for. Empty for still water. */
  readonly pacesMs: readonly Ms[];
  readonly outfit: Outfit;
  /** Of the rod, or of the whip. */
  /** Share by which its float is held back, where that is what the rig is for. */
  readonly heldBackShare?: Share;
  readonly rodLengthMm: Mm;
  /** Tip that should show, where it is not the float's own mark. */
  readonly tipWantedMm?: Mm;
  readonly knots: readonly TiedKnot[];
  readonly leadRule: LeadRule;
  /** Plummets in the box, to plumb the depth with. */
  readonly plummets: readonly Plummet[];
}
