import { last } from "../../core/lists.ts";
import { power } from "../../core/power.ts";
import type { FinLooks, FishLooks } from "../../model/fish-looks.ts";
import { type Point, point } from "../items.ts";
import { smooth } from "../smooth.ts";
import { type Body, heightAt } from "./fish-outline.ts";

/** A fin: its outline, and the rays from where it grows to its edge. */
export interface Fin {
  readonly outline: readonly Point[];
  readonly rays: readonly (readonly [Point, Point])[];
}

/** How far the tip of a fin leans back over its root, as a share of the root. */
const lean = { hollow: 0.35, straight: 0.55, rounded: 0.5, spiny: 0.3 } as const;
const edgePieces = 14;

/** A fin that grows out of the back or out of the belly. */
export function uprightFin(body: Body, fin: FinLooks, side: "back" | "belly"): Fin {
  const profile = body[side];
  const sign = side === "back" ? 1 : -1;
  const root = (share: number) => point(share, heightAt(profile, share));
  const { fromShare, toShare, heightShare, edge } = fin;
  const run = toShare - fromShare;
  const at = (along: number, up: number) => {
    const foot = root(fromShare + run * Math.min(1, along));
    return point(fromShare + run * along, foot.yMm + sign * up);
  };
  const tipAt = lean[edge];
  const heightOver = (along: number): number => {
    const s = (along - tipAt) / (1.06 - tipAt);
    if (edge === "hollow") return heightShare * (0.24 + 0.76 * power(1 - s, 2.2));
    if (edge === "straight") return heightShare * (0.32 + 0.68 * (1 - s));
    if (edge === "rounded") return heightShare * Math.sqrt(Math.max(0, 1 - (s * 0.86) ** 2));
    return heightShare * (1 - 0.75 * power(s, 1.5));
  };
  const edgePoints = Array.from({ length: edgePieces + 1 }, (_, i) => {
    const along = tipAt + ((1.06 - tipAt) * i) / edgePieces;
    const dip = edge === "spiny" && i % 2 === 1 ? 0.72 : 1;
    return at(along, heightOver(along) * dip);
  });
  const rays = [0.12, 0.28, 0.45, 0.62, 0.8].map((share): [Point, Point] => {
    const edgePoint = edgePoints[Math.round(share * edgePieces)] ?? last(edgePoints);
    return [root(fromShare + run * share * 0.95), edgePoint];
  });
  const front = [root(fromShare), at(tipAt * 0.55, heightShare * 0.72)];
  return { outline: [...front, ...edgePoints, root(toShare)], rays };
}

/** One of the pair under the chest or the belly, laid back along the body. */
export function pairedFin(body: Body, fromShare: number, lengthShare: number, rise: number): Fin {
  const foot = heightAt(body.belly, fromShare) * (1 - rise);
  const root = point(fromShare, foot);
  const droop = rise > 0.2 ? 0.34 : 0.72;
  const at = (along: number, down: number) =>
    point(fromShare + lengthShare * along, foot - lengthShare * down);
  const edge = smooth([
    root,
    at(0.5, droop * 0.9),
    at(0.92, droop * 1.02),
    at(1.02, droop * 0.72),
    at(0.72, droop * 0.16),
    at(0.3, -0.06),
  ]);
  const ends = [0.86, 0.62, 0.38].map((share) => at(0.97 - 0.14 * (1 - share), droop * share));
  return { outline: edge, rays: ends.map((end) => [root, end]) };
}

/** The tail: two lobes with a fork between them, none where the fork is nothing. */
export function tailFin({ tailRootShare, tail: { lengthShare, forkShare } }: FishLooks): Fin {
  const half = tailRootShare / 2;
  const spread = lengthShare * 0.6;
  const at = (along: number, height: number) => point(1 + lengthShare * along, height);
  const blunt = forkShare < 0.12;
  const lobe = (sign: 1 | -1) =>
    smooth([
      at(0, sign * half),
      at(0.4, sign * (half + (spread - half) * 0.58)),
      at(blunt ? 0.84 : 0.98, sign * spread),
      at(blunt ? 0.98 : 0.99, sign * spread * (blunt ? 0.7 : 0.84)),
      at(1 - forkShare * 0.62, sign * spread * 0.36),
      at(1 - forkShare, 0),
    ]);
  const rays = [0.8, 0.5, 0.2, -0.2, -0.5, -0.8].map((share): [Point, Point] => [
    at(0.04, half * share * 0.8),
    at(0.94 - forkShare * power(1 - Math.abs(share), 0.8), spread * share * 0.9),
  ]);
  return { outline: [...lobe(1), ...lobe(-1).reverse()], rays };
}
