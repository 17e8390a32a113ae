import { checkReach } from "../core/depth/rod-reach.ts";
import { checkRoom, checkSetting } from "../core/depth/setting.ts";
import { checkWhip, whipLine } from "../core/depth/whip.ts";
import { checkFeed, feedForSession } from "../core/feed/feed.ts";
import { type Answer, answer, noAnswer } from "../core/finding.ts";
import { checkCocking } from "../core/float/cocking.ts";
import { floatMassG, lengthMm } from "../core/float/float.ts";
import { checkFloat } from "../core/float/float-check.ts";
import { loadForTipG, tipShowingMm } from "../core/float/tip.ts";
import { lockShotOf, totalPullG } from "../core/loading/loading.ts";
import { lineChain } from "../core/tackle/knots.ts";
import { checkLead } from "../core/tackle/lead-rule.ts";
import { metalDensityKgM3, pullShare } from "../core/tackle/shot.ts";
import type { G, Mm } from "../core/units.ts";
import type { Water } from "../core/water/water.ts";
import type { Bait, Hook, Rig } from "../model/rig.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { guideOfDepth } from "./guide-of-depth.ts";
import { guideRows } from "./guide-rows.ts";
import { lockAtFloat, rigShot, solvedShot } from "./placed-shot.ts";
import { solvePlumbing } from "./solve-plumbing.ts";
import { solveTip } from "./solve-tip.ts";

/** Pull of hook and bait on the float [g]; a bait that floats takes some of the hook's away. */
function hookAndBaitPullG(hook: Hook, bait: Bait, water: Water): number {
  const baitPullG = bait.massG * pullShare(bait.densityKgM3, water);
  return hook.massG * pullShare(metalDensityKgM3.steel, water) + baitPullG;
}

/**
 * All sums of a rig, for every depth that it is for. Where one of them cannot be had, neither can the rig: its file says
 * that it is for that depth. The findings tell of every depth.
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
  if (pullOfBaitG < 0) return noAnswer("hook-and-bait-float", { liftG: -pullOfBaitG });
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
  return answer(solved, [...ofRig, ...depths.flatMap((depth) => depth.findings)]);
}

function solveDepth(rig: Rig, depthMm: Mm, pullOfFloatG: G, pullOfBaitG: G): Answer<SolvedDepth> {
  const { float, conditions } = rig;
  // The mark's draught places the shot; the tip that they then show moves the float by a few millimetres at most.
  const wantedMm = rig.tipWantedMm ?? float.tipShowingMm;
  const nominalMm = depthMm + rig.overdepthMm - (lengthMm(float) - wantedMm);
  const noRoom = checkRoom(depthMm, rig.overdepthMm, lengthMm(float) - wantedMm, lengthMm(float));
  if (noRoom.length > 0) return { ok: false, findings: noRoom };
  const placed = rigShot(rig, depthMm, nominalMm, pullOfFloatG - pullOfBaitG);
  if (!placed.ok) return placed;
  const pullOfShotG = totalPullG([...placed.value.lineShot, ...lockShotOf(placed.value.lock)], conditions);
  const hangingG = pullOfShotG + pullOfBaitG;
  const showingMm = tipShowingMm(float, hangingG, conditions) ?? 0;
  const draughtMm = lengthMm(float) - showingMm;
  const hookDepthMm = depthMm + rig.overdepthMm;
  const floatToHookMm = hookDepthMm - draughtMm;
  const lineShot = solvedShot(placed.value.lineShot, rig);
  const lock = lockAtFloat(placed.value.lock, floatToHookMm, rig);
  const lockShot = lockShotOf(lock);
  const shot = [...lineShot, ...lockShot];
  const lockPullG = totalPullG(lockShot, conditions);
  const guide = guideOfDepth(rig, { depthMm, draughtMm, floatToHookMm, lineShot, lockShot }, pullOfBaitG);
  if (!guide.ok) return guide;
  const set = guide.value.steps.find(({ overdepthMm }) => overdepthMm === rig.overdepthMm)!;
  const tip = solveTip(rig, hangingG, wantedMm, set, shot);
  const plumbing = solvePlumbing(rig, depthMm, wantedMm, lock);
  if (!plumbing.ok) return plumbing;
  const massG = shot.reduce((sum, one) => sum + one.massG, 0);
  const findings = [
    ...placed.findings,
    ...guide.findings,
    ...tip.findings,
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
      lock,
      massG,
      pullG: pullOfShotG,
      sparePullG: pullOfFloatG - pullOfShotG - pullOfBaitG,
      tipShowingMm: showingMm,
      ...tip.figures,
      lockShare: lockPullG / pullOfShotG || 0,
      depthGuide: guide.value.steps,
      guideRows: guideRows(guide.value.steps),
      ...(guide.value.guidedFlow && { guidedFlow: guide.value.guidedFlow }),
      plumbing: plumbing.value,
      ...(rig.outfit === "whip" && { whip: whipLine(rig.rodLengthMm, hookDepthMm) }),
      findings,
    },
    findings,
  );
}
