import type { PackStock } from "../core/session/shelf.ts";
import type { KitLine } from "../core/tackle/kit.ts";
import type { Place } from "./message.ts";
import type { SolvedRig } from "./solved.ts";
import type { RigMaking, StockLine, ThingNeed } from "./stock.ts";

/** `content/shelves/*.yaml`: what a shop has, and which rigs it sells made up. */
export interface Shelf {
  readonly id: string;
  readonly title: string;
  /** Path as its author knows it, for messages. */
  readonly path: string;
  readonly placeOf: (path: readonly (string | number)[]) => Place;
  readonly money?: string;
  readonly stock: readonly StockLine[];
  /** What is in a pack. */
  readonly pack: Omit<RigMaking, "spareShare">;
  readonly packs: readonly {
    readonly rigId: string;
    /** How many are to lie ready, and how many do. */
    readonly wanted: number;
    readonly ready: number;
  }[];
}

/** A pack of one rig with what is in it. */
export interface SolvedPack extends Omit<PackStock<ThingNeed>, "id" | "wanted"> {
  readonly solved: SolvedRig;
  readonly needs: readonly ThingNeed[];
  /** How many are still to be made up. */
  readonly toMake: number;
  readonly ready: number;
}

/** A shelf with its sums done. */
export interface SolvedShelf {
  readonly shelf: Shelf;
  /** Packs that are to lie ready, in the order of the file. */
  readonly packs: readonly SolvedPack[];
  /** The other rigs of the guide that the shelf would give at least one of, if nothing else were made up. */
  readonly others: readonly SolvedPack[];
  /** What all packs that are still to be made up need, what of it is there, and what to order. */
  readonly reorder: readonly (KitLine<ThingNeed> & { readonly priceCents?: number })[];
}
