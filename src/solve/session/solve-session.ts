import { type Answer, answer } from "../../core/finding.ts";
import { entry, withId } from "../../core/lists.ts";
import { runSheet } from "../../core/session/run-sheet.ts";
import { kitFor } from "../../core/tackle/kit.ts";
import type { GroupUse, LessonPlan, Library, RigEntry } from "../../model/library.ts";
import type { Session } from "../../model/session.ts";
import type { SolvedRig } from "../../model/solved.ts";
import type { SessionSpot, SolvedSession } from "../../model/solved-session.ts";
import type { ThingNeed } from "../../model/stock.ts";
import { inStock, priceIn } from "../stock/stock-lines.ts";
import { feedLines, feedOf, groundbaitLine } from "./session-feed.ts";
import { fishedNeeds, lessonNeeds, toolsOf } from "./session-kit.ts";
import { type SpotToFish, spansOf } from "./session-spots.ts";

/** What a session is reckoned from. */
interface SessionInput {
  readonly session: Session;
  readonly spots: readonly SpotToFish[];
  readonly library: Pick<Library, "plans" | "kits" | "baits" | "rigs" | "floats" | "tubs" | "guide">;
  /** A rig made up for a spot. */
  readonly atSpot: (rig: RigEntry, spot: SpotToFish) => SolvedRig;
  /** The guide's rigs with their sums. */
  readonly rigs: readonly SolvedRig[];
}

/** All sums of a session: its clock, what is fished where and when, feed and bait, and what to bring and to buy. */
export function solveSession({ session, spots, library, atSpot, rigs }: SessionInput): Answer<SolvedSession> {
  const plans = session.lessonIds.map((id) => withId(library.plans, id));
  const sheet = runSheet({ ...session, lessons: plans.map(asLesson) });
  const fished = spots.map((spot): SessionSpot => {
    const spans = spansOf(plans, sheet, spot.rigs.length);
    const made = spot.rigs.map((rig, at) => ({
      entry: rig,
      solved: atSpot(rig, spot),
      spans: entry(spans, at),
    }));
    return { ...spot, rigs: made };
  });
  const feed = feedOf(fished);
  if (!feed.ok) return feed;
  const { group } = withId(library.kits, session.kitId);
  if (!group) throw new RangeError(`the kit ${session.kitId} says nothing of a group`);
  const tools = { plans, learners: session.learners.count, solved: rigs, ...shownFrom(library) };
  const needed = fishedNeeds(fished, group);
  const lessons = lessonNeeds(tools, fished, needed, group);
  const { perPacket, stockOf } = inStock<ThingNeed>(session.box, (need) => usualPacket(need, group));
  const kit = kitFor(1, [needed, lessons], group.spareShare, perPacket, stockOf);
  if (!kit.ok) return kit;
  const baits = library.baits.filter(({ bait }) => session.baitIds.includes(bait.id));
  const groundbait = groundbaitLine(feed.value, session);
  return answer(
    {
      session,
      plans,
      sheet,
      spots: fished,
      feedPlan: feed.value,
      feeds: feedLines(feed.value, baits, session),
      ...(groundbait && { groundbait }),
      kit: kit.value.map((line) => ({ ...line, ...priceIn(session.box, line) })),
      tools: toolsOf(plans, session.learners.count),
    },
    feed.findings,
  );
}

const asLesson = ({ id, minutes, after, teachesSafety }: LessonPlan) => ({
  id,
  minutes,
  after,
  mustStay: teachesSafety,
});

function shownFrom({ rigs, floats, tubs, guide }: SessionInput["library"]) {
  return { rigs, floats, tub: withId(tubs, guide.tubId).tub };
}

/** How a shop sells what the box does not say. */
function usualPacket({ kind }: ThingNeed, use: GroupUse): number {
  switch (kind) {
    case "float":
    case "shot":
      return 1;
    case "hook":
      return use.hooksInPacket;
    case "hook length":
      return use.hookLineOnSpoolMm / 1000;
    case "line":
      return use.mainLineOnSpoolMm / 1000;
  }
}
