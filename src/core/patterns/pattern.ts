import type { Answer } from "../finding.ts";
import type { Shot, Tub } from "../tackle/shot.ts";
import type { G, Mm, Share } from "../units.ts";
import type { Water } from "../water/water.ts";

/** What a shot is for. */
const roles = ["lock", "spread", "bulk", "dropper", "telltale", "anchor"] as const;
export type Role = (typeof roles)[number];

/** A shot in its place on the line. `fromHookMm` is along the line, from the bend of the hook. */
export interface PlacedShot extends Shot {
  readonly role: Role;
  readonly fromHookMm: Mm;
}

/** The telltale: the lowest shot, by default just above the hook length's loop. */
export interface Telltale {
  readonly size: string;
  /** Only where the rig says so: a shot on the hook length weakens light line. */
  readonly fromHookMm?: Mm;
}

/** Equal gaps from the telltale up to the float. */
export interface StrungOutSpec {
  readonly kind: "strung out";
  readonly size: string;
  readonly gapMm: Mm;
  /** Other sizes that may help to make up the load of a float without a lock. */
  readonly alsoSizes?: readonly string[];
  readonly telltale: Telltale;
}

/** Most of the line's load in one group, droppers below it. */
export interface BulkSpec {
  readonly kind: "bulk";
  /** Sizes the bulk may be made of. */
  readonly sizes: readonly string[];
  /** Share of the float's pull in the bulk; floats without a lock put all that is left there. */
  readonly share: Share;
  /** Height of the lowest bulk shot above the hook. */
  readonly fromHookMm: Mm;
  /** From the bulk down. */
  readonly droppers: readonly string[];
  readonly telltale: Telltale;
}

/** A bulk opened out over a length, so that the weight builds up as a fish lifts it. */
export interface SpreadBulkSpec extends Omit<BulkSpec, "kind"> {
  readonly kind: "spread bulk";
  readonly overMm: Mm;
}

/** Like buttons on a shirt: the whole load in equal steps. Tapered: gaps and sizes fall towards the hook. */
export interface ShirtButtonSpec {
  readonly kind: "shirt button" | "tapered shirt button";
  readonly sizes: readonly string[];
  readonly telltale: Telltale;
}

/** One heavy shot on the bed near the hook, which the fish lifts. */
export interface LiftSpec {
  readonly kind: "lift";
  readonly anchor: string;
  readonly fromHookMm: Mm;
}

/** Everything at the float: a slow natural fall near the surface. */
export interface AllAtFloatSpec {
  readonly kind: "all at the float";
}

export type PatternSpec =
  | StrungOutSpec
  | BulkSpec
  | SpreadBulkSpec
  | ShirtButtonSpec
  | LiftSpec
  | AllAtFloatSpec;

export type PatternKind = PatternSpec["kind"];

/** Line on which shot can stand. */
export interface LineRoom {
  /** Float's lower eye (or stop knot) to hook, along the line. */
  readonly floatToHookMm: Mm;
  /** Hook length, from loop to bend of the hook. */
  readonly hookLengthMm: Mm;
}

/** What a pattern has to work with. */
export interface PatternRoom extends LineRoom {
  /** Depth of the water, for saying what depth a pattern needs. */
  readonly depthMm: Mm;
  /** Pull that is left for shot once hook and bait hang [g]. */
  readonly pullG: G;
  /** Whether shot lock the float: then what the line does not carry goes there. */
  readonly locked: boolean;
  /** Largest pull that may go on the line of a locked float, what its least lock leaves [g]. */
  readonly linePullMaxG: G;
  readonly tub: Tub;
  readonly water: Water;
}

/** Pattern × room → the shot on the line from the hook up; the lock is chosen afterwards from what is left. */
export type PlacePattern<S extends PatternSpec> = (
  spec: S,
  room: PatternRoom,
) => Answer<readonly PlacedShot[]>;
