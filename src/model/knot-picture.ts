import type { Basis } from "../core/basis.ts";

/**
 * Knots as step pictures. Lengths are in units of the knot's own frame, x to the right and y down; the drawing code
 * scales the frame into the room it is given. Height above the paper decides which strand lies on top where two cross.
 */

/** A place in the frame, with its height above the paper (0 where none is given). */
export type KnotPoint = readonly [x: number, y: number] | readonly [x: number, y: number, height: number];

/** Turns round a straight axis, seen from the side. */
export interface Coil {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  /** Whole or half turns. */
  readonly turns: number;
  readonly radius: number;
  /** The side of the axis it starts on; the left one counts as top where the axis is upright. */
  readonly start: "top" | "bottom";
  /** Whether the first half turn passes in front of the axis or behind it. */
  readonly first: "front" | "back";
}

/** A line folded back on itself: out along one side of a path, round a loop, back along the other side. */
export interface Doubled {
  /** Distance between the two lines; the way out lies on the left of the path. */
  readonly gap: number;
  readonly along: readonly (KnotPoint | { readonly coil: Coil })[];
  /** From the way out round to the way back; at least one point. */
  readonly loop: readonly KnotPoint[];
}

/** A stretch of a strand; `tag` says that the rest of it is the tag end. */
export type PathPart = KnotPoint | { readonly coil: Coil } | { readonly doubled: Doubled } | "tag";

export const strandPatterns = ["line", "hook length", "cord"] as const;
export type StrandPattern = (typeof strandPatterns)[number];

interface KnotStrand {
  readonly name: string;
  readonly pattern: StrandPattern;
  readonly path: readonly PathPart[];
}

/** Which way a hook's shank points from its eye, or a shot's slit opens. */
export const facings = ["right", "down", "left", "up"] as const;
export type Facing = (typeof facings)[number];

/**
 * Things that are tied to. A hook's and a float's eye are rings that take part in the crossings under the names
 * `hook eye` and `float eye`; the rest lie behind the strands (float, rod) or in front of them.
 */
export type KnotObject =
  | { readonly kind: "hook"; readonly at: KnotPoint; readonly size: number; readonly facing: Facing }
  /** A float standing upright, tip up: `at` is its lower end. */
  | {
      readonly kind: "float";
      readonly at: KnotPoint;
      readonly length: number;
      readonly shape: "waggler" | "stick";
      /** Radius of the eye below the lower end; none for a float held by rubbers. */
      readonly eye?: number;
      /** Lying on its side, tip to the right. */
      readonly lying?: boolean;
    }
  | {
      readonly kind: "rubber";
      readonly at: KnotPoint;
      readonly length: number;
      readonly width: number;
      readonly lying?: boolean;
    }
  | { readonly kind: "shot"; readonly at: KnotPoint; readonly radius: number; readonly facing: Facing }
  | { readonly kind: "bead"; readonly at: KnotPoint; readonly radius: number }
  /** A knot already tied, drawn small. */
  | { readonly kind: "tied"; readonly at: KnotPoint; readonly length: number; readonly width: number }
  /** Where to cut. */
  | { readonly kind: "cut"; readonly at: KnotPoint; readonly facing: Facing }
  /** A distance to keep; a label says how much. */
  | { readonly kind: "span"; readonly at: KnotPoint; readonly to: KnotPoint }
  /** The step shows what is wrong. */
  | { readonly kind: "cross"; readonly at: KnotPoint; readonly size: number }
  /** A drop of water: wet the knot. */
  | { readonly kind: "drop"; readonly at: KnotPoint; readonly size: number };

/** An arrow along a smooth path: `pull` is a force on the line, `way` where an end goes. */
export interface KnotArrow {
  readonly kind: "pull" | "way";
  readonly path: readonly KnotPoint[];
}

export interface KnotLabel {
  readonly at: KnotPoint;
  readonly text: string;
  readonly anchor: "start" | "middle" | "end";
}

export interface KnotStep {
  /** What to do, one or two sentences. */
  readonly caption: string;
  readonly strands: readonly KnotStrand[];
  readonly objects: readonly KnotObject[];
  readonly arrows: readonly KnotArrow[];
  readonly labels: readonly KnotLabel[];
}

/** `content/knots/<id>.yaml`. */
export interface KnotPicture {
  readonly id: string;
  readonly title: string;
  /** What it joins, such as `hook length to hook`. */
  readonly joins: string;
  /** Share of the line's strength that is left; none where no line is knotted. */
  readonly strengthShare?: { readonly low: number; readonly high: number; readonly basis: Basis };
  /** Width and height of every step's picture. */
  readonly frame: readonly [width: number, height: number];
  readonly steps: readonly KnotStep[];
}
