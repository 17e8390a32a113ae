import { type Answer, answer, type Finding } from "../core/finding.ts";
import type { Tub } from "../core/tackle/shot.ts";
import type { Rig } from "../model/rig.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { type FromBox, fallFromBox, toldLater, worthBuying } from "../solve/from-box.ts";
import { solveInWater } from "../solve/in-water.ts";

/** What takes longer than a frame: how a made-up rig sinks, and what its box lacks. */
export interface LaterAsked {
  readonly solved: SolvedRig;
  /** Where it was made from a box. */
  readonly boxed?: { readonly rig: Rig; readonly box: Tub; readonly from: FromBox };
}

/** The rig's depth with the water's part and what else was found; nothing where the fall cannot be had. */
export function laterSums({ solved, boxed }: LaterAsked): SolvedDepth | undefined {
  const [depth] = solved.depths;
  const made = depth && wet(solved, depth);
  if (!made?.ok) return undefined;
  if (!boxed) return made.value;
  const { rig, box, from } = boxed;
  const [ownDepth] = from.own.depths;
  const own = ownDepth && wet(from.own, ownDepth);
  const fall: readonly Finding[] = own?.ok ? fallFromBox(made.value, own.value) : [];
  const later = [...fall, ...worthBuying(rig, box, from)];
  return { ...made.value, findings: toldLater(made.value.findings, later) };
}

function wet(solved: SolvedRig, depth: SolvedDepth): Answer<SolvedDepth> {
  const inWater = solveInWater(solved, depth);
  return inWater.ok ? answer({ ...depth, inWater: inWater.value }) : inWater;
}
