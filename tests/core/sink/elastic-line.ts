import type { HangingShot } from "../../../src/core/flow/hanging-rig.ts";
import type { Chain } from "../../../src/core/sink/chain.ts";
import { chainOfRig } from "../../../src/core/sink/chain-of-rig.ts";
import { letFall } from "../../../src/core/sink/fall.ts";
import {
  axialDragGMmS,
  ballDragCoefficient,
  crossFlowDragCoefficient,
  type DragLaw,
  type Fluid,
} from "../../../src/core/water/drag.ts";
import { odeSolver } from "../ode.ts";
import { rigWith } from "./rigs.ts";

/** Pull at which the line would be twice as long [µN]; nylon is thirty times stiffer, but a rig stretches even this line by 1 % only. */
const stretchUn = 1e6;
/** Time in which a stretch dies away [s]. */
const dampingS = 3e-4;
/** Places along each piece at which line drag is taken. */
const places = [0.125, 0.375, 0.625, 0.875];

function ballOrAreaDrag(law: DragLaw, speed: number, fluid: Fluid): number {
  if (speed === 0) return 0;
  if (law.kind === "area") return 0.5 * fluid.densityGMm3 * law.areaMm2 * speed;
  const re = (speed * law.diameterMm) / fluid.viscosityMm2S;
  return 0.5 * fluid.densityGMm3 * (Math.PI / 4) * law.diameterMm ** 2 * ballDragCoefficient(re) * speed;
}

/**
 * The chain's fall by a separate way: an elastic line between the same lumps, its forces written out and handed to an ODE
 * library. State: x and y of every node, then their speeds; node 0 is the top, which stays on the surface.
 *
 * @returns times at which the last node passes each depth, and how often the forces were asked for
 */
export function elasticFall(
  chain: Chain,
  depthsMm: readonly number[],
  drawnOut: number,
  tolerance: number,
): { timesS: number[]; evaluations: number } {
  const { nodes, fluid, top } = chain;
  const links = nodes.map((node) => node.link);
  const n = nodes.length + 1;
  const topMassG = top.kind === "sliding" ? top.massG : 1;
  const massG = [topMassG, ...nodes.map((node) => node.movedMassG)];
  const at = (i: number) => 2 * i;

  const slope = (_: number, s: number[]): number[] => {
    const v = s.slice(2 * n);
    const f = new Array<number>(2 * n).fill(0);
    const add = (i: number, fx: number, fy: number) => {
      f[at(i)]! += fx;
      f[at(i) + 1]! += fy;
    };
    nodes.forEach(({ weightUn, drags }, k) => {
      const [ux, uy] = [v[at(k + 1)]!, v[at(k + 1) + 1]!];
      add(k + 1, 0, weightUn);
      for (const law of drags) {
        const perSpeed = ballOrAreaDrag(law, Math.hypot(ux, uy), fluid);
        add(k + 1, -perSpeed * ux, -perSpeed * uy);
      }
    });
    links.forEach(({ lengthMm, diameterMm }, k) => {
      const [a, b] = [at(k), at(k + 1)];
      const [dx, dy] = [s[b]! - s[a]!, s[b + 1]! - s[a + 1]!];
      const length = Math.hypot(dx, dy);
      const [tx, ty] = length > 0 ? [dx / length, dy / length] : [0, 0];
      const rate = (v[b]! - v[a]!) * tx + (v[b + 1]! - v[a + 1]!) * ty;
      const pull =
        length > lengthMm ? Math.max(0, (stretchUn * (length - lengthMm + dampingS * rate)) / lengthMm) : 0;
      add(k, pull * tx, pull * ty);
      add(k + 1, -pull * tx, -pull * ty);
      if (diameterMm === 0) return;
      const drawn = Math.min(1, length / lengthMm);
      for (const place of places) {
        const ux = (1 - place) * v[a]! + place * v[b]!;
        const uy = (1 - place) * v[a + 1]! + place * v[b + 1]!;
        const across = ux * -ty + uy * tx;
        const re = (Math.abs(across) * diameterMm) / fluid.viscosityMm2S;
        const piece = lengthMm / places.length;
        const cross =
          re > 1e-4
            ? drawn *
              piece *
              0.5 *
              fluid.densityGMm3 *
              diameterMm *
              crossFlowDragCoefficient(re) *
              Math.abs(across)
            : 0;
        const axial = piece * axialDragGMmS(diameterMm, Math.hypot(ux, uy), fluid);
        const fx = cross * across * -ty + axial * (ux + drawn * across * ty);
        const fy = cross * across * tx + axial * (uy - drawn * across * tx);
        add(k, -(1 - place) * fx, -(1 - place) * fy);
        add(k + 1, -place * fx, -place * fy);
      }
    });
    if (top.kind === "sliding") {
      const u = v[0]!;
      f[0]! -= 0.5 * fluid.densityGMm3 * top.dragAreaMm2 * Math.abs(u) * u;
    } else f[0] = 0;
    f[1] = 0;
    return [...v, ...f.map((force, i) => force / massG[i >> 1]!)];
  };

  const start = new Array<number>(4 * n).fill(0);
  for (let i = 1; i < n; i++) start[at(i)] = start[at(i - 1)]! + drawnOut * links[i - 1]!.lengthMm;
  const timesS: number[] = [];
  let before = 0;
  const deepest = 2 * n - 1;
  const { nEval } = odeSolver(4 * n, tolerance).solve(slope, 0, start, 100, (_, t0, t1, state) => {
    const depth = state[deepest]!;
    for (
      let mark = depthsMm[timesS.length];
      mark !== undefined && depth >= mark;
      mark = depthsMm[timesS.length]
    ) {
      timesS.push(t0 + ((t1 - t0) * (mark - before)) / (depth - before));
    }
    before = depth;
    return timesS.length < depthsMm.length ? undefined : false;
  });
  return { timesS, evaluations: nEval };
}

/**
 * A rig of the trial shrunk to 1 m: by how much, as a share, the chain's times to each tenth differ from the elastic
 * line's with the same lumps.
 */
export function compareWithElastic(
  shot: readonly HangingShot[],
  pieceMm: number,
  drawnOut: number,
): number[] {
  const halved = shot.map((one) => ({ ...one, fromHookMm: one.fromHookMm / 2 }));
  const rig = rigWith(halved, { floatToHookMm: 1000, depthMm: 5000, hookLengthMm: 150 });
  const { chain } = chainOfRig(rig, () => pieceMm);
  const tenths = Array.from({ length: 10 }, (_, i) => (i < 9 ? 100 * (i + 1) : 980));
  const { passes } = letFall(chain, tenths, 60, { drawnOut, stepErrorShare: 2e-5 });
  const { timesS } = elasticFall(chain, tenths, drawnOut, 1e-4);
  return tenths.map((_, i) => passes[i]!.timeS / timesS[i]! - 1);
}
