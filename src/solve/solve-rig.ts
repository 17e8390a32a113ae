import { depthGuide } from "../core/depth/depth-guide.ts";
import type { GuideStep } from "../core/depth/guide-step.ts";
import { choosePlummet, plumbingLockPullG, plumbingSteps } from "../core/depth/plumbing.ts";
import { checkReach } from "../core/depth/rod-reach.ts";
import { checkRoom, checkSetting } from "../core/depth/setting.ts";
import { checkWhip, whipLine } from "../core/depth/whip.ts";
import { checkFeed, feedForSession } from "../core/feed/feed.ts";
import { type Answer, answer, noAnswer } from "../core/finding.ts";
import { checkCocking } from "../core/float/cocking.ts";
import { floatMassG, lengthMm } from "../core/float/float.ts";
import { checkFloat } from "../core/float/float-check.ts";
import { loadForTipG, type ShotEffect, shotEffects, tipShowingMm, tipStates } from "../core/float/tip.ts";
import { lockFor, totalPullG } from "../core/loading/loading.ts";
import type { PlacedShot } from "../core/patterns/pattern.ts";
import { placePattern } from "../core/patterns/table.ts";
import { lineChain } from "../core/tackle/knots.ts";
import { checkLead } from "../core/tackle/lead-rule.ts";
import { ballDiameterMm, metalDensityKgM3, pullG, pullShare, type Shot } from "../core/tackle/shot.ts";
import { tipUncertaintyMm } from "../core/water/surface-tension.ts";
import type { Water } from "../core/water/water.ts";
import type { Bait, Hook, Rig } from "../model/rig.ts";
import type { Plumbing, SolvedDepth, SolvedRig, SolvedShot } from "../model/solved.ts";
import { guideRows } from "./guide-rows.ts";

/** Pull of hook and bait on the float [g]; a bait that floats takes some of the hook's away. */
export function hookAndBaitPullG(hook: Hook, bait: Bait, water: Water): number {
  const baitPullG = bait.massG * pullShare(bait.densityKgM3, water);
  return hook.massG * pullShare(metalDensityKgM3.steel, water) + baitPullG;
}

/**
 * All sums of a rig, for every depth that it is for. A depth that cannot be had is left out and its reason is among
 * the findings.
 */
export function solveRig(rig: Rig): Answer<SolvedRig> {
  const { float, conditions } = rig;
  const floatFindings = checkFloat(float, conditions);
  if (floatFindings.some(({ severity }) => severity === "error"))
    return { ok: false, findings: floatFindings };
  const setting = checkSetting(rig.setting, rig.overdepthMm);
  if (setting.length > 0) return { ok: false, findings: setting };
  const wantedMm = rig.tipWantedMm ?? float.tipShowingMm;
  if (!(wantedMm > 0 && wantedMm < lengthMm(float))) {
    return noAnswer("float-tip-showing", { lengthMm: lengthMm(float), tipShowingMm: wantedMm });
  }
  const pullOfFloatG = loadForTipG(float, wantedMm, conditions);
  const pullOfBaitG = hookAndBaitPullG(rig.hook, rig.bait, conditions);
  if (pullOfBaitG >= pullOfFloatG) {
    return noAnswer("capacity-below-hook-and-bait", { hookAndBaitPullG: pullOfBaitG, pullG: pullOfFloatG });
  }
  const chain = lineChain(rig);
  const feed = feedForSession(rig.feed);
  if (!chain.ok) return chain;
  if (!feed.ok) return feed;
  const ofRig = [...floatFindings, ...chain.findings, ...checkFeed(rig.feed, rig.pattern.kind, rig.water)];
  const depths = rig.depthsMm.map((depthMm) => solveDepth(rig, depthMm, pullOfFloatG, pullOfBaitG));
  const solved: SolvedRig = {
    rig,
    floatPullG: pullOfFloatG,
    floatLengthMm: lengthMm(float),
    floatMassG: floatMassG(float, conditions),
    hookAndBaitPullG: pullOfBaitG,
    lineChain: chain.value,
    sessionFeed: feed.value,
    depths: depths.flatMap((depth) => (depth.ok ? [depth.value] : [])),
    findings: ofRig,
  };
  const findings = [...ofRig, ...depths.flatMap((depth) => depth.findings)];
  return solved.depths.length > 0 ? answer(solved, findings) : { ok: false, findings };
}

