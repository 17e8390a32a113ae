import type { RootContent } from "mdast";
import { costOf } from "../../model/stock.ts";
import { buyTable, moneyText, severalText } from "../stock-text.ts";
import { bullets, heading, paragraph, tableNode } from "../text-nodes.ts";
import type { SessionContext } from "./session-context.ts";

const always = [
  "first-aid",
  "throw-line",
  "telephone",
  "nets",
  "disgorgers",
  "wash",
  "warm",
  "drink",
  "pack",
] as const;

/** What to bring and to buy, and what it costs. */
export function kitBody(context: SessionContext): readonly RootContent[] {
  const { solved, words } = context;
  const { session, kit, tools, ready } = solved;
  return [
    heading(words("table.tackle")),
    paragraph(words("session.kit.tackle-how")),
    tableNode(buyTable(kit, session.money, context)),
    ...costLines(context),
    heading(words("session.kit.always")),
    bullets([
      ...(ready.rods > 0 ? [words("session.kit.rods", { count: ready.rods })] : []),
      ...(ready.whips > 0 ? [words("session.kit.whips", { count: ready.whips })] : []),
      ...always.map((thing) => words(`session.kit.${thing}`)),
    ]),
    ...(tools.length > 0
      ? [
          heading(words("session.kit.lessons")),
          paragraph(words("session.kit.lessons-how", { tools: toolsText(context) })),
        ]
      : []),
  ];
}

const toolsText = ({ solved: { tools }, words }: SessionContext): string =>
  tools.map(({ title, count }) => severalText(title, count, words)).join("; ");

/** All that is bought, bait too; nothing where nobody says what things cost. */
function costLines(context: SessionContext): readonly RootContent[] {
  const { solved, words } = context;
  const { kit, feeds, groundbait, session } = solved;
  const cost = costOf([...kit, ...feeds, ...(groundbait ? [groundbait] : [])]);
  if (!cost) return [];
  const sum = words("session.kit.cost", { cost: moneyText(cost.cents, session.money, context) });
  const unpriced =
    cost.withoutPrice > 0 ? ` ${words("stock.without-price", { count: cost.withoutPrice })}` : "";
  return [paragraph(`${sum}${unpriced}`)];
}
