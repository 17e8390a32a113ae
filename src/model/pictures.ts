import type { Node } from "mdast";
import type { RigVariant } from "../core/float/moved-float.ts";
import type { Mm } from "../core/units.ts";
import type { FilmName, knotFilmName } from "./films.ts";

/** A picture that a text asks for, with every name in it known to be there. */
export type PictureReference =
  | {
      readonly picture: "rig-drawing";
      readonly rig: string;
      readonly depthMm: Mm;
      readonly variant: RigVariant;
    }
  | { readonly picture: "float-drawing"; readonly float: string }
  | { readonly picture: "float-chart"; readonly floats: readonly string[] }
  | { readonly picture: "float-states"; readonly rig: string; readonly show: StateGroup }
  | { readonly picture: "pattern-chart"; readonly rigs: readonly string[]; readonly depthMm: Mm }
  | { readonly picture: "hang-plot"; readonly rig: string; readonly depthMm: Mm }
  | FilmReference
  | { readonly picture: "bed"; readonly swim: string; readonly line: number }
  | { readonly picture: "swim-days"; readonly swim: string; readonly of: "depth" | "pace" }
  | { readonly picture: "spot-rig"; readonly swim: string; readonly spot: string }
  | { readonly picture: "knot"; readonly knot: string }
  | { readonly picture: "fish"; readonly fish: string }
  | { readonly picture: "bait"; readonly bait: string }
  | { readonly picture: "scene"; readonly scene: Scene }
  | ImageReference;

/** A happening that pages show moving, and paper in a few moments. */
export type FilmReference =
  | {
      readonly picture: "film";
      readonly film: FilmName;
      readonly rig: string;
      readonly depthMm: Mm;
    }
  | { readonly picture: "film"; readonly film: typeof knotFilmName; readonly knot: string };

/** A photo or a drawing of the guide's own. */
export interface ImageReference {
  readonly picture: "image";
  readonly image: string;
  /** What it shows, for readers who cannot see it. */
  readonly alt: string;
  readonly caption?: string;
}

/** What the float says about the load, about the depth, and with a fish at the bait; or all of it. */
export const stateGroups = ["load", "depth", "bites", "all"] as const;
export type StateGroup = (typeof stateGroups)[number];

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
  "whip",
  "fill-the-reel",
  "read-a-swim",
  "back-shot",
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
