import type { Mm, Ms } from "../core/units.ts";
import type { Place } from "./message.ts";

/** What a rig did at a session. */
interface RigNotes {
  readonly rig: { readonly id: string; readonly title: string };
  /** The place of the swim, by its title. */
  readonly spot?: string;
  /** What worked with it, in a sentence or two. */
  readonly worked?: string;
  readonly catches: readonly { readonly fish: string; readonly count: number }[];
}

/** `content/notes/*.yaml`: what was found at a swim on one day. */
export interface SwimNotes {
  readonly id: string;
  /** Path as its author knows it, for messages. */
  readonly path: string;
  readonly placeOf: (path: readonly (string | number)[]) => Place;
  readonly swim: string;
  /** ISO date. */
  readonly date: string;
  /** How much higher the water stood than on the day of the soundings; below 0 where it was lower. */
  readonly levelMm?: Mm;
  readonly paceMs?: Ms;
  /** Depths found at places of the swim, by their titles. */
  readonly depths: readonly { readonly spot: string; readonly depthMm: Mm }[];
  readonly rigs: readonly RigNotes[];
}
