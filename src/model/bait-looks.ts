/** Shapes that baits come in. */
export const baitShapes = [
  "grub",
  "shell",
  "worm",
  "grain",
  "pellet",
  "cube",
  "disc",
  "flake",
  "lump",
] as const;
export type BaitShape = (typeof baitShapes)[number];

/** Where on a hooked bait something can be pointed at. */
export const baitPlaces = ["top", "middle", "end", "hook"] as const;
export type BaitPlace = (typeof baitPlaces)[number];

/** What a bait looks like on its hook. */
export interface BaitLooks {
  readonly shape: BaitShape;
  readonly lengthMm: number;
  readonly widthMm: number;
  /** How many are on the hook. */
  readonly count: number;
  /** How it is known and hooked, each with where to look. */
  readonly tell: readonly { readonly at: BaitPlace; readonly say: string }[];
}
