import { movedPart } from "../../core/depth/setting.ts";
import { moveFloat } from "../../core/float/moved-float.ts";
import { tipShowingMm, toldTipMm } from "../../core/float/tip.ts";
import { lockShotOf, totalPullG } from "../../core/loading/loading.ts";
import type { StateGroup } from "../../model/pictures.ts";
import type { Rig } from "../../model/rig.ts";
import type { SolvedDepth, SolvedRig, SolvedShot } from "../../model/solved.ts";
import { keyOf } from "../../words/words.ts";
import type { DrawingKit } from "../kit.ts";
import type { Verdict } from "../verdict.ts";
import { liftBite, lyingShot } from "./lift-bite.ts";
import { wrongLoad } from "./wrong-load.ts";

/** How a float stands or moves, and what the line below it does. */
export interface FloatPose {
  /** Tip above the water [mm of the float]; null where it is under. */
  readonly tipMm: number | null;
  /** Lean to the right from upright [degrees]. */
  readonly leanDegrees: number;
  readonly line: "hanging" | "plummet standing" | "plummet slack" | "lifted" | "on the bed";
  /** Where the bait is, to the side of the float, as a share of the panel's width. */
  readonly baitAside: number;
  /** The shot that is wanting under the float, or one too many there. */
  readonly load?: "too little" | "too much";
  readonly moving?: "down" | "up" | "left";
  readonly verdict: Verdict;
  /** Which way the float has to be moved along its line. */
  readonly toMove?: "up" | "down";
  readonly drift?: "wind" | "flow";
  /** A fish that has the bait, turned clockwise from looking to the left [degrees]. */
  readonly fishDegrees?: number;
  /** Fills the gaps of the caption. */
  readonly values: Readonly<Record<string, string>>;
  /** Keys of the title and the caption, where they are not `title` and `caption`. */
  readonly title?: "title-on-the-bed";
  readonly caption?: FloatCaption;
}

type FloatCaption =
  | "on-the-bed"
  | "under"
  | "level"
  | "high"
  | "high-alone"
  | "flat"
  | "little"
  | "as-well"
  | "flow"
  | "caption";

/** Undefined where a rig has no such state. */
type PoseOf = (solved: SolvedRig, depth: SolvedDepth, kit: DrawingKit) => FloatPose | undefined;

const upright = { leanDegrees: 0, baitAside: 0, line: "hanging" } as const;

/** Less tip than this is as good as none [mm]. */
const levelMm = 2.5;

/** A float that lies on the water. */
export const flatDegrees = 78;

/** How a fish with the bait is turned: off along the bed, or up from it. */
const fishDegrees = { away: 0, up: 15 } as const;

function lowestShot(depth: SolvedDepth): SolvedShot | undefined {
  return depth.lineShot[0];
}

const moved = ({ float }: Rig, { words }: DrawingKit) => ({
  moved: words(`told.moved.${keyOf(movedPart(float))}`),
});

