import type { GuideStep } from "../core/depth/guide-step.ts";
import type { PlumbingStep, Plummet } from "../core/depth/plumbing.ts";
import type { WhipLine } from "../core/depth/whip.ts";
import type { SessionFeed } from "../core/feed/feed.ts";
import type { Finding } from "../core/finding.ts";
import type { ShotEffect, TipState } from "../core/float/shot-effects.ts";
import type { LockGroups } from "../core/loading/loading.ts";
import type { PlacedShot } from "../core/patterns/pattern.ts";
import type { LineChain } from "../core/tackle/knots.ts";
import type { Shot } from "../core/tackle/shot.ts";
import type { G, Mm, Ms, Share } from "../core/units.ts";
import type { GuideRow } from "./guide-row.ts";
import type { InWater } from "./in-water.ts";
import type { Rig } from "./rig.ts";

export { type FloatState, floatStates, type GuideStep } from "../core/depth/guide-step.ts";
export type { ShotEffect, TipState } from "../core/float/shot-effects.ts";

/** A shot in its place, with what the drawing and the tables need of it. */
export interface SolvedShot extends PlacedShot {
  readonly pullG: G;
  readonly diameterMm: Mm;
}

/** The rig made up for one depth. */
export interface SolvedDepth {
  readonly depthMm: Mm;
  readonly overdepthMm: Mm;
  /** Surface to the float's lower eye at the tip shown. */
  readonly draughtMm: Mm;
  readonly floatToHookMm: Mm;
  /** Shot on the line, from the hook up. */
  readonly lineShot: readonly SolvedShot[];
  /** Shot that lock the float, heaviest first; none where no shot hold it. */
  readonly lockShot: readonly SolvedShot[];
  /** The same in the groups that are pinched on either side of the float's eye. */
  readonly lock: LockGroups<SolvedShot>;
  readonly massG: G;
  readonly pullG: G;
  readonly sparePullG: G;
  /** Tip above the water while everything hangs clear; 0 where the load takes the float under. */
  readonly tipShowingMm: Mm;
  /** Tip as the rig is fished: the same, but for a rig whose setting lays shot on the bed; 0 where it shows none. */
  readonly tipAsSetMm: Mm;
  readonly tipUncertaintyMm: Mm;
  /** Shot set the tip, or the depth does where the rig lays shot on the bed: then none is added or taken for it. */
  readonly tipSetBy: "shot" | "depth";
  /** Share of the shot's pull that locks the float; 0 without lock shot. */
  readonly lockShare: Share;
  readonly depthGuide: readonly GuideStep[];
  /** The depth guide with lines that say the same put together. */
  readonly guideRows: readonly GuideRow[];
  /** The stream that the guide is for; only in running water. */
  readonly guidedFlow?: GuidedFlow;
  /** None where the depth sets the tip. */
  readonly tipStates: readonly TipState[];
  /** What one more of each size in the tub does to the tip, and one fewer of each on the rig; as above. */
  readonly shotEffects: readonly ShotEffect[];
  readonly plumbing: Plumbing;
  /** The line of a rig that is fished with a whip. */
  readonly whip?: WhipLine;
  /** How it sinks and hangs, where that was asked for. */
  readonly inWater?: InWater;
  readonly findings: readonly Finding[];
}

/** Every shot of the rig, from the hook up; lock shot last. */
export function allShot({
  lineShot,
  lockShot,
}: Pick<SolvedDepth, "lineShot" | "lockShot">): readonly SolvedShot[] {
  return [...lineShot, ...lockShot];
}

/** Shot of one size and metal, so many of them. */
interface AlikeShot extends Shot {
  readonly count: number;
}

/** The most shot of each size and metal that a rig takes at any of its depths, in the order in which they are met. */
export function mostShot({ depths }: Pick<SolvedRig, "depths">): readonly AlikeShot[] {
  const most = new Map<string, AlikeShot>();
  for (const depth of depths) {
    const counts = new Map<string, number>();
    for (const { size, metal, massG } of allShot(depth)) {
      const key = `${size} ${metal}`;
      const count = (counts.get(key) ?? 0) + 1;
      counts.set(key, count);
      if (count > (most.get(key)?.count ?? 0)) most.set(key, { size, metal, massG, count });
    }
  }
  return [...most.values()];
}

/** The most shot of each size that a rig takes at any of its depths. */
export function mostOfEachSize({ depths }: Pick<SolvedRig, "depths">): ReadonlyMap<string, number> {
  const most = new Map<string, number>();
  for (const depth of depths) {
    const sizes = allShot(depth).map(({ size }) => size);
    for (const size of sizes) {
      most.set(size, Math.max(sizes.filter((one) => one === size).length, most.get(size) ?? 0));
    }
  }
  return most;
}

/** A stream, and by which share the float is held back in it. */
export interface GuidedFlow {
  readonly paceMs: Ms;
  readonly heldBackShare: Share;
}

/** Finding this depth with a plummet. */
export interface Plumbing {
  /** From the first guess, halving. */
  readonly steps: readonly PlumbingStep[];
  /** Lock shot that stay on the float for it, each on its side; the rest, and those of the line, are off. */
  readonly kept: LockGroups;
  /** What the float does when it is set much too deep. */
  readonly tooDeep: "lies flat" | "stands too high";
  /** Lightest plummet that sinks the float with those alone [g]. */
  readonly plummetNeededG: G;
  /** The lightest in the box that will do. */
  readonly plummet?: Plummet;
}

/** A rig with its sums done, for every depth that it is for. */
export interface SolvedRig {
  readonly rig: Rig;
  readonly floatPullG: G;
  readonly floatLengthMm: Mm;
  readonly floatMassG: G;
  readonly hookAndBaitPullG: G;
  readonly lineChain: LineChain;
  readonly sessionFeed: SessionFeed;
  readonly depths: readonly SolvedDepth[];
  readonly findings: readonly Finding[];
}
