import { type HangingRig, lineDensityKgM3 } from "../flow/hanging-rig.ts";
import type { G, Mm } from "../units.ts";
import { type Fluid, fluidOf } from "../water/drag.ts";
import { gravityMmS2, type Sinker, shotBody, sinkerOf } from "./body-fall.ts";
import type { Chain, ChainLink, ChainNode } from "./chain.ts";

/** A float lying on the water: held by the rod, or free to slide with its own mass and drag area. */
export type FloatOnWater =
  | "held"
  | {
      readonly massG: G;
      /** Drag coefficient × frontal area, in square centimetres. */
      readonly dragAreaCm2: number;
    };

/** A rig that lands on the water and sinks. */
export interface SinkingRig extends HangingRig {
  readonly float: FloatOnWater;
}

/** Longest gap between two shot that is left in one piece, which cannot bend. */
const stiffGapMm = 15;

interface RigChain {
  readonly chain: Chain;
  /** Place along the line of each entry of the chain's state: the top, then every node. */
  readonly fromHookMm: readonly Mm[];
}

/**
 * The chain that stands for a rig: the float below the surface is its first, rigid link; then line cut at every shot
 * and at the loop of the hook length, and into pieces; the hook with the bait is its last node.
 *
 * @param longestPieceMm longest piece of line for the weight in water that hangs below it [g]
 */
export function chainOfRig(rig: SinkingRig, longestPieceMm: (weightBelowG: G) => number): RigChain {
  const { water } = rig;
  const fluid = fluidOf(water);
  const eyeMm = rig.floatToHookMm;
  const hook = rig.hookMassG > 0 ? [sinkerOf(shotBody(rig.hookMassG, "steel"), water)] : [];
  const bait = sinkerOf(rig.bait, water);
  const shot = rig.shot.map(({ massG, metal, fromHookMm }) => ({
    fromHookMm,
    sinker: sinkerOf(shotBody(massG, metal), water),
  }));
  const weightBelowG = (placeMm: Mm) =>
    [bait, ...hook, ...shot.filter((one) => one.fromHookMm <= placeMm).map((one) => one.sinker)].reduce(
      (sum, { weightUn }) => sum + weightUn,
      0,
    ) / gravityMmS2;

  const places = [...new Set([eyeMm, rig.hookLengthMm, 0, ...shot.map((one) => one.fromHookMm)])]
    .filter((place) => place >= 0 && place <= eyeMm)
    .sort((a, b) => b - a);
  const links: ChainLink[] = [];
  const placesBelow: number[] = [];
  if (rig.draughtMm > 0) {
    links.push({ lengthMm: rig.draughtMm, diameterMm: 0 });
    placesBelow.push(eyeMm);
  }
  for (let i = 1; i < places.length; i++) {
    const from = places[i - 1]!;
    const gap = from - places[i]!;
    const diameterMm = from <= rig.hookLengthMm ? rig.hookLineDiameterMm : rig.mainLineDiameterMm;
    const needed = Math.ceil(gap / longestPieceMm(weightBelowG(places[i]!)));
    const pieces = gap > stiffGapMm ? Math.max(2, needed) : needed;
    for (let piece = 1; piece <= pieces; piece++) {
      links.push({ lengthMm: gap / pieces, diameterMm });
      placesBelow.push(piece === pieces ? places[i]! : from - (gap * piece) / pieces);
    }
  }

  const nodes = links.map((link, i): ChainNode => {
    const place = placesBelow[i]!;
    const sinkers = shot
      .filter((one) => (place === eyeMm ? one.fromHookMm >= eyeMm : one.fromHookMm === place))
      .map((one) => one.sinker);
    if (place === 0) sinkers.push(bait, ...hook);
    return nodeOf(sinkers, [lineLump(link, fluid), lineLump(links[i + 1], fluid)]);
  });
  const chain: Chain = {
    top:
      rig.float === "held"
        ? { kind: "held" }
        : { kind: "sliding", massG: rig.float.massG, dragAreaMm2: rig.float.dragAreaCm2 * 100 },
    nodes,
    links,
    fluid,
    bedMm: rig.depthMm,
  };
  return { chain, fromHookMm: [eyeMm + rig.draughtMm, ...placesBelow] };
}

interface LineLump {
  readonly massG: G;
  readonly displacedG: G;
}

/** Half of a piece of line, which each of its ends carries. A cylinder takes along as much water as it displaces. */
function lineLump(link: ChainLink | undefined, fluid: Fluid): LineLump {
  const volumeMm3 = link ? ((Math.PI / 4) * link.diameterMm ** 2 * link.lengthMm) / 2 : 0;
  return { massG: volumeMm3 * lineDensityKgM3 * 1e-6, displacedG: volumeMm3 * fluid.densityGMm3 };
}

function nodeOf(sinkers: readonly Sinker[], lumps: readonly LineLump[]): ChainNode {
  const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
  return {
    movedMassG:
      total(sinkers.map((sinker) => sinker.movedMassG)) +
      total(lumps.map((lump) => lump.massG + lump.displacedG)),
    weightUn:
      total(sinkers.map((sinker) => sinker.weightUn)) +
      total(lumps.map((lump) => (lump.massG - lump.displacedG) * gravityMmS2)),
    drags: sinkers.map((sinker) => sinker.drag),
  };
}
