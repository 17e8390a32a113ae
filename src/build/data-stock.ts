import { isLine } from "../core/tackle/kit.ts";
import type { OutputFile } from "../markup/output.ts";
import type { SolvedShelf } from "../model/shelf.ts";
import type { SolvedSession } from "../model/solved-session.ts";
import { type BuyLine, thingText } from "../words/stock-text.ts";
import type { TableKit } from "../words/table-kit.ts";
import { csvFile, type Row } from "./data-tables.ts";

const columns = ["item", "kind", "needed", "there", "perPacket", "unit", "packets", "price", "cost"];

/**
 * What shops are asked for, as tables for their programs: lines in metres, feed in millilitres, groundbait in grams dry, all else in
 * pieces. What nobody says how it is sold is asked for by its amount.
 */
export function orderFiles(
  shelves: readonly SolvedShelf[],
  sessions: readonly SolvedSession[],
  kit: TableKit,
): readonly OutputFile[] {
  return [
    ...shelves.map((shelf) => shelfOrder(shelf, kit)),
    ...sessions.map((one) => sessionOrder(one, kit)),
  ];
}

function sessionOrder({ session, kit: lines, feeds, groundbait }: SolvedSession, kit: TableKit): OutputFile {
  const rows: Row[] = [
    ...lines.map((line) => orderRow(line, kit)),
    ...feeds.map(({ what, fedMl, neededMl, inBoxMl, packetMl, packets, priceCents }) => ({
      item: what,
      kind: fedMl > 0 ? "feed" : "hook bait",
      unit: "ml",
      ...sold(Math.ceil(neededMl), Math.floor(inBoxMl), packetMl, packets, priceCents),
    })),
    ...(groundbait
      ? [
          {
            item: kit.words("session.feed.groundbait"),
            kind: "groundbait",
            unit: "g",
            ...sold(
              Math.ceil(groundbait.dryHighG),
              Math.floor(groundbait.inBoxG),
              groundbait.packetG,
              groundbait.packets,
              groundbait.priceCents,
            ),
          },
        ]
      : []),
  ];
  return csvFile(`data/order-session-${session.id}.csv`, columns, rows);
}

const money = (cents: number) => (cents / 100).toFixed(2);

function sold(
  needed: number,
  there: number,
  perPacket: number | undefined,
  packets: number,
  priceCents: number | undefined,
): Row {
  return {
    needed,
    there,
    perPacket: perPacket ?? "",
    packets: perPacket === undefined ? "" : packets,
    price: priceCents === undefined ? "" : money(priceCents),
    cost: priceCents === undefined ? "" : money(packets * priceCents),
  };
}

function shelfOrder({ shelf, reorder }: SolvedShelf, kit: TableKit): OutputFile {
  return csvFile(
    `data/order-${shelf.id}.csv`,
    columns,
    reorder.map((line) => orderRow(line, kit)),
  );
}

function orderRow(line: BuyLine, kit: TableKit): Row {
  const { kind, count, inStock, perPacket, packets, priceCents } = line;
  return {
    item: thingText(line.thing, kit),
    kind,
    unit: isLine(line) ? "m" : "piece",
    ...sold(count, inStock, perPacket, packets, priceCents),
  };
}
