/** Where on a fish something can be pointed at. */
export const fishPlaces = [
  "mouth",
  "eye",
  "back",
  "back fin",
  "tail",
  "side",
  "scales",
  "belly fin",
  "vent fin",
] as const;
export type FishPlace = (typeof fishPlaces)[number];

/** Words beside the picture of a fish, and where they point. */
export interface FishSays {
  readonly at: FishPlace;
  readonly say: string;
}

/** Where the mouth opens: above the nose, ahead of it, or below it. */
export const mouths = ["up", "ahead", "under"] as const;
/** How the outer edge of a fin runs between its tip and its end. */
export const finEdges = ["hollow", "straight", "rounded", "spiny"] as const;
/** What is to be seen on the sides. */
export const sideMarks = ["none", "bars", "spots", "freckles"] as const;
/** How plainly the scales are to be seen. */
export const scaleSizes = ["none", "small", "large"] as const;

/** A fin on the back or behind the vent; shares are of the length of the body. */
export interface FinLooks {
  readonly fromShare: number;
  readonly toShare: number;
  /** Height of its tip above the body. */
  readonly heightShare: number;
  readonly edge: (typeof finEdges)[number];
}

/**
 * What a kind of fish looks like from the side, as shares of the length of its body: from the nose to the root of the
 * tail, the standard length of the field.
 */
export interface FishLooks {
  /** Height of the body where it is deepest. */
  readonly depthShare: number;
  /** Where that is, from the nose. */
  readonly deepestShare: number;
  /** Share of the height that lies above the middle line. */
  readonly backShare: number;
  /** Height of the root of the tail. */
  readonly tailRootShare: number;
  readonly headShare: number;
  readonly mouth: (typeof mouths)[number];
  readonly wideMouth: boolean;
  /** Barbels on each side of the mouth. */
  readonly barbels: number;
  readonly backFins: readonly FinLooks[];
  readonly ventFin: FinLooks;
  /** Where the belly fins begin. */
  readonly bellyFinShare: number;
  readonly tail: { readonly lengthShare: number; readonly forkShare: number };
  readonly scales: (typeof scaleSizes)[number];
  readonly marks: (typeof sideMarks)[number];
  /** Whether the fins below are red. */
  readonly redFins: boolean;
  readonly redEye: boolean;
  /** What tells it from others, as words above and below its picture. */
  readonly tell: { readonly above: readonly FishSays[]; readonly below: readonly FishSays[] };
}
