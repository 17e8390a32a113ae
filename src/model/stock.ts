import type { KitNeed } from "../core/tackle/kit.ts";
import type { Metal } from "../core/tackle/shot.ts";
import type { G, Share } from "../core/units.ts";

/** Something that tackle is made of, as a shop or a box has it. */
export type Thing =
  | { readonly kind: "float"; readonly id: string; readonly title: string }
  | { readonly kind: "shot"; readonly size: string; readonly metal: Metal }
  | { readonly kind: "hook"; readonly size: number }
  | { readonly kind: "hook length" | "line"; readonly strengthG: G };

/** A thing that is needed so many times; of line so many metres. */
export interface ThingNeed extends KitNeed {
  readonly thing: Thing;
}

/** What tells a thing from others of its kind. */
function nameOf(thing: Thing): string {
  switch (thing.kind) {
    case "float":
      return thing.id;
    case "shot":
      return `${thing.size}, ${thing.metal}`;
    case "hook":
      return String(thing.size);
    case "hook length":
    case "line":
      return String(thing.strengthG);
  }
}

export function needOf(thing: Thing, count: number): ThingNeed {
  return { kind: thing.kind, name: nameOf(thing), count, thing };
}

/** A thing as it is in stock and is sold: pieces, or metres of line. */
export interface StockLine extends ThingNeed {
  /** None where nobody says. */
  readonly perPacket?: number;
  /** Of a packet, in hundredths of the money. */
  readonly priceCents?: number;
}

/** What a packet comes to, and what is bought of it. */
interface Bought {
  readonly packets: number;
  readonly priceCents?: number;
}

/** What all of it costs, as far as prices are known; nothing where none is. */
export function costOf(
  lines: readonly Bought[],
): { readonly cents: number; readonly withoutPrice: number } | undefined {
  const bought = lines.filter(({ packets }) => packets > 0);
  const priced = bought.filter(({ priceCents }) => priceCents !== undefined);
  if (priced.length === 0) return undefined;
  const cents = priced.reduce((sum, { packets, priceCents = 0 }) => sum + packets * priceCents, 0);
  return { cents, withoutPrice: bought.length - priced.length };
}

/** How a rig is made up for somebody: what is tied for it, and what is cut off. */
export interface RigMaking {
  readonly hookLengths: number;
  readonly hookLineM: number;
  readonly mainLineM: number;
  readonly spareShare: Share;
}
