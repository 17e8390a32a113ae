import type { OutputFile } from "../markup/output.ts";
import type { SolvedShelf } from "../model/shelf.ts";
import { type BuyLine, thingText } from "../words/stock-text.ts";
import type { TableKit } from "../words/table-kit.ts";
import { csvFile, type Row } from "./data-tables.ts";

const columns = ["item", "kind", "needed", "there", "perPacket", "unit", "packets", "price", "cost"];

/** What shops are asked for, as tables for their programs: lines in metres, all else in pieces. */
export function orderFiles(shelves: readonly SolvedShelf[], kit: TableKit): readonly OutputFile[] {
  return shelves.map(({ shelf, reorder }) =>
    csvFile(
      `data/order-${shelf.id}.csv`,
      columns,
      reorder.map((line) => orderRow(line, kit)),
    ),
  );
}

function orderRow(line: BuyLine, kit: TableKit): Row {
  const { kind, count, inStock, perPacket, packets, priceCents } = line;
  const isLine = kind === "line" || kind === "hook length";
  const money = (cents: number) => (cents / 100).toFixed(2);
  return {
    item: thingText(line.thing, kit),
    kind,
    needed: count,
    there: inStock,
    perPacket,
    unit: isLine ? "m" : "piece",
    packets,
    price: priceCents === undefined ? "" : money(priceCents),
    cost: priceCents === undefined ? "" : money(packets * priceCents),
  };
}
