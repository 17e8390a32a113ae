import { arrow, circle, curveTo, type Point, pathFrom, point, polyline, thin, thinSoft } from "./items.ts";
import type { Item, Stroke } from "./model.ts";

/** What a state of the float asks for: nothing, to be put right, or a strike. */
export type Verdict = "right" | "wrong" | "strike";

/** How far such a mark reaches from its middle. */
export const verdictMm = 3;

const strong: Stroke = { ink: "accent", widthMm: 1, cap: "round" };

/** A tick or a cross in a ring, or a rod that is lifted; it reaches so far from its middle. */
export function verdictMark(verdict: Verdict, at: Point, reachMm = verdictMm): Item[] {
  const share = reachMm / verdictMm;
  const on = (x: number, y: number) => point(at.xMm + share * x, at.yMm + share * y);
  const radiusMm = share * (verdictMm - 0.2);
  switch (verdict) {
    case "right":
      return [
        circle(at, radiusMm, { fill: "paper", stroke: thin }),
        polyline([on(-1.4, 0.1), on(-0.4, 1.3), on(1.5, -1.3)], { ...strong, ink: "ink" }),
      ];
    case "wrong":
      return [
        circle(at, radiusMm, { fill: "paper", stroke: { ...thin, ink: "accent" } }),
        polyline([on(-1.3, -1.3), on(1.3, 1.3)], strong),
        polyline([on(-1.3, 1.3), on(1.3, -1.3)], strong),
      ];
    case "strike": {
      // It lay level, in dashes, with its reel below the grip, and is up.
      const butt = on(-3.6, 2.9);
      return [
        polyline([butt, on(3, 2.4)], { ...thinSoft, dashMm: [0.9, 0.7] }),
        pathFrom(butt, [curveTo(on(-2, 0.6), on(-0.6, -1.4), on(0.2, -2.9))], { ...strong, ink: "ink" }),
        circle(on(-1.6, 1.6), share * 0.7, { fill: "ink" }),
        ...arrow(on(2.7, 1.6), on(2.1, -2.9), { ink: "accent", widthMm: 0.9 }, 2.6),
      ];
    }
  }
}
