import { isInPackets, isLine } from "../core/tackle/kit.ts";
import type { OutputFile } from "../markup/output.ts";
import type { SolvedShelf } from "../model/shelf.ts";
import type { SolvedSession } from "../model/solved-session.ts";
import { type BuyLine, thingText } from "../words/stock-text.ts";
import type { TableKit } from "../words/table-kit.ts";
import { csvFile, type Row } from "./data-tables.ts";

const columns = ["item", "kind", "needed", "there", "buy", "unit", "perPacket", "packets", "price", "cost"];

/**
 * What shops are asked for, as tables for their programs: lines in metres, feed in millilitres, groundbait in grams dry, all else in
 * pieces. What comes in no packets is asked for by its amount, which `buy` says in any case.
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
      ...sold({
        needed: Math.ceil(neededMl),
        there: Math.floor(inBoxMl),
        perPacket: packetMl,
        packets,
        priceCents,
      }),
    })),
    ...(groundbait
      ? [
          {
            item: kit.words("session.feed.groundbait"),
            kind: "groundbait",
            unit: "g",
            ...sold({
              needed: Math.ceil(groundbait.dryHighG),
              there: Math.floor(groundbait.inBoxG),
              perPacket: groundbait.packetG,
              packets: groundbait.packets,
              priceCents: groundbait.priceCents,
            }),
          },
        ]
      : []),
  ];
  return csvFile(`data/order-session-${session.id}.csv`, columns, rows);
}

const money = (cents: number) => (cents / 100).toFixed(2);

/** What is asked for; the price is a packet's, or a piece's or a metre's where nothing is said of packets. */
interface Sale {
  readonly needed: number;
  readonly there: number;
  /** Nothing where it is asked for by its amount. */
  readonly perPacket?: number | undefined;
  readonly packets: number;
  readonly priceCents?: number | undefined;
}

function sold({ needed, there, perPacket, packets, priceCents }: Sale): Row {
  return {
    needed,
    there,
    buy: perPacket === undefined ? Math.max(0, needed - there) : packets * perPacket,
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
    ...sold({
      needed: count,
      there: inStock,
      perPacket: isInPackets(line) ? perPacket : undefined,
      packets,
      priceCents,
    }),
  };
}
