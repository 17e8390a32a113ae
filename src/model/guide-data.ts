import type { ShotScale } from "../core/tackle/shot.ts";
import type { Guide } from "./library.ts";
import type { Rig } from "./rig.ts";
import type { WordTree } from "./word-tree.ts";

/** A rig of the guide, as far as one that stands in for another is chosen by. */
export interface OtherRig {
  readonly id: string;
  readonly water: Rig["water"];
  readonly depthsMm: Rig["depthsMm"];
  /** Where its figures and its page lie, below the site. */
  readonly data: string;
  readonly page: string;
}

/** What the sums in the browser need of the guide, as the build writes it. */
export interface GuideData {
  readonly words: WordTree;
  readonly guide: Guide;
  readonly scales: readonly ShotScale[];
  readonly rigs: readonly OtherRig[];
}
