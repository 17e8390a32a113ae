import { type KitNeed, kitKey } from "../../core/tackle/kit.ts";
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
