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

/** A rig that lessons want made up beside those that are fished. */
export interface LessonRig {
  readonly entry: RigEntry;
  readonly solved: SolvedRig;
  readonly count: number;
  /** Where it is made up for; nothing where it is made up for its own depths. */
  readonly spot?: SessionSpot;
}

/** Feed or bait that is brought: what is thrown in and what goes on hooks is bought as one where it is one thing. */
export interface FeedLine {
  readonly what: string;
  /** Of that, what is thrown in. */
  readonly fedMl: Ml;
  /** And what goes on hooks, by the baits' titles. */
  readonly onHooks: readonly { readonly bait: string; readonly volumeMl: Ml }[];
  /** All of it. */
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

/** What is made ready before a session. */
export interface SessionReady {
  /** By strength of line: reels, each with so much line. */
  readonly reels: readonly { readonly strengthG: G; readonly count: number; readonly lineMm: Mm }[];
  /** By strength of line and length: lines for whips. */
  readonly whipLines: readonly { readonly strengthG: G; readonly count: number; readonly lineMm: Mm }[];
  /** By hook and strength of line. */
  readonly hookLengths: readonly {
    readonly hook: number;
    readonly strengthG: G;
    readonly count: number;
  }[];
  /** Learners who fish with one. */
  readonly rods: number;
  readonly whips: number;
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
  readonly lessonRigs: readonly LessonRig[];
  /** What is filled, tied and brought before the day, without spares. */
  readonly ready: SessionReady;
  /** What lessons need besides tackle; a thing that two of them use is brought once. */
  readonly tools: readonly { readonly title: string; readonly count: number }[];
}
