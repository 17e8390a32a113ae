import type { MessageValues } from "../model/message-table.ts";
import { counted } from "./counted.ts";
import type { WordedMessage } from "./worded-message.ts";

type SessionCode = Extract<keyof MessageValues, `session-${string}`>;

const waters = { still: "still water", flowing: "running water" } as const;

/** What is said of sessions. */
export const sessionWords: { readonly [C in SessionCode]: (v: MessageValues[C]) => WordedMessage } = {
  "session-past-midnight": (v) => ({
    reason: `the session is ${v.hours} h long, and the day has ${v.left} h left when it begins`,
    hint: "make `hours` shorter or `from` earlier, or write a session for each day",
  }),
  "session-too-few-rods": (v) => ({
    reason:
      v.needed > v.learners
        ? `${counted(v.learners, "learner")} who fish with whip and rod in turn need ${v.needed}, and there are ${v.rods}`
        : `${counted(v.learners, "learner")} cannot fish with ${counted(v.rods, "rod")}`,
    hint: `bring ${v.needed - v.rods} more and say so in \`rods\`, or take fewer learners`,
  }),
  "session-rig-water": (v) => ({
    reason: `the rig "${v.rig}" is for ${waters[v.water]}, and no swim of the session is`,
    hint: "take it out of `rigs`, or add a swim that it is for",
  }),
  "session-swim-without-rig": (v) => ({
    reason: `no rig of the session can be fished at "${v.swim}", which is ${waters[v.water]}`,
    hint: "add one for such water to `rigs`, or take the swim out",
  }),
  "session-rig-not-for-spot": (v) => ({
    reason: `the rig "${v.rig}" cannot be made up for "${v.spot}": ${v.said}`,
    hint: "choose another spot, or say in the swim's `rigs` which ones are fished there",
  }),
  "session-too-long": (v) => ({
    reason: `the session is ${v.over} min too long for its hours`,
    hint:
      v.leaveOut.length > 0
        ? `leave out ${v.leaveOut.join(", ")}; or make \`hours\` longer`
        : "no lessons can go to make it fit: make `hours` longer, or `set-up`, `fishing` or `pack-up` shorter",
  }),
  "session-lesson-needs": (v) => ({
    reason: v.areNew
      ? `"${v.title}" needs ${v.needs.join(", ")}, and these learners have had no lesson before`
      : `"${v.title}" comes before ${v.needs.join(", ")}, which it needs`,
    hint: "put what it needs before it in `lessons`, or leave it out",
  }),
  "session-lesson-place": (v) => ({
    reason: `"${v.title}" is held at ${waters[v.water]}, and no swim of the session is`,
    hint: "leave it out, or add such a swim",
  }),
  "session-group": (v) => ({
    reason: `"${v.title}" is for up to ${counted(v.most, "learner")} with one coach: ${v.learners} with ${counted(v.adults, "grown-up")} are too many at once`,
    hint: "hold it twice, bring one more coach, or take fewer learners",
  }),
  "session-too-few-places": (v) => ({
    reason: `${counted(v.learners, "learner")} do not have room side by side: the swims have ${counted(v.places, "place")}`,
    hint: "add a swim, or take fewer learners",
  }),
  "session-bait-missing": (v) => ({
    reason: `the rig "${v.rig}" is fished with ${v.bait}, which is not among the session's baits`,
    hint: "add it to `baits`",
  }),
};
