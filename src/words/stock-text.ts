import { isInPackets, isLine, type KitLine, type KitNeed } from "../core/tackle/kit.ts";
import { costOf, type Thing, type ThingNeed } from "../model/stock.ts";
import type { TableKit } from "./table-kit.ts";
import type { TextTable } from "./tables.ts";
import type { Words } from "./words.ts";

/** A thing as somebody asks for it in a shop. */
export function thingText(thing: Thing, { words, figures }: TableKit): string {
  switch (thing.kind) {
    case "float":
      return thing.title;
    case "shot":
      return words("stock.shot", { size: thing.size, metal: words(`metal.${thing.metal}`) });
    case "hook":
      return words("plan.kit.hook", { size: String(thing.size) });
    case "hook length":
      return words("stock.hook-line", { strength: figures.strength(thing.strengthG) });
    case "line":
      return words("stock.main-line", { strength: figures.strength(thing.strengthG) });
  }
}

/** So many of a thing, such as `3 × hook 18`; the thing alone where there is one. */
export const severalText = (thing: string, count: number, words: Words): string =>
  count === 1 ? thing : words("plan.kit.several", { count: String(count), thing });

/** So many pieces, or so much line. */
export function amountText(need: Pick<KitNeed, "kind">, count: number, { figures }: TableKit): string {
  return isLine(need) ? figures.shortDepth(count * 1000) : figures.number(count, 0);
}

/** Money to its hundredths: `£12.50`. */
export function moneyText(cents: number, money: string | undefined, { words, figures }: TableKit): string {
  const amount = `${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, "0")}`;
  return words("stock.money", { money: money ?? "", amount: figures.typed(amount) }).trim();
}

/** How a thing is sold: singly, in packets or on spools. Of shot without a packet nobody has said it. */
function soldText(line: KitLine<ThingNeed>, kit: TableKit): string {
  const { kind, perPacket } = line;
  if (!isInPackets(line) && kind === "shot") return kit.words("table.blank");
  if (!isInPackets(line)) return kit.words(isLine(line) ? "stock.off-the-spool" : "table.singly");
  return kit.words(isLine(line) ? "table.spools" : "table.packets", {
    amount: amountText(line, perPacket, kit),
  });
}

/** How much of a thing is bought, in what it is sold by: packets, spools, pieces or metres. */
export function boughtText(line: KitLine, kit: TableKit): string {
  const { packets } = line;
  if (packets === 0) return kit.words("table.blank");
  if (isInPackets(line))
    return kit.words(isLine(line) ? "stock.spools" : "stock.packets", { count: packets });
  return isLine(line) ? amountText(line, packets, kit) : kit.words("stock.pieces", { count: packets });
}

/** A line of a list of what to buy. */
export type BuyLine = KitLine<ThingNeed> & { readonly priceCents?: number };

/** What is needed, what of it is there, and what to buy, with what that costs where prices are known. */
export function buyTable(lines: readonly BuyLine[], money: string | undefined, kit: TableKit): TextTable {
  const { words } = kit;
  const cost = costOf(lines);
  const priceOf = ({ packets, priceCents }: BuyLine) =>
    packets === 0 || priceCents === undefined
      ? words("table.blank")
      : moneyText(packets * priceCents, money, kit);
  return {
    head: [
      words("table.tackle"),
      words("stock.needed"),
      words("stock.there"),
      words("table.sold"),
      words("table.buy"),
      ...(cost ? [words("stock.cost")] : []),
    ],
    rows: [
      ...lines.map((line) => [
        thingText(line.thing, kit),
        amountText(line, line.count, kit),
        amountText(line, line.inStock, kit),
        soldText(line, kit),
        boughtText(line, kit),
        ...(cost ? [priceOf(line)] : []),
      ]),
      ...(cost ? [[words("stock.sum"), "", "", "", "", moneyText(cost.cents, money, kit)]] : []),
    ],
  };
}
