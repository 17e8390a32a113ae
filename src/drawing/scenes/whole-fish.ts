import type { FishLooks } from "../../model/fish-looks.ts";
import { fishFigure } from "../fish/fish-figure.ts";
import type { Point } from "../items.ts";
import type { Item } from "../model.ts";

/** A fish of no kind in particular, with the proportions of a small shoal fish; from memory. */
const looks: FishLooks = {
  depthShare: 0.31,
  deepestShare: 0.42,
  backShare: 0.55,
  tailRootShare: 0.1,
  headShare: 0.22,
  mouth: "ahead",
  wideMouth: false,
  barbels: 0,
  backFins: [{ fromShare: 0.47, toShare: 0.6, heightShare: 0.16, edge: "straight" }],
  ventFin: { fromShare: 0.7, toShare: 0.8, heightShare: 0.1, edge: "straight" },
  bellyFinShare: 0.48,
  tail: { lengthShare: 0.24, forkShare: 0.5 },
  scales: "none",
  marks: "none",
  redFins: false,
  redEye: false,
  tell: { above: [], below: [] },
};

/** A fish from the side with its fins, its nose to the left; for pictures where it is large enough to be looked at. */
export function wholeFish(nose: Point, lengthMm: number): readonly Item[] {
  return fishFigure(looks, { nose, lengthMm }).items;
}
