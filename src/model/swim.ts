import type { Root } from "mdast";
import type { Sounding } from "../core/swim/bed.ts";
import type { Mm, Ms } from "../core/units.ts";
import type { WaterKind } from "../core/water/water.ts";
import type { Place } from "./message.ts";

/** What can hurt somebody at a swim. */
export const hazardKinds = [
  "overhead wires",
  "trees overhead",
  "deep water",
  "fast water",
  "steep bank",
  "soft edge",
  "slippery bank",
  "boats",
  "traffic",
  "animals",
  "other",
] as const;
export type HazardKind = (typeof hazardKinds)[number];

/** Where wind comes from. */
export const winds = [
  "north",
  "north-east",
  "east",
  "south-east",
  "south",
  "south-west",
  "west",
  "north-west",
] as const;

/** The distance that a page to fill in gives as an example, in the units of the guide. */
export const exampleDistanceMm = 6_000;

/** What there is on the bed besides its depth. */
export const bedFeatures = ["snag", "weed", "ledge"] as const;

interface BedFeature {
  readonly what: (typeof bedFeatures)[number];
  readonly fromBankMm: Mm;
  /** What it is, as an angler would tell it. */
  readonly note?: string;
}

/** Depths plumbed along one line from the bank. */
export interface SoundedLine {
  readonly title: string;
  /** At least two, from the bank out, no two at one place. */
  readonly soundings: readonly Sounding[];
  readonly features: readonly BedFeature[];
}

/** A place of the swim to fish at, between the first sounding of its line and the last. */
export interface Spot {
  readonly title: string;
  /** Which of the lines it is on. */
  readonly line: SoundedLine;
  readonly fromBankMm: Mm;
}

export interface Hazard {
  readonly kind: HazardKind;
  readonly where: string;
  /** What is done about it. */
  readonly measure: string;
}

/** `content/swims/*.yaml`: a place to fish from, as somebody found it. */
export interface SwimEntry {
  readonly id: string;
  /** Path as its author knows it, for messages. */
  readonly path: string;
  readonly placeOf: (path: readonly (string | number)[]) => Place;
  readonly title: string;
  readonly summary: string;
  readonly water: WaterKind;
  /** How fast its surface ran when it was sounded; flowing water has it. */
  readonly paceMs?: Ms;
  /** ISO date on which its depths were plumbed. */
  readonly sounded: string;
  /** What shows how high the water stands. */
  readonly levelMark?: string;
  readonly lines: readonly SoundedLine[];
  readonly spots: readonly Spot[];
  /** Winds that blow on it. */
  readonly exposedTo: readonly (typeof winds)[number][];
  readonly hazards: readonly Hazard[];
  /** Where help, and whoever is dropped off, gets to it. */
  readonly access: { readonly gridReference?: string; readonly road: string; readonly way?: string };
  /** How many can fish it side by side. */
  readonly places: number;
  /** What lives there, by the names that the guide knows fish by. */
  readonly fish: readonly string[];
  /** Rules of the water, in whole sentences. */
  readonly rules: readonly string[];
}

/** A swim and all that is told of it, as a text for its page, and for its sheet, which has less room. */
export interface SwimText {
  readonly swim: SwimEntry;
  readonly onPage: Root;
  readonly onSheet: Root;
}