/** Every state that is drawn, by its key under `drawing.state` in the words. */
const poses = {
  "too-little-shot": (solved, depth, kit) => {
    if (lyingShot(depth).length > 0) return undefined;
    const wrong = wrongLoad(solved, depth, "too little", kit);
    if (!wrong || wrong.tipMm === null) return undefined;
    const { shot, tipMm } = wrong;
    return {
      ...upright,
      verdict: "wrong",
      load: "too little",
      tipMm,
      values: { shot, tip: kit.figures.tip(tipMm) },
    };
  },
  right: (_solved, depth, { figures }) => {
    const lying = lyingShot(depth);
    // Too little and too much are told of a rig that hangs clear, and so is what is right between them.
    if (lying.length === 0) {
      const tipMm = depth.tipShowingMm;
      return { ...upright, verdict: "right", tipMm, values: { tip: figures.tip(tipMm) } };
    }
    const tipMm = depth.tipAsSetMm;
    const values = { tip: figures.tip(tipMm), shot: figures.shot(lying) };
    return {
      ...upright,
      verdict: "right",
      tipMm,
      line: "on the bed",
      baitAside: -0.2,
      title: "title-on-the-bed",
      caption: "on-the-bed",
      values,
    };
  },
  "too-much-shot": (solved, depth, kit) => {
    if (lyingShot(depth).length > 0) return undefined;
    const wrong = wrongLoad(solved, depth, "too much", kit);
    if (!wrong) return undefined;
    const { shot, tipMm } = wrong;
    const values = { shot, tip: kit.figures.tip(tipMm ?? 0) };
    const pose = { ...upright, verdict: "wrong", load: "too much", tipMm, values } as const;
    if (tipMm === null) return { ...pose, caption: "under" };
    return tipMm < levelMm ? { ...pose, caption: "level" } : pose;
  },
  "too-shallow": ({ rig }, _depth, kit) => ({
    ...upright,
    verdict: "wrong",
    toMove: "up",
    tipMm: null,
    line: "plummet standing",
    values: moved(rig, kit),
  }),
  "depth-right": (_solved, depth) => ({
    ...upright,
    verdict: "right",
    tipMm: depth.tipAsSetMm,
    line: "plummet standing",
    values: {},
  }),
  "too-deep": ({ rig }, { plumbing }, kit) => {
    const wrong = { verdict: "wrong", toMove: "down", values: moved(rig, kit) } as const;
    const slack = { ...wrong, line: "plummet slack", baitAside: 0 } as const;
    if (plumbing.tooDeep === "lies flat") {
      return { ...slack, tipMm: rig.float.tipShowingMm, leanDegrees: flatDegrees };
    }
    const keptPullG = totalPullG(lockShotOf(plumbing.kept), rig.conditions);
    const tipMm = tipShowingMm(rig.float, keptPullG, rig.conditions);
    return { ...slack, tipMm, leanDegrees: 0, caption: keptPullG > 0 ? "high" : "high-alone" };
  },
  "bite-under": () => ({
    ...upright,
    verdict: "strike",
    tipMm: null,
    moving: "down",
    baitAside: 0.06,
    fishDegrees: fishDegrees.away,
    values: {},
  }),
  "lift-bite": (solved, depth, { figures }) => {
    const bite = liftBite(solved, depth);
    // A float that shows nothing is no reason to strike.
    if (!bite?.isSeen) return undefined;
    const { lifted, tipMm } = bite;
    const values = { shot: lifted.size };
    if (tipMm === undefined)
      return {
        verdict: "strike",
        tipMm: solved.rig.float.tipShowingMm,
        leanDegrees: flatDegrees,
        line: "lifted",
        baitAside: 0,
        moving: "up",
        fishDegrees: fishDegrees.up,
        caption: "flat",
        values,
      };
    const tip = figures.tip(tipMm);
    const before = figures.tip(depth.tipAsSetMm);
    // What lies on the bed is off the float already, the bait first of all.
    const hangs = depth.overdepthMm > 0 && !lyingShot(depth).includes(lifted);
    const caption = hangs ? "as-well" : "caption";
    return {
      ...upright,
      verdict: "strike",
      tipMm,
      line: "lifted",
      moving: "up",
      fishDegrees: fishDegrees.up,
      caption,
      values: { ...values, tip, before },
    };
  },
  "dragged-sideways": ({ rig }, depth) => ({
    verdict: "strike",
    tipMm: depth.tipAsSetMm * 0.6,
    leanDegrees: 24,
    line: "hanging",
    baitAside: -0.3,
    moving: "left",
    ...(rig.water === "flowing" ? ({ drift: "flow", caption: "flow" } as const) : { drift: "wind" }),
    fishDegrees: fishDegrees.away,
    values: {},
  }),
  "laid-on": (solved, depth, kit) => {
    if (solved.rig.water !== "still") return undefined;
    const laid = moveFloat(depth, solved.rig.water, "over depth");
    const lying = lyingShot(laid);
    if (lying.length === 0) return undefined;
    const values = {
      shot: kit.figures.shot(lying),
      gap: kit.figures.shortGap(laid.overdepthMm),
      tip: kit.figures.tip(laid.tipShowingMm),
    };
    return {
      verdict: "right",
      tipMm: laid.tipShowingMm,
      leanDegrees: 6,
      line: "on the bed",
      baitAside: -0.3,
      drift: "wind",
      values,
    };
  },
  "held-by-the-bed": ({ rig }, depth) => {
    const lowest = lowestShot(depth);
    if (!lowest || rig.water !== "flowing") return undefined;
    return {
      verdict: "wrong",
      toMove: "down",
      tipMm: null,
      leanDegrees: 24,
      line: "on the bed",
      baitAside: -0.3,
      drift: "flow",
      values: { shot: lowest.size },
    };
  },
} satisfies Record<string, PoseOf>;

export type FloatPicture = keyof typeof poses;

export const floatPictures = Object.keys(poses) as FloatPicture[];

/** The states that a text can ask for together. */
export const stateGroups: Readonly<Record<StateGroup, readonly FloatPicture[]>> = {
  load: ["too-little-shot", "right", "too-much-shot"],
  depth: ["too-shallow", "depth-right", "too-deep"],
  bites: ["bite-under", "lift-bite", "dragged-sideways", "laid-on", "held-by-the-bed"],
  all: floatPictures,
};

/**
 * A float's pose in one of the states, from the rig's figures, its tip as high as it is told; undefined where the rig has
 * no such state.
 */
export function floatPose(
  picture: FloatPicture,
  solved: SolvedRig,
  depth: SolvedDepth,
  kit: DrawingKit,
): FloatPose | undefined {
  const poseOf: PoseOf = poses[picture];
  const pose = poseOf(solved, depth, kit);
  return pose && { ...pose, tipMm: pose.tipMm === null ? null : toldTipMm(pose.tipMm) };
}
