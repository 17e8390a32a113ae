import type { Rig } from "../../model/rig.ts";
import type { SolvedRig } from "../../model/solved.ts";
import type { DrawingKit } from "../kit.ts";

/** What each step of making up a rig puts on the line. */
export type MakeUpStep =
  | "rings"
  | "rubbers"
  | "stop-knot"
  | "bead"
  | "float"
  | "loop"
  | "hook-length"
  | "hold"
  | "plummet"
  | "lock"
  | "shot";

export type Hold = "shot" | "rubbers" | "stop-knot";

export function holdOf({ float }: Rig): Hold {
  if (float.heldByShot) return "shot";
  return float.attachment === "sliding" ? "stop-knot" : "rubbers";
}

/**
 * The order to put a rig together: whatever slides on the line goes on before the loop is tied, rubbers and stop knot
 * before the float, and the shot only when the depth is found: till then the lightest of each side hold a float that shot lock,
 * so that the plummet can sink it and too deep a setting shows.
 */
export function makeUpSteps({ rig, depths }: SolvedRig): readonly MakeUpStep[] {
  const hold = holdOf(rig);
  const first: Readonly<Record<Hold, readonly MakeUpStep[]>> = {
    shot: [],
    rubbers: ["rubbers"],
    "stop-knot": ["stop-knot", "bead"],
  };
  const shotOnLine = depths.some((depth) => depth.lineShot.length > 0);
  return [
    "rings",
    ...first[hold],
    "float",
    "loop",
    "hook-length",
    ...(hold === "shot" ? (["hold"] as const) : []),
    "plummet",
    ...(hold === "shot" ? (["lock"] as const) : []),
    ...(shotOnLine ? (["shot"] as const) : []),
  ];
}

/** Steps that are told in different words for each way to hold the float. */
type StepByHold = "float" | "plummet" | "shot";
const byHold = (step: MakeUpStep): step is StepByHold => /^(?:float|plummet|shot)$/.test(step);

/** What to do at each step, in their order. */
export function makeUpCaption(solved: SolvedRig, kit: DrawingKit): string {
  return makeUpSteps(solved)
    .map((step, index) => `${index + 1}. ${makeUpStep(solved, step, kit)}`)
    .join(" ");
}

/** What to do at a step, in a sentence or two. */
function makeUpStep(solved: SolvedRig, step: MakeUpStep, kit: DrawingKit): string {
  const { words, figures } = kit;
  const { rig, depths } = solved;
  const depth = depths[0]!;
  const key = byHold(step) ? (`${step}.${holdOf(rig)}` as const) : step;
  return words(`drawing.scenes.make-up.do.${key}`, {
    length: figures.shortGap(rig.hookLengthMm),
    kept: figures.lock(depth.plumbing.kept),
    lock: figures.lock(depth.lock),
    shot: figures.shotPlaces(depth.lineShot),
  });
}
