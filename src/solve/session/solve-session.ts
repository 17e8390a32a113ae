import { type Answer, answer } from "../../core/finding.ts";
import { entry, withId } from "../../core/lists.ts";
import { runSheet } from "../../core/session/run-sheet.ts";
import { kitFor } from "../../core/tackle/kit.ts";
import type { Tub } from "../../core/tackle/shot.ts";
import type { LessonPlan, Library, RigEntry } from "../../model/library.ts";
import type { Session } from "../../model/session.ts";
import type { SolvedRig } from "../../model/solved.ts";
import type { LessonRig, SessionSpot, SolvedSession } from "../../model/solved-session.ts";
import type { ThingNeed } from "../../model/stock.ts";
import { inStock, priceIn, usualPacket } from "../stock/stock-lines.ts";
import { type LessonRigToMake, lessonRigsToMake } from "./lesson-rigs.ts";
import { feedLines, feedOf, groundbaitLine } from "./session-feed.ts";
import { fishedNeeds, lessonNeeds, lineNeeds, toolsOf } from "./session-kit.ts";
import { readyFor } from "./session-ready.ts";
import { type SpotToFish, spansOf } from "./session-spots.ts";

/** What a session is reckoned from. */
interface SessionInput {
  readonly session: Session;
  readonly spots: readonly SpotToFish[];
  readonly library: Pick<Library, "plans" | "kits" | "baits" | "rigs" | "floats" | "tubs" | "guide">;
  /** A rig made up for a spot; nothing where it cannot be, which a rig that is fished there can. */
  readonly atSpot: (rig: RigEntry, spot: SpotToFish) => SolvedRig | undefined;
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
      solved: madeUp(atSpot(rig, spot)),
      spans: entry(spans, at),
    }));
    return { ...spot, rigs: made };
  });
  const feed = feedOf(fished);
  if (!feed.ok) return feed;
  const { group } = withId(library.kits, session.kitId);
  if (!group) throw new RangeError(`the kit ${session.kitId} says nothing of a group`);
  const learners = session.learners.count;
  const lessonRigs = lessonRigsToMake(plans, learners, spots, library.rigs).flatMap((wanted) =>
    lessonRig(wanted, { spots, fished, atSpot, rigs }),
  );
  const ready = readyFor(fished, lessonRigs, { plans, learners, rigs: library.rigs }, group);
  const needed = fishedNeeds(fished, group);
  const asked = {
    plans,
    learners,
    floats: library.floats,
    tub: withId(library.tubs, library.guide.tubId).tub,
  };
  const lessons = lessonNeeds(asked, lessonRigs, fished, needed, group);
  const { perPacket, stockOf } = inStock<ThingNeed>(session.box, (need) => usualPacket(need, group));
  const kit = kitFor(1, [needed, lineNeeds(ready), lessons], group.spareShare, perPacket, stockOf);
  if (!kit.ok) return kit;
  const baits = library.baits.filter(({ bait }) => session.baitIds.includes(bait.id));
  const groundbait = groundbaitLine(feed.value, session);
  const figures = {
    sheet,
    feedPlan: feed.value,
    feeds: feedLines(feed.value, baits, session),
    ...(groundbait && { groundbait }),
    kit: heaviestFirst(kit.value, asked.tub).map((line) => ({ ...line, ...priceIn(session.box, line) })),
    ready,
    tools: toolsOf(plans, learners),
  };
  // What they were reckoned from, texts and rigs with their sums, was held to be finite where it was made.
  const spans = fished.map((spot) => spot.rigs.map((rig) => rig.spans));
  const reckoned = answer({ ...figures, spans }, feed.findings);
  if (!reckoned.ok) return reckoned;
  return { ...reckoned, value: { session, plans, spots: fished, lessonRigs, ...figures } };
}

const asLesson = ({ id, minutes, after, teachesSafety }: LessonPlan) => ({
  id,
  minutes,
  after,
  mustStay: teachesSafety,
});

/** @throws RangeError for a rig that is fished where it cannot be made up, which its file's reader has refused */
function madeUp(solved: SolvedRig | undefined): SolvedRig {
  if (!solved) throw new RangeError("a rig is fished where it cannot be made up");
  return solved;
}

/** A rig for lessons, made up for its spot where it can be, or else for its own depths. */
function lessonRig(
  { entry: rig, count, spot }: LessonRigToMake,
  {
    spots,
    fished,
    atSpot,
    rigs,
  }: Pick<SessionInput, "spots" | "atSpot" | "rigs"> & { readonly fished: readonly SessionSpot[] },
): readonly LessonRig[] {
  const there = spot && atSpot(rig, spot);
  if (there) return [{ entry: rig, solved: there, count, spot: entry(fished, spots.indexOf(spot)) }];
  const own = rigs.find((one) => one.rig.id === rig.id);
  return own ? [{ entry: rig, solved: own, count }] : [];
}

/** Shot as they lie in a box; all else stays where it is. */
function heaviestFirst<T extends ThingNeed>(lines: readonly T[], tub: Tub): readonly T[] {
  const masses = new Map(tub.map(({ size, massG }) => [size, massG]));
  const massOf = ({ thing }: T) => (thing.kind === "shot" ? (masses.get(thing.size) ?? 0) : 0);
  return [...lines].sort((a, b) => (a.kind === "shot" && b.kind === "shot" ? massOf(b) - massOf(a) : 0));
}
