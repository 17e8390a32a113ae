import type { Root } from "mdast";
import type { SolvedPack, SolvedShelf } from "../model/shelf.ts";
import { costOf } from "../model/stock.ts";
import { buyTable, thingText } from "./stock-text.ts";
import type { TableKit } from "./table-kit.ts";
import { bullets, heading, paragraph, tableNode } from "./text-nodes.ts";

/** Which rigs a shelf gives, how many, and what to order, as a text to print. */
export function shelfText({ shelf, packs, others, reorder }: SolvedShelf, kit: TableKit): Root {
  const { words, figures } = kit;
  const count = (of: number) => figures.number(of, 0);
  const row = ({ solved, ready, toMake, inTurn, alone, shortOf }: SolvedPack) => [
    solved.rig.title,
    count(ready),
    count(toMake),
    count(inTurn),
    count(alone),
    inTurn < toMake ? shortOf.map(({ thing }) => thingText(thing, kit)).join("; ") : words("table.blank"),
  ];
  const cost = costOf(reorder);
  const toBuy = reorder.filter(({ packets }) => packets > 0);
  const unpriced = cost && cost.withoutPrice > 0;
  return {
    type: "root",
    children: [
      heading(words("shelf.packs")),
      paragraph(words("shelf.packs-how")),
      tableNode({
        head: [
          words("shelf.rig"),
          words("shelf.ready"),
          words("shelf.to-make"),
          words("shelf.in-turn"),
          words("shelf.alone"),
          words("shelf.short-of"),
        ],
        rows: packs.map(row),
      }),
      heading(words("shelf.reorder")),
      paragraph(words(toBuy.length > 0 ? "shelf.reorder-how" : "shelf.nothing-to-order")),
      ...(reorder.length > 0 ? [tableNode(buyTable(reorder, shelf.money, kit))] : []),
      ...(unpriced ? [paragraph(words("stock.without-price", { count: cost.withoutPrice }))] : []),
      ...(others.length > 0
        ? [
            heading(words("shelf.others")),
            bullets(
              others.map(({ solved, alone }) =>
                words("shelf.other", { rig: solved.rig.title, count: alone }),
              ),
            ),
          ]
        : []),
    ],
  };
}
