import type { RootContent } from "mdast";
import type { FeedRow } from "../../core/session/feed-plan.ts";
import type { FeedLine, GroundbaitLine } from "../../model/solved-session.ts";
import { heading, paragraph, tableNode } from "../text-nodes.ts";
import { clockText, type SessionContext } from "./session-context.ts";

/** What to bring to feed and for hooks, what to mix, and what is thrown in by the clock. */
export function feedBody(context: SessionContext): readonly RootContent[] {
  const { solved, words, figures } = context;
  const { feeds, groundbait, feedPlan } = solved;
  return [
    heading(words("table.bring")),
    paragraph(words("session.feed.bring-how")),
    tableNode({
      head: [
        words("session.feed.what"),
        words("session.feed.for"),
        words("stock.needed"),
        words("stock.there"),
        words("table.sold"),
        words("table.buy"),
      ],
      rows: feeds.map((line) => bringRow(line, context)),
    }),
    ...(groundbait ? groundbaitPart(groundbait, context) : []),
    heading(words("session.feed.clock")),
    paragraph(words("session.feed.clock-how")),
    tableNode({
      head: [
        words("session.run.clock"),
        words("session.run.spot"),
        words("session.feed.what"),
        words("session.feed.each"),
        words("session.feed.rods"),
        words("session.feed.all"),
      ],
      rows: [
        ...feedPlan.rows.map((row) => clockRow(row, context)),
        ...feedPlan.totals.map(({ what, volumeMl }) => [
          words("stock.sum"),
          "",
          what,
          "",
          "",
          figures.volume(volumeMl),
        ]),
      ],
    }),
  ];
}

function bringRow(line: FeedLine, { words, figures }: SessionContext): readonly string[] {
  const { what, fedMl, onHooks, neededMl, inBoxMl, packetMl, packets } = line;
  const none = words("table.blank");
  const missing = neededMl - inBoxMl;
  const buy = packetMl === undefined ? figures.volume(missing) : words("stock.packets", { count: packets });
  return [
    what,
    [
      ...(fedMl > 0 ? [words("session.feed.use.feed", { volume: figures.volume(fedMl) })] : []),
      ...onHooks.map(({ bait, volumeMl }) =>
        words("session.feed.use.hook", { bait, volume: figures.volume(volumeMl) }),
      ),
    ].join("; "),
    figures.volume(neededMl),
    inBoxMl > 0 ? figures.volume(inBoxMl) : none,
    packetMl === undefined ? none : words("table.packets", { amount: figures.volume(packetMl) }),
    missing > 0 ? buy : none,
  ];
}

function groundbaitPart(line: GroundbaitLine, { words, figures }: SessionContext): readonly RootContent[] {
  const { balls, dryLowG, dryHighG, waterLowMl, waterHighMl, heldBackG, inBoxG, packets, packetG } = line;
  const bags =
    packetG === undefined
      ? []
      : [
          paragraph(
            words("session.feed.bags", {
              packets,
              packet: figures.kitchenRange(packetG, packetG, "g"),
              there: figures.kitchenRange(inBoxG, inBoxG, "g"),
            }),
          ),
        ];
  return [
    heading(words("session.feed.groundbait")),
    tableNode({
      head: [
        words("session.feed.balls"),
        words("table.dry-mix"),
        words("table.water"),
        words("table.held-back"),
      ],
      rows: [
        [
          figures.number(balls, 0),
          figures.kitchenRange(dryLowG, dryHighG, "g"),
          figures.kitchenRange(waterLowMl, waterHighMl, "ml"),
          figures.kitchenRange(heldBackG, heldBackG, "g"),
        ],
      ],
    }),
    ...bags,
    paragraph(words("session.feed.in-balls")),
  ];
}

function clockRow(row: FeedRow, { solved: { spots }, words, figures }: SessionContext): readonly string[] {
  const spot = spots[row.place];
  const portion = words(row.asBalls ? "session.feed.ball-every" : "session.feed.portion-every", {
    portion: figures.volume(row.feed.portionMl),
    every: figures.time(row.feed.everyS),
    count: row.portions,
  });
  return [
    words("figures.from-to", { from: clockText(row.fromMin), to: clockText(row.toMin) }),
    spot?.spot.title ?? "",
    row.feed.what,
    portion,
    figures.number(row.rods, 0),
    figures.volume(row.volumeMl),
  ];
}
