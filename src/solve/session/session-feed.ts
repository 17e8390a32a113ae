import type { Answer } from "../../core/finding.ts";
import { type FedSpan, type FeedPlan, feedPlan } from "../../core/session/feed-plan.ts";
import { packetsFor } from "../../core/tackle/kit.ts";
import type { BaitEntry } from "../../model/library.ts";
import type { Session } from "../../model/session.ts";
import type { FeedLine, GroundbaitLine, SessionSpot } from "../../model/solved-session.ts";

/** What is thrown in at each spot while each of its rigs is fished. */
export function feedOf(spots: readonly SessionSpot[]): Answer<FeedPlan> {
  return feedPlan(
    spots.flatMap(({ learners, rigs }, place) =>
      rigs.flatMap(({ solved, spans }) => {
        const { what, portionMl, everyS, groundbait } = solved.rig.feed;
        return spans
          .filter(() => learners > 0)
          .map((span): FedSpan => {
            return {
              ...span,
              place,
              rods: learners,
              feed: { what, portionMl, everyS },
              asBalls: groundbait === true,
            };
          });
      }),
    ),
  );
}

/** None where nobody says how it is sold. */
const packetsOf = (missing: number, packet: number | undefined) =>
  packet === undefined ? 0 : packetsFor(missing, packet);

/** What to bring to feed and to put on hooks, each thing once; what is in the box is taken off once. */
export function feedLines(
  { totals }: FeedPlan,
  baits: readonly BaitEntry[],
  { learners, hookBaitMl, feeds }: Session,
): readonly FeedLine[] {
  const fed = totals.filter(({ mix }) => !mix);
  const hooked = baits
    .filter(() => hookBaitMl > 0)
    .map(({ bait, feed = bait.title }) => ({
      what: feed,
      bait: bait.title,
      volumeMl: learners.count * hookBaitMl,
    }));
  return [...new Set([...fed, ...hooked].map(({ what }) => what))].map((what): FeedLine => {
    const fedMl = fed.find((one) => one.what === what)?.volumeMl ?? 0;
    const onHooks = hooked
      .filter((one) => one.what === what)
      .map(({ bait, volumeMl }) => ({ bait, volumeMl }));
    const neededMl = onHooks.reduce((sum, { volumeMl }) => sum + volumeMl, fedMl);
    const stock = feeds.find(({ feed }) => feed === what);
    const inBoxMl = stock?.volumeMl ?? 0;
    return {
      what,
      fedMl,
      onHooks,
      neededMl,
      inBoxMl,
      packets: packetsOf(neededMl - inBoxMl, stock?.packetMl),
      ...(stock?.packetMl !== undefined && { packetMl: stock.packetMl }),
      ...(stock?.priceCents !== undefined && { priceCents: stock.priceCents }),
    };
  });
}

/** Groundbait for the balls of all kinds; nothing where none are thrown. */
export function groundbaitLine({ totals }: FeedPlan, { groundbait }: Session): GroundbaitLine | undefined {
  const mixes = totals.flatMap(({ mix }) => mix ?? []);
  if (mixes.length === 0) return undefined;
  const sum = (of: "balls" | "dryLowG" | "dryHighG" | "waterLowMl" | "waterHighMl" | "heldBackG") =>
    mixes.reduce((total, mix) => total + mix[of], 0);
  const dryHighG = sum("dryHighG");
  const inBoxG = groundbait?.massG ?? 0;
  return {
    balls: sum("balls"),
    dryLowG: sum("dryLowG"),
    dryHighG,
    waterLowMl: sum("waterLowMl"),
    waterHighMl: sum("waterHighMl"),
    heldBackG: sum("heldBackG"),
    inBoxG,
    packets: packetsOf(dryHighG - inBoxG, groundbait?.packetG),
    ...(groundbait?.packetG !== undefined && { packetG: groundbait.packetG }),
    ...(groundbait?.priceCents !== undefined && { priceCents: groundbait.priceCents }),
  };
}
