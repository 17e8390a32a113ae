import { last, neighbours } from "../../core/lists.ts";
import type { FishLooks } from "../../model/fish-looks.ts";
import { type Point, point } from "../items.ts";
import { smooth } from "../smooth.ts";

/** A side of the body as a curve: heights above the middle line (below it are negative) over the share of the length. */
type Profile = readonly Point[];

/** The body of a fish from the side, in shares of its length: nose at 0, root of the tail at 1. */
export interface Body {
  readonly back: Profile;
  readonly belly: Profile;
  /** Height of the corner of the mouth. */
  readonly mouthHeight: number;
}

const mouthHeights = { up: 0.22, ahead: 0, under: -0.3 } as const;

/** Outlines from proportions: a round nose, the deepest place, a straight run down to the root of the tail. */
export function bodyOf(looks: FishLooks): Body {
  const { depthShare, deepestShare, backShare, tailRootShare, headShare } = looks;
  const top = depthShare * backShare;
  const bottom = depthShare * (1 - backShare);
  const nose = mouthHeights[looks.mouth] * depthShare * 0.42;
  const side = (deep: number, sign: 1 | -1): Profile => {
    const snout = nose * sign;
    const at = (share: number, height: number) => point(share, sign * height);
    const nape = deep * (1 - 1.15 * (1 - headShare / deepestShare) ** 2);
    return smooth([
      at(0, snout),
      at(0.018, snout + 0.036),
      at(0.35 * headShare, snout * 0.6 + (nape - snout * 0.6) * 0.58),
      at(headShare, nape),
      at(deepestShare, deep),
      at((1 + deepestShare) / 2 + 0.02, (deep + tailRootShare / 2) * 0.56),
      at(0.9, tailRootShare * 0.54),
      at(1, tailRootShare / 2),
    ]);
  };
  return { back: side(top, 1), belly: side(bottom, -1), mouthHeight: nose };
}

/** Height of a side of the body at a share of its length. */
export function heightAt(profile: Profile, share: number): number {
  const piece = neighbours(profile).find(([, b]) => b.xMm >= share);
  if (!piece) return last(profile).yMm;
  const [a, b] = piece;
  const run = b.xMm - a.xMm;
  return run <= 0 ? a.yMm : a.yMm + ((b.yMm - a.yMm) * Math.max(0, share - a.xMm)) / run;
}

/** A place on the side at a share of the length: height 1 is the back, -1 the belly. */
export function flank(body: Body, share: number, height: number): Point {
  return point(share, heightAt(height > 0 ? body.back : body.belly, share) * Math.abs(height));
}