function solveDepth(
  rig: Rig,
  depthMm: number,
  pullOfFloatG: number,
  pullOfBaitG: number,
): Answer<SolvedDepth> {
  const { float, conditions } = rig;
  // The mark's draught places the shot; the tip that they then show moves the float by a few millimetres at most.
  const wantedMm = rig.tipWantedMm ?? float.tipShowingMm;
  const nominalMm = depthMm + rig.overdepthMm - (lengthMm(float) - wantedMm);
  const noRoom = checkRoom(depthMm, rig.overdepthMm, lengthMm(float) - wantedMm, lengthMm(float));
  if (noRoom.length > 0) return { ok: false, findings: noRoom };
  const placed = placedShot(rig, depthMm, nominalMm, pullOfFloatG - pullOfBaitG);
  if (!placed.ok) return placed;
  const pullOfShotG = totalPullG(placed.value, conditions);
  const hangingG = pullOfShotG + pullOfBaitG;
  const showingMm = tipShowingMm(float, hangingG, conditions) ?? 0;
  const draughtMm = lengthMm(float) - showingMm;
  const hookDepthMm = depthMm + rig.overdepthMm;
  const floatToHookMm = hookDepthMm - draughtMm;
  const shot = placed.value.map((one) => solvedShot(one, floatToHookMm, conditions));
  const lineShot = shot.filter(({ role }) => role !== "lock");
  const lockShot = shot.filter(({ role }) => role === "lock");
  const lockPullG = lockShot.reduce((sum, one) => sum + one.pullG, 0);
  const guide = depthGuide({
    float,
    water: conditions,
    flowing: rig.water === "flowing",
    depthMm,
    shot,
    hookAndBaitPullG: pullOfBaitG,
    settingMm: rig.overdepthMm,
  });
  if (!guide.ok) return guide;
  const effects = shotEffects(float, hangingG, rig.tub, conditions);
  const seen = seenShot(effects, showingMm);
  const plumbing = solvePlumbing(rig, depthMm, shot);
  if (!plumbing.ok) return plumbing;
  const massG = shot.reduce((sum, one) => sum + one.massG, 0);
  const findings = [
    ...placed.findings,
    ...guide.findings,
    ...plumbing.findings,
    ...checkCocking(float, float.heldByShot ? lockPullG : hangingG, conditions),
    ...checkLead(shot, rig.leadRule),
    ...(rig.outfit === "whip"
      ? checkWhip(float, hookDepthMm, rig.rodLengthMm)
      : checkReach(float, depthMm, floatToHookMm, rig.rodLengthMm, massG)),
  ];
  return answer(
    {
      depthMm,
      overdepthMm: rig.overdepthMm,
      draughtMm,
      floatToHookMm,
      lineShot,
      lockShot,
      massG,
      pullG: pullOfShotG,
      sparePullG: pullOfFloatG - pullOfShotG - pullOfBaitG,
      tipShowingMm: showingMm,
      tipAsSetMm: tipAsSetMm(guide.value, rig.overdepthMm) ?? showingMm,
      tipUncertaintyMm: tipUncertaintyMm(float, conditions, showingMm),
      lockShare: lockPullG / pullOfShotG || 0,
      depthGuide: guide.value,
      guideRows: guideRows(guide.value),
      tipStates: seen ? tipStates(float, hangingG, seen, conditions) : [],
      shotEffects: effects,
      plumbing: plumbing.value,
      ...(rig.outfit === "whip" && { whip: whipLine(rig.rodLengthMm, hookDepthMm) }),
      findings,
    },
    findings,
  );
}

/** Least change of the tip that is seen from the bank [mm]. Common practice, no source. */
const seenTipMm = 5;

/** The lightest shot in the tub that is missed when it is not there; the heaviest where none is. */
function seenShot(effects: readonly ShotEffect[], showingMm: number): Shot | undefined {
  const rising = [...effects].sort((a, b) => a.massG - b.massG);
  return rising.find(({ oneFewerMm }) => (oneFewerMm ?? 0) - showingMm >= seenTipMm) ?? rising.at(-1);
}

/** Tip at the rig's own setting, which has a line in the guide unless it is beyond the guide's reach. */
function tipAsSetMm(guide: readonly GuideStep[], settingMm: number): number | null | undefined {
  return guide.find(({ overdepthMm }) => Math.abs(overdepthMm - settingMm) < 0.5)?.tipShowingMm;
}

/** Plummets are bought in a metal that every rule allows. */
const plummetMetal = "zinc";

function solvePlumbing(rig: Rig, depthMm: number, shot: readonly SolvedShot[]): Answer<Plumbing> {
  const { float, conditions, plummets } = rig;
  const steps = plumbingSteps(depthMm);
  if (!steps.ok) return steps;
  const keptPullG = plumbingLockPullG(shot, conditions);
  const choice = choosePlummet(float, keptPullG, plummets, plummetMetal, conditions);
  if (!choice.ok) return choice;
  const { plummet, neededG } = choice.value;
  const plumbing = { steps: steps.value, plummetNeededG: neededG, ...(plummet && { plummet }) };
  // An empty box says nothing about a plummet that will not do.
  return answer(plumbing, plummets.length > 0 ? choice.findings : []);
}

/** The pattern's shot down the line, and the lock from what is left; lock shot stand at the float. */
function placedShot(
  rig: Rig,
  depthMm: number,
  floatToHookMm: number,
  pullForShotG: number,
): Answer<readonly PlacedShot[]> {
  const { float, tub, conditions, pattern } = rig;
  const locked = float.heldByShot;
  const line = placePattern(pattern, {
    depthMm,
    floatToHookMm,
    hookLengthMm: rig.hookLengthMm,
    pullG: pullForShotG,
    linePullMaxG: locked ? (1 - rig.lockShareMin) * pullForShotG : pullForShotG,
    locked,
    tub,
    water: conditions,
  });
  if (!line.ok || !locked) return line;
  const lock = lockFor(tub, line.value, pullForShotG, conditions);
  if (!lock.ok) return { ok: false, findings: [...line.findings, ...lock.findings] };
  const atFloat = lock.value.shot.map(
    (shot): PlacedShot => ({ ...shot, role: "lock", fromHookMm: floatToHookMm }),
  );
  return answer([...line.value, ...atFloat], [...line.findings, ...lock.findings]);
}

function solvedShot(shot: PlacedShot, floatToHookMm: number, water: Water): SolvedShot {
  return {
    ...shot,
    fromHookMm: shot.role === "lock" ? floatToHookMm : shot.fromHookMm,
    pullG: pullG(shot.massG, shot.metal, water),
    diameterMm: ballDiameterMm(shot.massG, shot.metal),
  };
}
