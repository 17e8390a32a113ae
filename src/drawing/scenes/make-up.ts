import type { Rig } from "../../solve/rig.ts";
import type { SolvedRig } from "../../solve/solved.ts";
import type { DrawingKit } from "../kit.ts";
import { lineShot, lockShot, spokenShot } from "../rig-words.ts";

/** What each step of making up a rig puts on the line. */
export type MakeUpStep =
  | "rings"
  | "rubbers"
  | "stopKnot"
  | "bead"
  | "float"
  | "loop"
  | "hookLength"
  | "lock"
  | "plummet"
  | "shot";

type Hold = "shot" | "rubbers" | "stopKnot";

export function holdOf({ float }: Rig): Hold {
  if (float.heldByShot) return "shot";
  return float.attachment === "sliding" ? "stopKnot" : "rubbers";
}

/**
 * The order to put a rig together: whatever slides on the line goes on before the loop is tied, rubbers and stop knot
 * before the float, and the shot only when the depth is found.
 */
export function makeUpSteps({ rig, depths }: SolvedRig): readonly MakeUpStep[] {
  const hold = holdOf(rig);
  const first: Readonly<Record<Hold, readonly MakeUpStep[]>> = {
    shot: [],
    rubbers: ["rubbers"],
    stopKnot: ["stopKnot", "bead"],
  };
  const shotOnLine = depths.some((depth) => lineShot(depth).length > 0);
  return [
    "rings",
    ...first[hold],
    "float",
    "loop",
    "hookLength",
    ...(hold === "shot" ? (["lock"] as const) : []),
    "plummet",
    ...(shotOnLine ? (["shot"] as const) : []),
  ];
}

/** What to do at a step, in a sentence or two. */
export function makeUpCaption(solved: SolvedRig, step: MakeUpStep, kit: DrawingKit): string {
  const { words, figures } = kit;
  const { rig, depths } = solved;
  const depth = depths[0]!;
  const key = step === "float" || step === "plummet" ? `${step}.${holdOf(rig)}` : step;
  return words(`drawing.scenes.makeUp.do.${key}`, {
    length: figures.shortGap(rig.hookLengthMm),
    lock: spokenShot(lockShot(depth), kit),
    shot: spokenShot(lineShot(depth), kit),
  });
}
