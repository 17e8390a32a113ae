import { type KitNeed, kitKey } from "../../core/tackle/kit.ts";
import type { GroupUse } from "../../model/library.ts";
import type { StockLine } from "../../model/stock.ts";

/**
 * How things are sold, and how many are there; there is none of what a stock does not name.
 *
 * @param usual how a thing is sold where the stock does not say; singly where nobody does
 */
export function inStock<Need extends KitNeed>(
  stock: readonly StockLine[],
  usual: (need: Need) => number = () => 1,
) {
  const lines = new Map(stock.map((line) => [kitKey(line), line]));
  return {
    perPacket: (need: Need) => lines.get(kitKey(need))?.perPacket ?? usual(need),
    stockOf: (need: Need) => lines.get(kitKey(need))?.count ?? 0,
  };
}

/** What a packet of a thing costs, where the stock says so. */
export function priceIn(stock: readonly StockLine[], need: KitNeed): { readonly priceCents?: number } {
  const priceCents = stock.find((line) => kitKey(line) === kitKey(need))?.priceCents;
  return priceCents === undefined ? {} : { priceCents };
}

/** How a shop sells things of a kind, where a kit for a group says so; singly otherwise. */
export function usualPacket({ kind }: KitNeed, use: GroupUse): number {
  switch (kind) {
    case "float":
    case "shot":
      return 1;
    case "hook":
      return use.hooksInPacket;
    case "hook length":
      return use.hookLineOnSpoolMm / 1000;
    case "line":
      return use.mainLineOnSpoolMm / 1000;
  }
}
