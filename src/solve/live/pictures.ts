import type { Node } from "mdast";

/** A picture that a text asks for, with every name in it known to be there. */
export type PictureReference =
  | { readonly picture: "rig-drawing"; readonly rig: string; readonly depthMm: number }
  | { readonly picture: "float-drawing"; readonly float: string }
  | { readonly picture: "float-states"; readonly rig: string }
  | { readonly picture: "knot"; readonly knot: string }
  | { readonly picture: "scene"; readonly scene: Scene };

/** Pictures of tackle, bank and fish that belong to no one rig. */
export const scenes = [
  "swim",
  "rod-and-reel",
  "make-up",
  "feather",
  "sink-the-line",
  "mend",
  "strike",
  "land-fish",
  "disgorger",
  "wires",
] as const;
export type Scene = (typeof scenes)[number];

/** Where a picture goes in a text, once its reference is known to be good. */
export interface PictureNode extends Node {
  readonly type: "picture";
  readonly reference: PictureReference;
}

declare module "mdast" {
  interface RootContentMap {
    picture: PictureNode;
  }
  interface BlockContentMap {
    picture: PictureNode;
  }
}
