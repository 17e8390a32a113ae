import type { G, Mm } from "../units.ts";
import type { DragLaw, Fluid } from "../water/drag.ts";

/** A point of the line that carries weight: a shot, the bait, or a lump of the line itself. */
export interface ChainNode {
  /** Its mass with the water that must be moved along with it. */
  readonly movedMassG: G;
  /** Weight in water [µN]. */
  readonly weightUn: number;
  /** Drag of what sits there, none for bare line: line drag belongs to the links. */
  readonly drags: readonly DragLaw[];
}

/** A straight piece of line above a node; a diameter of 0 leaves its drag out. */
export interface ChainLink {
  readonly lengthMm: Mm;
  readonly diameterMm: Mm;
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

/**
 * A rig in the water: weights on a line that pulls and never pushes, hung from a point on the surface. `nodes[i]`
 * hangs on `links[i]`; the last node is the bait.
 */
export interface Chain {
  readonly top: ChainTop;
  readonly nodes: readonly ChainNode[];
  readonly links: readonly ChainLink[];
  readonly fluid: Fluid;
  /** Depth at which things stop; `Infinity` for bottomless water. */
  readonly bedMm: Mm;
}

/**
 * Where everything is and how fast it moves; entry 0 is the top, entry i + 1 is node i. x runs along the surface
 * away from the float, y down from the surface.
 */
export interface ChainState {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly vx: Float64Array;
  readonly vy: Float64Array;
  /** Tension in the link above each node [µN]; entry 0 is unused. */
  readonly tension: Float64Array;
  /** 1 for a node that lies on the bed. */
  readonly onBed: Uint8Array;
}

/** A chain at rest along the surface, each link drawn out to a share of its length: 1 is straight, 0 a heap. */
export function restingChain(chain: Chain, drawnOut: number): ChainState {
  const size = chain.nodes.length + 1;
  const x = new Float64Array(size);
  for (let i = 1; i < size; i++) x[i] = x[i - 1]! + drawnOut * chain.links[i - 1]!.lengthMm;
  return {
    x,
    y: new Float64Array(size),
    vx: new Float64Array(size),
    vy: new Float64Array(size),
    tension: new Float64Array(size),
    onBed: new Uint8Array(size),
  };
}

/** Energy of motion, of height and of stretch, in µN·mm; it can only fall. */
export function chainEnergy(chain: Chain, state: ChainState): number {
  const topMassG = chain.top.kind === "sliding" ? chain.top.massG : 0;
  let energy = (topMassG * state.vx[0]! ** 2) / 2;
  chain.nodes.forEach((node, i) => {
    const speed2 = state.vx[i + 1]! ** 2 + state.vy[i + 1]! ** 2;
    energy += (node.movedMassG * speed2) / 2 - node.weightUn * state.y[i + 1]!;
  });
  chain.links.forEach((link, i) => {
    energy += (stretchMmPerUn(link) * state.tension[i + 1]! ** 2) / 2;
  });
  return energy;
}
