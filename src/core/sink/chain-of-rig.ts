import { type HangingRig, lineDensityKgM3 } from "../flow/hanging-rig.ts";
import { sum } from "../lists.ts";
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

  const pieces = [
    ...(rig.draughtMm > 0 ? [{ lengthMm: rig.draughtMm, diameterMm: 0, lowerMm: eyeMm }] : []),
    ...piecesOfLine(
      rig,
      shot.map((one) => one.fromHookMm),
      (placeMm) => longestPieceMm(weightBelowG(placeMm)),
    ),
  ];
  const nodes = pieces.map(({ lowerMm, ...link }, i): ChainNode => {
    const sinkers = shot
      .filter((one) => (lowerMm === eyeMm ? one.fromHookMm >= eyeMm : one.fromHookMm === lowerMm))
      .map((one) => one.sinker);
    if (lowerMm === 0) sinkers.push(bait, ...hook);
    return nodeOf(link, sinkers, [lineLump(link, fluid), lineLump(pieces[i + 1], fluid)]);
  });
  const chain: Chain = {
    top:
      rig.float === "held"
        ? { kind: "held" }
        : { kind: "sliding", massG: rig.float.massG, dragAreaMm2: rig.float.dragAreaCm2 * 100 },
    nodes,
    fluid,
    bedMm: rig.depthMm,
  };
  return { chain, fromHookMm: [eyeMm + rig.draughtMm, ...pieces.map(({ lowerMm }) => lowerMm)] };
}

/** A link with the place of its lower end along the line. */
interface PlacedLink extends ChainLink {
  readonly lowerMm: Mm;
}

/** The line from the float's eye to the hook, cut at every shot and at the loop of the hook length, and into pieces. */
function piecesOfLine(
  rig: SinkingRig,
  shotMm: readonly Mm[],
  longestPieceMm: (placeMm: Mm) => number,
): PlacedLink[] {
  const eyeMm = rig.floatToHookMm;
  const cuts = [...new Set([rig.hookLengthMm, 0, ...shotMm])]
    .filter((place) => place >= 0 && place < eyeMm)
    .sort((a, b) => b - a);
  const links: PlacedLink[] = [];
  let from = eyeMm;
  for (const to of cuts) {
    const gap = from - to;
    const diameterMm = from <= rig.hookLengthMm ? rig.hookLineDiameterMm : rig.mainLineDiameterMm;
    const needed = Math.ceil(gap / longestPieceMm(to));
    const pieces = gap > stiffGapMm ? Math.max(2, needed) : needed;
    for (let piece = 1; piece <= pieces; piece++) {
      const lowerMm = piece === pieces ? to : from - (gap * piece) / pieces;
      links.push({ lengthMm: gap / pieces, diameterMm, lowerMm });
    }
    from = to;
  }
  return links;
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

function nodeOf(link: ChainLink, sinkers: readonly Sinker[], lumps: readonly LineLump[]): ChainNode {
  return {
    link,
    movedMassG:
      sum(sinkers.map((sinker) => sinker.movedMassG)) +
      sum(lumps.map((lump) => lump.massG + lump.displacedG)),
    weightUn:
      sum(sinkers.map((sinker) => sinker.weightUn)) +
      sum(lumps.map((lump) => (lump.massG - lump.displacedG) * gravityMmS2)),
    drags: sinkers.map((sinker) => sinker.drag),
  };
}
