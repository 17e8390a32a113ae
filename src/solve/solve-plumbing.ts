import {
  choosePlummet,
  keptForPlumbing,
  type PlumbedFloat,
  plumbingSign,
  plumbingSteps,
} from "../core/depth/plumbing.ts";
import { type Answer, answer } from "../core/finding.ts";
import { type LockGroups, lockShotOf, totalPullG } from "../core/loading/loading.ts";
import type { Mm } from "../core/units.ts";
import type { Rig } from "../model/rig.ts";
import type { Plumbing } from "../model/solved.ts";

/** Plummets are bought in a metal that every rule allows. */
const plummetMetal = "zinc";

/** Deeper by this the plummet lies and the line is slack, whatever the float [mm]. */
const farTooDeepMm = 1000;

/** Finding the depth of a rig with a plummet. */
export function solvePlumbing(rig: Rig, depthMm: Mm, markMm: Mm, lock: LockGroups): Answer<Plumbing> {
  const { float, conditions, plummets } = rig;
  const kept = keptForPlumbing(lock);
  const keptPullG = totalPullG(lockShotOf(kept), conditions);
  const plumbed: PlumbedFloat = { float, water: conditions, markMm, keptPullG };
  const steps = plumbingSteps(plumbed, depthMm);
  if (!steps.ok) return steps;
  const choice = choosePlummet(float, keptPullG, plummets, plummetMetal, conditions);
  if (!choice.ok) return choice;
  const { plummet, neededG } = choice.value;
  const tooDeep = plumbingSign(plumbed, farTooDeepMm) === "lies flat" ? "lies flat" : "stands too high";
  const plumbing = {
    steps: steps.value,
    kept,
    tooDeep,
    plummetNeededG: neededG,
    ...(plummet && { plummet }),
  } as const;
  // An empty box says nothing about a plummet that will not do.
  return answer(plumbing, plummets.length > 0 ? choice.findings : []);
}
