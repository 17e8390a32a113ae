import { movedPart } from "../core/depth/setting.ts";
import { untoldLess } from "../core/depth/told-apart.ts";
import { lengthMm, tipDiameterMm } from "../core/float/float.ts";
import type { LockGroups } from "../core/loading/loading.ts";
import { ballDiameterMm, metalDensityKgM3, metals, pullShare } from "../core/tackle/shot.ts";
import type { OutputFile } from "../markup/output.ts";
import { digestOnce } from "../model/digest.ts";
import { keptFile } from "../model/fingerprint.ts";
import { type Keep, makeAnew } from "../model/kept.ts";
import type { Guide, ScaleEntry } from "../model/library.ts";
import type { Rig } from "../model/rig.ts";
import { allShot, type SolvedDepth, type SolvedRig } from "../model/solved.ts";
import { cm, rounded } from "./data-figures.ts";
import { feedData, inWaterData } from "./data-in-water.ts";
import { sinkingJson } from "./data-sinking.ts";
import { orderFiles } from "./data-stock.ts";
import { tableFiles } from "./data-tables.ts";
import type { Solved } from "./stages.ts";

/** Everything computed for a rig, with the unit in each field's name. */
export function rigData(solved: SolvedRig) {
  const { rig } = solved;
  const { float } = rig;
  return {
    id: rig.id,
    title: rig.title,
    purpose: rig.purpose,
    water: rig.water,
    shotScale: rig.scaleTitle,
    waterTempC: rig.conditions.tempC,
    salinity: rig.conditions.salinity,
    float: {
      id: float.id,
      title: float.title,
      attachment: float.attachment,
      capacityG: rounded(float.capacityG),
      capacityMetal: float.capacityMetal,
      capacityBasis: float.capacityBasis,
      selfLoadG: rounded(float.selfLoadG),
      pullG: rounded(solved.floatPullG),
      lengthMm: lengthMm(float),
      tipDiameterMm: tipDiameterMm(float),
      massG: rounded(solved.floatMassG),
    },
    outfit: rig.outfit,
    mainLine: { strengthG: rounded(rig.mainLine.strengthG, 3), diameterMm: rig.mainLine.diameterMm },
    hookLength: { strengthG: rounded(rig.hookLine.strengthG, 3), diameterMm: rig.hookLine.diameterMm },
    hookLengthCm: cm(rig.hookLengthMm),
    hook: { size: rig.hook.size, massG: rig.hook.massG, basis: rig.hook.basis },
    bait: { id: rig.bait.id, title: rig.bait.title, massG: rig.bait.massG, basis: rig.bait.basis },
    hookAndBaitPullG: rounded(solved.hookAndBaitPullG),
    feed: rig.feed,
    pattern: rig.pattern.kind,
    moved: movedPart(rig.float),
    lineChain: lineChainData(solved.lineChain),
    session: {
      hours: rig.feed.forS / 3600,
      portions: solved.sessionFeed.portions,
      feedMl: rounded(solved.sessionFeed.volumeMl, 1),
      feedImperialPints: rounded(solved.sessionFeed.imperialPints, 2),
      feedUsPints: rounded(solved.sessionFeed.usPints, 2),
    },
    ...feedData(solved),
    depths: solved.depths.map((depth) => depthData(depth, rig)),
  };
}

/** What the line holds, weakest part first, and by how much the main line outlasts the hook length. */
function lineChainData({ parts, marginLowG, marginMiddleG, marginHighG }: SolvedRig["lineChain"]) {
  return {
    parts: parts.map(({ part, knot, lowG, highG }) => ({
      part,
      knot: knot && { where: knot.where, title: knot.knot.title },
      lowG: rounded(lowG, 1),
      highG: rounded(highG, 1),
    })),
    marginLowG: rounded(marginLowG, 1),
    marginMiddleG: rounded(marginMiddleG, 1),
    marginHighG: rounded(marginHighG, 1),
  };
}

