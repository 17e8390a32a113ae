import type { G, Mm } from "../units.ts";
import type { DragLaw, Fluid } from "../water/drag.ts";

/** A straight piece of line; a diameter of 0 leaves its drag out. */
export interface ChainLink {
  readonly lengthMm: Mm;
  readonly diameterMm: Mm;
}

/** A point of the line that carries weight: a shot, the bait, or a lump of the line itself. */
export interface ChainNode {
  /** The piece of line that it hangs on. */
  readonly link: ChainLink;
  /** Its mass with the water that must be moved along with it. */
  readonly movedMassG: G;
  /** Weight in water [µN]. */
  readonly weightUn: number;
  /** Drag of what sits there, none for bare line: line drag belongs to the links. */
  readonly drags: readonly DragLaw[];
}

/** Stiffness of nylon [N/mm²], of the size found for mono lines; it stretches by a few hundredths of a per cent here. */
const lineModulusNMm2 = 2000;

/** How far a pull of 1 µN stretches a link [mm]; one without drag stands for the float and is rigid. */
export function stretchMmPerUn({ lengthMm, diameterMm }: ChainLink): number {
  if (diameterMm === 0) return 0;
  return lengthMm / (lineModulusNMm2 * 1e6 * (Math.PI / 4) * diameterMm ** 2);
}

/** What the top of the chain does: stands still, or slides along the surface with its own mass and drag area. */
type ChainTop =
  | { readonly kind: "held" }
  | { readonly kind: "sliding"; readonly massG: G; readonly dragAreaMm2: number };

/** A rig in the water: weights on a line that pulls and never pushes, hung from a point on the surface. */
export interface Chain {
  readonly top: ChainTop;
  /** Down the line; the last is the bait. */
  readonly nodes: readonly ChainNode[];
  readonly fluid: Fluid;
  /** Depth at which things stop; `Infinity` for bottomless water. */
  readonly bedMm: Mm;
}

/** Where a point is and how fast it moves. x runs along the surface away from the float, y down from the surface. */
interface Motion {
  x: number;
  y: number;
  vx: number;
  vy: number;
}

export interface ChainPoint extends Motion {
  /** As it was before the last step. */
  readonly before: Motion;
}

/** A node on its way down. */
export interface HungNode {
  readonly node: ChainNode;
  readonly point: ChainPoint;
  /** Tension in the link above it [µN]. */
  tensionUn: number;
  /** Whether it lies on the bed. */
  onBed: boolean;
}

/** A chain at one moment. */
export interface ChainState {
  readonly chain: Chain;
  readonly top: ChainPoint;
  readonly hung: readonly HungNode[];
  /** The top and what hangs on it. */
  readonly points: readonly ChainPoint[];
  /** The bait. */
  readonly lowest: ChainPoint;
}

/** A chain at rest along the surface, each link drawn out to a share of its length: 1 is straight, 0 a heap. */
export function restingChain(chain: Chain, drawnOut: number): ChainState {
  const top = restingPoint(0);
  let lowest = top;
  const hung = chain.nodes.map((node): HungNode => {
    lowest = restingPoint(lowest.x + drawnOut * node.link.lengthMm);
    return { node, point: lowest, tensionUn: 0, onBed: false };
  });
  return { chain, top, hung, points: [top, ...hung.map(({ point }) => point)], lowest };
}

/** The one place where points are made: objects of one shape are what makes a fall quick. */
function restingPoint(x: Mm): ChainPoint {
  return { x, y: 0, vx: 0, vy: 0, before: { x, y: 0, vx: 0, vy: 0 } };
}

/** Energy of motion, of height and of stretch, in µN·mm; it can only fall. */
export function chainEnergy({ chain, top, hung }: ChainState): number {
  const topMassG = chain.top.kind === "sliding" ? chain.top.massG : 0;
  let energy = (topMassG * top.vx ** 2) / 2;
  for (const { node, point, tensionUn } of hung) {
    const { y, vx, vy } = point;
    energy += (node.movedMassG * (vx ** 2 + vy ** 2)) / 2 - node.weightUn * y;
    energy += (stretchMmPerUn(node.link) * tensionUn ** 2) / 2;
  }
  return energy;
}
