import { bedDepth, bedOf } from "../core/swim/bed.ts";
import type { Spot } from "../model/swim.ts";
import type { TableKit } from "./table-kit.ts";

/** How sure the depth of a spot is, by the soundings of its line. */
export function surenessText({ line, fromBankMm }: Spot, { words, figures }: TableKit): string {
  const depth = bedDepth(bedOf(line.soundings), fromBankMm);
  if (!depth) return "";
  const range = { shallowest: figures.depth(depth.shallowestMm), deepest: figures.depth(depth.deepestMm) };
  return depth.isNear
    ? words("choosing.sure", range)
    : words("choosing.sure-guess", { ...range, nearest: figures.depth(depth.nearestMm) });
}
