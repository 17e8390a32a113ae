import type { FeedAndBait } from "../core/feed/feed-and-bait.ts";
import type { BiteStep } from "../core/float/bite.ts";
import type { FeedMeeting } from "../core/flow/feed-drift.ts";
import type { FlowHang } from "../core/flow/hang.ts";
import type { Sink } from "../core/sink/sink-of-rig.ts";
import type { G, Mm, Ms, S, Share } from "../core/units.ts";

/** Ways to hang the same shot, from the softest bite to the hardest. */
export const arrangements = ["strung out", "spread bulk", "bulk"] as const;
export type Arrangement = (typeof arrangements)[number];

/** One of the same shot in its other place. */
export interface SisterShot {
  readonly fromHookMm: Mm;
  readonly diameterMm: Mm;
}

/** How the bait of the same load sinks in the other pattern. */
export interface Sister {
  readonly arrangement: Exclude<Arrangement, "spread bulk">;
  /** From the hook up, without those that lock the float. */
  readonly shot: readonly SisterShot[];
  readonly sink: readonly Sink[];
}

/** What a fish feels of the rig's shot in one arrangement, and what the tip does. */
export interface LiftAndPull {
  readonly arrangement: Arrangement;
  /** Whether this is how the rig has it. */
  readonly own: boolean;
  /** Centimetre by centimetre, until it has the last shot or is at the surface. */
  readonly steps: readonly BiteStep[];
  /** The most that it grows by within one knock. */
  readonly hardestStepG: G;
}

/** How the rig hangs at one pace, held back by one share. */
export interface FlowFigure extends FlowHang {
  /** Height of the hook that `extraDepthMm` is for. */
  readonly promisedOffBedMm: Mm;
  /** Line to add so that the hook hangs there, below 0 to take; null where no setting keeps it there. */
  readonly extraDepthMm: Mm | null;
  /** Loose feed that is thrown in as the float is cast. */
  readonly feed: FeedMeeting;
}

/** Shares by which a float may be held back before it goes under; 1 where it may be stopped. */
export interface HoldBackMax {
  readonly paceMs: Ms;
  /** As this rig's float is fixed. */
  readonly share: Share;
  /** The same float fixed at its foot alone, and at top and bottom. */
  readonly bottomOnlyShare: Share;
  readonly topAndBottomShare: Share;
}

/** From which pace a rig is too light, and what load would do in its own paces. */
export interface TooLight {
  /** Null where no pace that is fished lifts the bait so far. */
  readonly paceMs: Ms | null;
  /** Load as a multiple of the rig's own shot; 1 where that does, null where no load of shot would. */
  readonly needed: readonly { readonly paceMs: Ms; readonly loadShare: Share | null }[];
}

/** A ball of groundbait that holds together down to the bed, and how far it drifts in each pace. */
export interface BallDown {
  readonly timeS: S;
  readonly drifts: readonly { readonly paceMs: Ms; readonly driftMm: Mm }[];
}

/** How a rig sinks and hangs, and what was assumed for it. */
export interface InWater {
  /** One for each way in which the rig can land. */
  readonly sink: readonly Sink[];
  /** The same shot strung out where the rig gathers them, in a bulk where it strings them out; where there is such. */
  readonly sister?: Sister;
  /** Loose feed thrown in with the rig, against its bait, in still water; only for still water. */
  readonly againstFeed?: FeedAndBait;
  readonly ball: BallDown;
  /** What a fish feels as it lifts the bait, for each way of hanging the same shot. */
  readonly lift: readonly LiftAndPull[];
  /** One for each pace and share; empty in still water. */
  readonly flow: readonly FlowFigure[];
  readonly holdBackMax: readonly HoldBackMax[];
  /** Only for running water, and only where there was time for it. */
  readonly tooLight?: TooLight;
  readonly assumed: {
    readonly floatDragAreaCm2: number;
    readonly floatMassG: G;
    /** Steady fall of the loose feed: taken to be that of the hook bait by itself [m/s]. */
    readonly feedFallMs: Ms;
  };
}