function depthData(depth: SolvedDepth, rig: Rig) {
  return {
    depthCm: cm(depth.depthMm),
    overdepthCm: cm(depth.overdepthMm),
    draughtCm: cm(depth.draughtMm),
    floatToHookCm: cm(depth.floatToHookMm),
    shot: allShot(depth).map(({ size, massG, metal, role, fromHookMm, diameterMm }) => ({
      size,
      massG: rounded(massG),
      metal,
      role,
      fromHookCm: cm(fromHookMm),
      diameterMm: rounded(diameterMm, 2),
    })),
    massG: rounded(depth.massG),
    pullG: rounded(depth.pullG),
    sparePullG: rounded(depth.sparePullG),
    tipShowingMm: rounded(depth.tipShowingMm, 3),
    tipSetBy: depth.tipSetBy,
    tipAsSetMm: rounded(depth.tipAsSetMm, 3),
    tipUncertaintyMm: rounded(depth.tipUncertaintyMm, 3),
    lockShare: rounded(depth.lockShare, 4),
    lock: lockData(depth.lock),
    ...(depth.guidedFlow && {
      guidedFlow: {
        paceMs: rounded(depth.guidedFlow.paceMs),
        heldBackShare: depth.guidedFlow.heldBackShare,
      },
    }),
    depthGuide: depth.depthGuide.map((step) => ({
      overdepthCm: cm(step.overdepthMm),
      hookOffBedCm: cm(step.hookOffBedMm),
      // A float that lies flat has all its shot on the bed; the format knows three states.
      state: step.state === "lies flat" ? "rests on the bed" : step.state,
      floatLiesFlat: step.state === "lies flat",
      shotOnBed: step.shotOnBed,
      tipShowingMm: step.tipShowingMm === null ? null : rounded(step.tipShowingMm, 3),
      ...(!depth.guidedFlow && { tipCannotTell: untoldLess(step, depth.depthGuide) !== undefined }),
      advice: step.advice,
      moveCm: cm(step.moveMm),
    })),
    tipStates: depth.tipStates.map(({ load, changeG, tipShowingMm }) => ({
      load,
      changeG: rounded(changeG),
      tipShowingMm: rounded(tipShowingMm, 3),
    })),
    shotEffects: depth.shotEffects.map(({ size, metal, oneMoreMm, oneFewerMm }) => ({
      size,
      metal,
      oneMoreMm: oneMoreMm === null ? null : rounded(oneMoreMm, 3),
      // Missing for a size that the rig does not carry, null where the float lies flat without it.
      ...(oneFewerMm !== undefined && { oneFewerMm: oneFewerMm === null ? null : rounded(oneFewerMm, 3) }),
    })),
    plumbing: {
      plummetNeededG: rounded(depth.plumbing.plummetNeededG, 3),
      plummet: depth.plumbing.plummet ?? null,
      keptOnFloat: lockData(depth.plumbing.kept),
      tooDeep: depth.plumbing.tooDeep,
      steps: depth.plumbing.steps.map(({ settingMm, sign, moveMm }) => ({
        settingCm: cm(settingMm),
        sign,
        moveCm: cm(moveMm),
      })),
    },
    ...(depth.whip && {
      whip: {
        lineCm: cm(depth.whip.lineMm),
        tipToWaterCm: cm(depth.whip.tipToWaterMm),
        reachCm: cm(depth.whip.reachMm),
      },
    }),
    ...(depth.inWater && inWaterData(depth.inWater, rig)),
    findings: depth.findings,
  };
}

const lockData = ({ above, below }: LockGroups) => ({
  aboveEye: above.map(({ size }) => size),
  belowEye: below.map(({ size }) => size),
});

/** Every scale with the diameters that its masses make in each metal. */
function shotData(scales: readonly ScaleEntry[], guide: Guide) {
  return {
    waterTempC: guide.conditions.tempC,
    salinity: guide.conditions.salinity,
    metals: metals.map((metal) => ({
      metal,
      densityKgM3: metalDensityKgM3[metal],
      pullPerMass: rounded(pullShare(metalDensityKgM3[metal], guide.conditions)),
    })),
    scales: scales.map((scale) => ({
      id: scale.id,
      title: scale.title,
      source: scale.source,
      basis: scale.basis,
      sizes: scale.sizes.map(({ name, massG }) => ({
        size: name,
        massG: rounded(massG),
        diameterMm: Object.fromEntries(
          metals.map((metal) => [metal, rounded(ballDiameterMm(massG, metal), 3)]),
        ),
      })),
    })),
  };
}

const json = (data: unknown): string => `${JSON.stringify(data, null, 2)}\n`;

/** The text of a rig's `data/rigs/<id>.json`. */
export const rigJson = (solved: SolvedRig): string => json(rigData(solved));

/**
 * `data/rigs/<id>.json` and `data/sinking/<id>.json` for every rig, `data/shot.json`, shot and kit as tables, and what is to be
 * ordered for each shelf and each session.
 */
export function* dataFiles(
  {
    rigs: solved,
    library: { scales, guide, floats },
    shelves,
    sessions,
    kit,
  }: Pick<Solved, "rigs" | "library" | "shelves" | "sessions" | "kit">,
  keep: Keep = makeAnew,
): Iterable<OutputFile> {
  // The sums of a rig follow from the rig.
  const ofRig = (folder: string, one: SolvedRig, text: (solved: SolvedRig) => string) =>
    keptFile(`data/${folder}/${one.rig.id}.json`, keep, `data of ${folder}`, digestOnce(one.rig), () =>
      text(one),
    );
  for (const rig of solved) yield ofRig("rigs", rig, rigJson);
  for (const rig of solved) yield ofRig("sinking", rig, sinkingJson);
  yield { path: "data/shot.json", content: json(shotData(scales, guide)) };
  yield* tableFiles(solved, new Map(floats.map(({ float, marking }) => [float.id, marking])), keep);
  yield* orderFiles(shelves, sessions, kit);
}
