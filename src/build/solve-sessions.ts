import { sessionMessages } from "../checks/sessions.ts";
import { withId } from "../core/lists.ts";
import type { Keep } from "../model/kept.ts";
import type { Library } from "../model/library.ts";
import { hasErrors, type Message, message, type Staged } from "../model/message.ts";
import type { Session } from "../model/session.ts";
import type { SolvedRig } from "../model/solved.ts";
import type { SolvedSession } from "../model/solved-session.ts";
import { rigAt } from "../solve/rig-at.ts";
import { type LessonRigToMake, lessonRigsToMake } from "../solve/session/lesson-rigs.ts";
import { type SpotToFish, spotsOf } from "../solve/session/session-spots.ts";
import { solveSession } from "../solve/session/solve-session.ts";
import { findingMessage, reasonText } from "../words/reason.ts";
import type { TableKit } from "../words/table-kit.ts";
import { wholly } from "./kept-rig.ts";

/** What the sessions of a guide are reckoned from. */
interface SessionsInput {
  readonly library: Library;
  readonly rigs: readonly SolvedRig[];
  readonly kit: TableKit;
  readonly keep: Keep;
}

/** The sums of every session that can be held as it is written, with what is weak in it. */
export function solveSessions(input: SessionsInput): Staged<readonly SolvedSession[]> {
  const solved = input.library.sessions.map((session) => solveOne(session, input));
  return {
    value: solved.flatMap(({ value }) => value ?? []),
    messages: solved.flatMap(({ messages }) => messages),
  };
}

function solveOne(session: Session, input: SessionsInput): Staged<SolvedSession | undefined> {
  const { library, rigs, kit } = input;
  const spots = spotsOf(session, library);
  const unfit = rigsWithoutWater(session, spots, library);
  const plans = session.lessonIds.map((id) => withId(library.plans, id));
  const forLessons = lessonRigsToMake(plans, session.learners.count, spots, library.rigs);
  const made = rigsAtSpots(session, spots, forLessons, input);
  const wrong = [...unfit, ...made.messages];
  if (hasErrors(wrong)) return { value: undefined, messages: wrong };
  const atSpot = (rig: { readonly id: string }, spot: SpotToFish) => made.value.get(keyOf(rig.id, spot));
  const solved = solveSession({ session, spots, library, atSpot, rigs });
  const found = solved.findings.map((finding) =>
    findingMessage(finding, session.placeOf(["hours"]), kit.words, kit.figures),
  );
  if (!solved.ok) return { value: undefined, messages: [...wrong, ...found] };
  return { value: solved.value, messages: [...wrong, ...found, ...sessionMessages(solved.value, library)] };
}

/** Rigs of the session that no swim is for, and swims for which it has none. */
function rigsWithoutWater(
  { rigIds, placeOf }: Session,
  spots: readonly SpotToFish[],
  { rigs }: Library,
): readonly Message[] {
  const fished = new Set(spots.flatMap((spot) => spot.rigs.map(({ id }) => id)));
  return [
    ...rigIds.flatMap((id, at) => {
      const rig = rigs.find((one) => one.id === id);
      const isForSome = rig && spots.some(({ swim }) => swim.water === rig.rig.water);
      return rig && !fished.has(id) && !isForSome
        ? [message("session-rig-water", placeOf(["rigs", at]), { rig: rig.title, water: rig.rig.water })]
        : [];
    }),
    ...spots.flatMap(({ swim, rigs: at }, i) =>
      at.length === 0
        ? [
            message("session-swim-without-rig", placeOf(["swims", i]), {
              swim: swim.title,
              water: swim.water,
            }),
          ]
        : [],
    ),
  ];
}

const keyOf = (rigId: string, { swim, depthMm }: SpotToFish) => `${rigId}|${swim.id}|${depthMm}`;

/**
 * Each rig made up for each spot where it is fished; what is against it is told at the spot. Rigs for lessons are made up
 * where they can be.
 */
function rigsAtSpots(
  { placeOf }: Session,
  spots: readonly SpotToFish[],
  forLessons: readonly LessonRigToMake[],
  { kit, keep }: SessionsInput,
): Staged<ReadonlyMap<string, SolvedRig>> {
  const value = new Map<string, SolvedRig>();
  const messages: Message[] = [];
  for (const [at, spot] of spots.entries()) {
    for (const { rig } of spot.rigs) {
      const made = wholly(rigAt(rig, spot.depthMm, spot.swim.paceMs), keep);
      if (made.value) value.set(keyOf(rig.id, spot), made.value);
      const against = made.findings.find(({ severity }) => severity === "error");
      if (!against) continue;
      const said = reasonText(against, kit.words, kit.figures);
      const values = { rig: rig.title, spot: spot.spot.title, said };
      messages.push(message("session-rig-not-for-spot", placeOf(["swims", at, "spot"]), values));
    }
  }
  for (const { entry, spot } of forLessons) {
    if (!spot || value.has(keyOf(entry.id, spot))) continue;
    const made = wholly(rigAt(entry.rig, spot.depthMm, spot.swim.paceMs), keep);
    const isMade = made.findings.every(({ severity }) => severity !== "error");
    if (made.value && isMade) value.set(keyOf(entry.id, spot), made.value);
  }
  return { value, messages };
}
