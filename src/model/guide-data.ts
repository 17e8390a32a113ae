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

/** Among the assets. */
export const rigListName = "rig-list.js";

/** The rigs of an edition. In a file of its own, since it changes with each of them. */
export interface RigList {
  /** What the pages of rigs load in this edition besides a rig's figures, below the site. */
  readonly scripts: readonly string[];
  readonly rigs: readonly OtherRig[];
}

/** What the sums in the browser need of the guide, as the build writes it. */
export interface GuideData {
  readonly words: WordTree;
  readonly guide: Guide;
  readonly scales: readonly ShotScale[];
}
