import type { Finding } from "../core/finding.ts";
import type { BedDepth } from "../core/swim/bed.ts";
import type { Tub } from "../core/tackle/shot.ts";
import type { G, Mm, Ms } from "../core/units.ts";
import type { WaterKind } from "../core/water/water.ts";
import type { WindStrength } from "./choosing-rules.ts";
import type { levels, RigEntry, Species } from "./library.ts";
import type { LineForFish } from "./line-table.ts";
import type { Rig } from "./rig.ts";
import type { SolvedRig } from "./solved.ts";
import type { Spot, SwimEntry } from "./swim.ts";

type Level = (typeof levels)[number];

/** A rig as far as it is chosen by. */
export type ChoosableRig = Pick<RigEntry, "id" | "title" | "level" | "catches" | "rig">;

/** What rigs are chosen from: they, how fish are called, and the lines that these ask for. */
export interface RigShelf {
  readonly rigs: readonly ChoosableRig[];
  readonly species: readonly Pick<Species, "title" | "also">[];
  readonly lines?: { readonly rows: readonly LineForFish[] };
}

/** A swim as far as rigs are chosen for it. */
export type ChoosableSwim = Pick<SwimEntry, "water" | "paceMs" | "fish">;

/** A spot as far as rigs are chosen for it. */
export type ChoosableSpot = Pick<Spot, "fromBankMm"> & {
  readonly line: Pick<Spot["line"], "soundings" | "features">;
};

/** Where a rig is to be fished, by whom, for what and out of which box. */
export interface Conditions {
  readonly water: WaterKind;
  readonly depthMm: Mm;
  readonly fromBankMm: Mm;
  /** How fast the surface runs; flowing water has it. */
  readonly paceMs?: Ms;
  readonly wind: WindStrength;
  readonly learner: Level;
  readonly fish: readonly string[];
  /** Whether a rig must do for all of these fish, or for one of them. */
  readonly fishWanted: "every" | "any";
  /** To the nearest snag, where there is one. */
  readonly snagMm?: Mm;
  readonly rodLengthMm?: Mm;
  /** Shot that there are in place of the rig's own tub. */
  readonly box?: Tub;
}

/** Why a rig is ruled out. What the sums found is told as they tell it. */
export type RuledOutBy =
  | { readonly rule: "water"; readonly water: WaterKind }
  | { readonly rule: "rod" | "box" | "sums"; readonly finding: Finding }
  | { readonly rule: "reach"; readonly reachMm: Mm; readonly fromBankMm: Mm }
  | { readonly rule: "pace"; readonly paceMs: Ms; readonly mostMs: Ms }
  | { readonly rule: "depth"; readonly depthMm: Mm; readonly leastMm: Mm; readonly mostMm: Mm }
  | { readonly rule: "distance"; readonly loadG: G; readonly neededG: G; readonly fromBankMm: Mm }
  | { readonly rule: "two points"; readonly fromBankMm: Mm; readonly mostMm: Mm }
  | {
      readonly rule: "line";
      readonly line: "main line" | "hook length";
      readonly strengthG: G;
      readonly leastG: G;
      readonly fish: string;
    }
  | { readonly rule: "snag"; readonly strengthG: G; readonly leastG: G; readonly snagMm: Mm }
  | { readonly rule: "level"; readonly level: Level }
  | { readonly rule: "wind"; readonly loadG: G; readonly neededG: G };

/** What speaks for a rig, with the points that it brings. */
export type SpokenForBy = { readonly points: number } & (
  | { readonly rule: "fish"; readonly fish: readonly string[] }
  | { readonly rule: "depth" | "pace"; readonly least: number; readonly most: number }
  | { readonly rule: "level"; readonly level: Level }
  | { readonly rule: "wind" }
);

/** A rig that can be fished there, made up for just that. */
export interface OfferedRig {
  readonly entry: ChoosableRig;
  readonly made: SolvedRig;
  /** The sum of what speaks for it. */
  readonly points: number;
  readonly because: readonly SpokenForBy[];
}

interface RuledOutRig {
  readonly entry: ChoosableRig;
  readonly because: readonly RuledOutBy[];
}

/** Rigs for some conditions, the best first, and what rules the others out. */
export interface Choice {
  readonly offered: readonly OfferedRig[];
  readonly ruledOut: readonly RuledOutRig[];
}

/** Rigs for a spot of a swim, as somebody who can would choose in a calm, and the best for others and in other winds. */
export interface ChosenSpot {
  readonly swim: SwimEntry;
  readonly spot: Spot;
  /** How deep it is, and how sure. */
  readonly depth: BedDepth;
  readonly conditions: Conditions;
  readonly choice: Choice;
  /** The best rig by learner, then by wind; none where nothing suits. */
  readonly best: readonly {
    readonly learner: Level;
    readonly byWind: readonly (ChoosableRig | undefined)[];
  }[];
}

/** The rig that suits a spot of a swim best, made up for just there; no rig where none suits. */
export interface SpotRig {
  readonly swim: SwimEntry;
  readonly spot: Spot;
  readonly rig?: Rig;
  /** Its sums, looked up once somebody asks for them. */
  readonly made?: () => SolvedRig;
}
