import type { Share } from "../core/units.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { guideDrawnThrough } from "./guide-of-depth.ts";
import { solveInWater } from "./in-water.ts";

/** Shares by which a float is held back, in steps of a twentieth from run free to stopped. */
const shares: readonly Share[] = Array.from({ length: 21 }, (_, i) => i / 20);

/**
 * A depth in steps small enough for somebody to draw through: the guide of still water centimetre by centimetre, or the
 * line in the first pace, held back more and more.
 */
export function drawnThrough(solved: SolvedRig, depth: SolvedDepth): SolvedDepth | undefined {
  if (solved.rig.water === "still") {
    const guide = guideDrawnThrough(solved, depth);
    return guide.ok ? { ...depth, depthGuide: guide.value } : undefined;
  }
  const rig = { ...solved.rig, pacesMs: solved.rig.pacesMs.slice(0, 1) };
  const water = solveInWater({ ...solved, rig }, depth, shares);
  return water.ok ? { ...depth, inWater: water.value } : undefined;
}
