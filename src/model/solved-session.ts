import type { FeedPlan } from "../core/session/feed-plan.ts";
import type { FishedSpan } from "../core/session/places.ts";
import type { RunSheet } from "../core/session/run-sheet.ts";
import type { KitLine } from "../core/tackle/kit.ts";
import type { G, Ml, Mm } from "../core/units.ts";
import type { LessonPlan, RigEntry } from "./library.ts";
import type { Session } from "./session.ts";
import type { SolvedRig } from "./solved.ts";
import type { ThingNeed } from "./stock.ts";
import type { Spot, SwimEntry } from "./swim.ts";

/** A rig made up for a spot. */
export interface RigAtSpot {
  readonly entry: RigEntry;
  /** For the depth there alone, and for the pace of the water. */
  readonly solved: SolvedRig;
  /** When it is fished. */
  readonly spans: readonly FishedSpan[];
}

/** A spot of a swim with the learners who fish it. */
export interface SessionSpot {
  readonly swim: SwimEntry;
  readonly spot: Spot;
  readonly depthMm: Mm;
  readonly learners: number;
  readonly rigs: readonly RigAtSpot[];
}

/** Feed or bait that is brought. */
export interface FeedLine {
  readonly what: string;
  readonly use: "feed" | "hook";
  readonly neededMl: Ml;
  readonly inBoxMl: Ml;
  /** Whole packets; none where nobody says how it is sold. */
  readonly packets: number;
  readonly packetMl?: Ml;
  readonly priceCents?: number;
}

/** Groundbait for all the balls of a session. */
export interface GroundbaitLine {
  readonly balls: number;
  readonly dryLowG: G;
  readonly dryHighG: G;
  readonly waterLowMl: Ml;
  readonly waterHighMl: Ml;
  readonly heldBackG: G;
  readonly inBoxG: G;
  readonly packets: number;
  readonly packetG?: G;
  readonly priceCents?: number;
}

/** A session with its sums done. */
export interface SolvedSession {
  readonly session: Session;
  readonly plans: readonly LessonPlan[];
  readonly sheet: RunSheet;
  readonly spots: readonly SessionSpot[];
  readonly feedPlan: FeedPlan;
  readonly feeds: readonly FeedLine[];
  readonly groundbait?: GroundbaitLine;
  readonly kit: readonly (KitLine<ThingNeed> & { readonly priceCents?: number })[];
  /** What lessons need besides tackle; a thing that two of them use is brought once. */
  readonly tools: readonly { readonly title: string; readonly count: number }[];
}
