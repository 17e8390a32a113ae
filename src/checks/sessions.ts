import { isAtWater } from "../core/course/course.ts";
import type { Library } from "../model/library.ts";
import { type Message, message } from "../model/message.ts";
import type { SolvedSession } from "../model/solved-session.ts";

/** What is weak in a session that can be held as it is written. */
export function sessionMessages(solved: SolvedSession, library: Library): readonly Message[] {
  return [...tooLong(solved), ...lessonsOf(solved, library), ...roomAndBait(solved, library)];
}

function tooLong({ session, sheet }: SolvedSession): readonly Message[] {
  const { overMin: over, leaveOut } = sheet;
  return over > 0 ? [message("session-too-long", session.placeOf(["hours"]), { over, leaveOut })] : [];
}

/** Lessons that come before what they need, that have no such water, or more learners than their coaches can have. */
function lessonsOf({ session, plans, spots }: SolvedSession, library: Library): readonly Message[] {
  const { learners, adults, placeOf } = session;
  const hasPlan = (id: string) => library.plans.some((plan) => plan.id === id);
  return plans.flatMap(({ id, title, after, place, learners: most }, at) => {
    const spot = placeOf(["lessons", at]);
    const held = plans.slice(0, at).map((plan) => plan.id);
    const later = plans.slice(at).map((plan) => plan.id);
    const needs = after.filter(
      (need) =>
        need !== id && hasPlan(need) && !held.includes(need) && (learners.areNew || later.includes(need)),
    );
    const water = place === "at running water" ? "flowing" : "still";
    const isThere = !isAtWater(place) || spots.some(({ swim }) => swim.water === water);
    return [
      ...(needs.length > 0
        ? [message("session-lesson-needs", spot, { title, needs, areNew: learners.areNew })]
        : []),
      ...(isThere ? [] : [message("session-lesson-place", spot, { title, water })]),
      ...(learners.count > most * adults
        ? [message("session-group", spot, { title, most, learners: learners.count, adults })]
        : []),
    ];
  });
}

function roomAndBait({ session, spots }: SolvedSession, { baits }: Library): readonly Message[] {
  const { learners, placeOf } = session;
  const places = [...new Set(spots.map(({ swim }) => swim))].reduce((sum, swim) => sum + swim.places, 0);
  const fished = new Map(spots.flatMap(({ rigs }) => rigs.map(({ entry }) => [entry.id, entry] as const)));
  return [
    ...(learners.count > places
      ? [message("session-too-few-places", placeOf(["swims"]), { learners: learners.count, places })]
      : []),
    ...session.rigIds.flatMap((id, at) => {
      const rig = fished.get(id);
      const bait = baits.find((one) => one.bait.id === rig?.rig.bait.id)?.bait;
      return rig && bait && !session.baitIds.includes(bait.id)
        ? [message("session-bait-missing", placeOf(["rigs", at]), { rig: rig.title, bait: bait.id })]
        : [];
    }),
  ];
}
