import { type KitNeed, kitKey } from "../../core/tackle/kit.ts";
import type { StockLine } from "../../model/stock.ts";

/** How things are sold, and how many are there; what a stock does not name comes singly, and there is none of it. */
export function inStock(stock: readonly StockLine[]) {
  const lines = new Map(stock.map((line) => [kitKey(line), line]));
  return {
    perPacket: (need: KitNeed) => lines.get(kitKey(need))?.perPacket ?? 1,
    stockOf: (need: KitNeed) => lines.get(kitKey(need))?.count ?? 0,
  };
}

/** What a packet of a thing costs, where the stock says so. */
export function priceIn(stock: readonly StockLine[], need: KitNeed): { readonly priceCents?: number } {
  const priceCents = stock.find((line) => kitKey(line) === kitKey(need))?.priceCents;
  return priceCents === undefined ? {} : { priceCents };
}
