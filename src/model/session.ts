import type { G, Min, Ml } from "../core/units.ts";
import type { Place } from "./message.ts";
import type { StockLine } from "./stock.ts";

/** Feed or bait as it is in the box and is sold. */
export interface FeedStock {
  readonly feed: string;
  readonly volumeMl: Ml;
  readonly packetMl?: Ml;
  readonly priceCents?: number;
}

/** Dry groundbait as it is in the box and is sold. */
interface GroundbaitStock {
  readonly massG: G;
  readonly packetG?: G;
  readonly priceCents?: number;
}

/** `content/sessions/*.yaml`: a day by the water with a group. */
export interface Session {
  readonly id: string;
  /** Path as its author knows it, for messages. */
  readonly path: string;
  readonly placeOf: (path: readonly (string | number)[]) => Place;
  readonly title: string;
  /** ISO date. */
  readonly date: string;
  /** Minutes after midnight. */
  readonly fromMin: Min;
  readonly roomMin: Min;
  /** Whether the site shows it. */
  readonly isPublic: boolean;
  readonly swims: readonly {
    readonly swimId: string;
    /** Title of the spot. */
    readonly spot: string;
    /** Rigs that are fished here; all that are for such water where there are none. */
    readonly rigIds: readonly string[];
  }[];
  readonly learners: { readonly count: number; readonly ages?: string; readonly areNew: boolean };
  readonly adults: number;
  readonly rods: number;
  readonly lessonIds: readonly string[];
  readonly rigIds: readonly string[];
  readonly baitIds: readonly string[];
  /** Of each bait, for a learner. */
  readonly hookBaitMl: Ml;
  readonly kitId: string;
  readonly setUpMin: Min;
  readonly leastFishingMin: Min;
  readonly packUpMin: Min;
  readonly money?: string;
  readonly box: readonly StockLine[];
  readonly feeds: readonly FeedStock[];
  readonly groundbait?: GroundbaitStock;
}
