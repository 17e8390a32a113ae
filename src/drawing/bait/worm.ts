import { entry, paired } from "../../core/lists.ts";
import type { BaitLooks } from "../../model/bait-looks.ts";
import { bold, type Point, point, polygon, polyline, thin } from "../items.ts";
import { smooth } from "../smooth.ts";
import type { BaitAt, BaitFigure } from "./bait-figure.ts";

/** How much longer than thick a worm is that is on the hook whole, and what of its length hangs down as it winds. */
const wholeRatio = 10;
const wound = 0.33;
const straight = 0.9;

/** Length of the hanging bait from the hook down [mm]. */
export function hangsDownMm({ shape, lengthMm, widthMm }: BaitLooks): number {
  if (shape !== "worm") return lengthMm;
  return lengthMm * (lengthMm / widthMm >= wholeRatio ? wound : straight);
}

/** How a worm winds that hangs from its middle, in shares of what it hangs down. */
const winding = [
  [-0.38, 1],
  [-0.52, 0.8],
  [-0.28, 0.58],
  [-0.48, 0.34],
  [-0.4, 0.1],
  [-0.18, -0.03],
  [0.1, -0.04],
  [0.36, 0.06],
  [0.48, 0.28],
  [0.26, 0.48],
  [0.46, 0.7],
  [0.3, 0.95],
] as const;

/** The middle of a worm's body from end to end: whole it hangs from its middle, a piece from its broken end. */
function spineOf({ bend, lengthMm, widthMm }: BaitAt, isWhole: boolean): Point[] {
  const topMm = bend.yMm - (isWhole ? 0.3 : 0.5) * widthMm;
  if (isWhole)
    return smooth(
      winding.map(([x, y]) => point(bend.xMm + x * wound * lengthMm, topMm + y * wound * lengthMm)),
    );
  return Array.from({ length: 13 }, (_, i) => {
    const share = i / 12;
    const xMm = bend.xMm + 0.9 * widthMm * Math.sin(share * Math.PI * 1.15 + 0.15);
    return point(xMm, topMm + share * lengthMm * straight);
  });
}

/** A long body with bands; one that is whole has its saddle. */
export function worm(bait: BaitAt): BaitFigure {
  const w = bait.widthMm / 2;
  const isWhole = bait.lengthMm / bait.widthMm >= wholeRatio;
  const spine = spineOf(bait, isWhole);
  const ends = spine.length - 1;
  const placeAt = (share: number) => entry(spine, Math.round(share * ends));
  const half = (share: number) =>
    w * Math.min(1, isWhole ? 0.2 + 6 * share : 0.35 + 5 * share, 0.2 + 4 * (1 - share));
  const side = (sign: 1 | -1) =>
    spine.map((at, i) => {
      const [a, b] = [entry(spine, Math.max(0, i - 1)), entry(spine, Math.min(ends, i + 1))];
      const run = Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm);
      const across = (sign * half(i / ends)) / run;
      return point(at.xMm + across * (b.yMm - a.yMm), at.yMm - across * (b.xMm - a.xMm));
    });
  const [right, left] = [side(1), side(-1)];
  const bands = paired(right, left).flatMap(([a, b], i) =>
    i % 2 === 0 && i > 0 && i < ends ? [polyline([a, b], thin)] : [],
  );
  const [from, to] = [Math.round(0.68 * ends), Math.round(0.78 * ends)];
  const saddle = [...right.slice(from, to + 1), ...left.slice(from, to + 1).reverse()];
  const outline = [...smooth(right), ...smooth(left).reverse()];
  return {
    items: [polygon(outline, "paper", bold), ...bands, ...(isWhole ? [polygon(saddle, "tone", bold)] : [])],
    places: {
      top: placeAt(isWhole ? 0.56 : 0.04),
      middle: placeAt(isWhole ? 0.74 : 0.5),
      end: placeAt(0.97),
    },
    flesh: [outline],
  };
}
