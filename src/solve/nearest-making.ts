import type { Finding } from "../core/finding.ts";
import { lengthMm } from "../core/float/float.ts";
import { tipShowingMm, tipStepMm } from "../core/float/tip.ts";
import { paired } from "../core/lists.ts";
import { totalPullG } from "../core/loading/loading.ts";
import { pullG, type Shot, type Tub } from "../core/tackle/shot.ts";
import type { Rig } from "../model/rig.ts";
import { allShot, type SolvedRig } from "../model/solved.ts";
import { boxPatterns } from "./box-patterns.ts";
import { movedShare } from "./moved-share.ts";
import { rigShot } from "./placed-shot.ts";
import { solveRig } from "./solve-rig.ts";

/** How near a making is to the guide's: the less the better, the first figure first. */
type Nearness = readonly [newWarnings: number, tipSteps: number, moved: number];

/** The rig with each pattern that the box has shot for, the nearest to the guide's first. */
export function nearestOf(
  rig: Rig,
  box: Tub,
  own: SolvedRig,
): { readonly asked: Rig; readonly nearness: Nearness }[] {
  return boxPatterns(rig.pattern, rig.scaleSizes, box)
    .flatMap((pattern) => {
      const asked: Rig = { ...rig, pattern, tub: box };
      const nearness = nearnessOf(asked, own);
      return nearness ? [{ asked, nearness }] : [];
    })
    .sort((a, b) => compared(a.nearness, b.nearness));
}

/** The nearest of them that can be fished. */
export function nearestMade(rig: Rig, box: Tub, own: SolvedRig): SolvedRig | undefined {
  for (const { asked } of nearestOf(rig, box, own)) {
    const made = solveRig(asked);
    if (made.ok && canBeFished(made.value, own)) return made.value;
  }
  return undefined;
}

/** Warnings with which a rig is none to fish with, where the guide's own shot do not bring them about. */
const unfishable: readonly Finding["code"][] = [
  "lock-does-not-cock",
  "pattern.anchor-too-light",
  "sliding-float-too-light",
];

function canBeFished(made: SolvedRig, own: SolvedRig): boolean {
  return made.depths.every((depth, at) => {
    const before = own.depths[at]?.findings.map(({ code }) => code);
    return !depth.findings.some(({ code }) => unfishable.includes(code) && !before?.includes(code));
  });
}

/** Of all depths together; nothing where the pattern cannot be placed at one of them. */
function nearnessOf(rig: Rig, own: SolvedRig): Nearness | undefined {
  const { float, conditions } = rig;
  const wantedMm = rig.tipWantedMm ?? float.tipShowingMm;
  let [newWarnings, tipSteps, moved] = [0, 0, 0];
  for (const ownDepth of own.depths) {
    const { depthMm } = ownDepth;
    const lineMm = depthMm + rig.overdepthMm - (lengthMm(float) - wantedMm);
    const placed = rigShot(rig, depthMm, lineMm, own.floatPullG - own.hookAndBaitPullG);
    if (!placed.ok) return undefined;
    const lock = [...placed.value.lock.below, ...placed.value.lock.above];
    const pullOfShotG = totalPullG([...placed.value.lineShot, ...lock], conditions);
    const tipMm = tipShowingMm(float, pullOfShotG + own.hookAndBaitPullG, conditions) ?? 0;
    const known = ownDepth.findings.map(({ code }) => code);
    const at = (shot: Shot, fromHookMm: number) => ({
      pullG: pullG(shot.massG, shot.metal, conditions),
      fromHookMm,
    });
    const hung = [
      ...placed.value.lineShot.map((shot) => at(shot, shot.fromHookMm)),
      ...lock.map((shot) => at(shot, lineMm)),
    ];
    newWarnings += placed.findings.filter(({ code }) => !known.includes(code)).length;
    tipSteps += Math.floor(Math.abs(tipMm - ownDepth.tipShowingMm) / tipStepMm);
    moved += movedShare(hung, allShot(ownDepth), lineMm);
  }
  return [newWarnings, tipSteps, moved];
}

export function compared(a: Nearness, b: Nearness): number {
  return (
    paired(a, b)
      .map(([one, other]) => one - other)
      .find((by) => by !== 0) ?? 0
  );
}
