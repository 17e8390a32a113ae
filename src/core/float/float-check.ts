import { type Finding, noAnswer, warning } from "../finding.ts";
import { first } from "../lists.ts";
import { type Water, waterDensityKgM3 } from "../water/water.ts";
import { cockingPullG } from "./cocking.ts";
import {
  type Float,
  floatMassG,
  floatPullG,
  impliedMassG,
  lengthMm,
  tipDiameterMm,
  volumeAtMarkMm3,
  waterInG,
} from "./float.ts";
import { volumeBelowMm3 } from "./profile.ts";

/**
 * Mean densities that a float can have [kg/m³]: below the lightest balsa and quill, above the densest loaded stick
 * that still floats well. Common practice, no source.
 */
const floatDensityMinKgM3 = 80;
const floatDensityMaxKgM3 = 900;

/** How far a weighed float may be from its figures, as a share of the water it displaces at its mark. */
const weighedToleranceShare = 0.15;

/** Whether a figure can be meant: nothing at all, or between a nanometre (or microgram) and a kilometre (or tonne). */
const canBeMeant = (figure: number) => figure === 0 || (Math.abs(figure) >= 1e-6 && Math.abs(figure) <= 1e6);

/** The first thing wrong with a float's outline and marks, as no sums can be done with them. */
function outlineFault(float: Float): readonly Finding[] {
  const { profile, tipShowingMm, capacityG, selfLoadG, weighedMassG } = float;
  const figures = [tipShowingMm, capacityG, selfLoadG, weighedMassG ?? 1];
  for (const { atMm, diameterMm } of profile) figures.push(atMm, diameterMm);
  if (!figures.every(canBeMeant)) return noAnswer("float-figure").findings;
  if (lengthMm(float) <= 0 || first(profile).atMm !== 0) return noAnswer("float-profile-short").findings;
  if (tipDiameterMm(float) <= 0) return noAnswer("float-tip-zero").findings;
  for (const [i, { atMm, diameterMm }] of profile.entries()) {
    const beforeMm = profile[i - 1]?.atMm ?? 0;
    if (atMm < beforeMm) return noAnswer("float-profile-falls", { atMm, beforeMm }).findings;
    const pointedFoot = i === 0 && diameterMm === 0;
    if (diameterMm <= 0 && !pointedFoot) return noAnswer("float-profile-diameter", { atMm }).findings;
  }
  if (tipShowingMm <= 0 || tipShowingMm >= lengthMm(float)) {
    return noAnswer("float-tip-showing", { tipShowingMm, lengthMm: lengthMm(float) }).findings;
  }
  if (capacityG <= 0) return noAnswer("float-capacity").findings;
  if (selfLoadG < 0) return noAnswer("float-self-load").findings;
  if (weighedMassG !== undefined && weighedMassG <= 0) return noAnswer("float-weighed-mass").findings;
  return [];
}

/** Profile against capacity: what the float would have to be made of, and which figure to weigh. */
function densityFault(float: Float, water: Water): readonly Finding[] {
  const massG = floatMassG(float, water);
  const densityKgM3 = (massG / volumeBelowMm3(float.profile, lengthMm(float))) * 1e6;
  if (densityKgM3 >= floatDensityMinKgM3 && densityKgM3 <= floatDensityMaxKgM3) return [];
  if (float.weighedMassG !== undefined)
    return noAnswer("float-density-weighed", { densityKgM3, massG }).findings;
  const { capacityG, capacityBasis } = float;
  const displacedG = waterInG(volumeAtMarkMm3(float), water);
  return noAnswer(`float-density-${capacityBasis}`, { densityKgM3, massG, capacityG, displacedG }).findings;
}

/** Weighed mass against profile and capacity; the mark wins, so this only asks to look again. */
function weighedDoubt(float: Float, water: Water): readonly Finding[] {
  if (float.weighedMassG === undefined) return [];
  const impliedG = impliedMassG(float, water);
  const { weighedMassG, capacityBasis } = float;
  if (Math.abs(weighedMassG - impliedG) <= weighedToleranceShare * waterInG(volumeAtMarkMm3(float), water))
    return [];
  return [warning(`float-weighed-against-${capacityBasis}`, { weighedMassG, impliedG })];
}

/**
 * What is wrong with a float's figures: outline, marks, a density that no float has, a load built in that is
 * heavier than the float, a float that does not stand at its capacity. A float without an error is fit for every
 * sum of the core.
 *
 * @returns findings; none for a sound float
 */
export function checkFloat(float: Float, water: Water): readonly Finding[] {
  const densityKgM3 = waterDensityKgM3(water);
  if (!(densityKgM3 > 900 && densityKgM3 < 1100)) return noAnswer("water-figure").findings;
  const outline = outlineFault(float);
  if (outline.length > 0) return outline;
  const density = densityFault(float, water);
  if (density.length > 0) return density;
  const doubt = weighedDoubt(float, water);
  const massG = floatMassG(float, water);
  if (float.selfLoadG >= massG) {
    return [...noAnswer("float-self-load").findings, ...doubt];
  }
  const cockingG = cockingPullG(float, water);
  const fullPullG = floatPullG(float, water);
  if (cockingG === null || cockingG >= fullPullG) {
    return [...noAnswer("float-never-cocks", { pullG: fullPullG }).findings, ...doubt];
  }
  return doubt;
}
