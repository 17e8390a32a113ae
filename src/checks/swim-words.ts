import type { MessageValues } from "../model/message-table.ts";
import type { WordedMessage } from "./worded-message.ts";

type SwimCode = Extract<
  keyof MessageValues,
  "sounding-twice" | "beyond-soundings" | "choosing-limit-missing" | "notes-depth-other" | `swim-${string}`
>;

/** What is said of swims. */
export const swimWords: { readonly [C in SwimCode]: (v: MessageValues[C]) => WordedMessage } = {
  "sounding-twice": (v) => ({
    reason: `"${v.line}" has two depths at ${v.found}`,
    hint: "keep the one that was plumbed last, or mend how far from the bank it was",
  }),
  "beyond-soundings": (v) => ({
    reason: `${v.found} lies where nobody has plumbed "${v.line}"`,
    hint: `plumb there and add the depth to its soundings, or name a place from ${v.allowed}`,
  }),
  "choosing-limit-missing": (v) => ({
    reason: `nothing rules a rig out by "${v.rule}", which no list of rules may go without`,
    hint: `add a line under \`rules-out\`: - rule: ${v.rule}`,
  }),
  "swim-hazard-untold": (v) => ({
    reason: `${v.found}, and the swim's hazards do not name ${v.hazard}`,
    hint: `add to \`hazards\`: { what: ${v.hazard}, where: …, do: … }`,
  }),
  "swim-ledge-not-found": (v) => ({
    reason: `no ledge shows in the depths of "${v.line}" at ${v.found}`,
    hint: "plumb on either side of it, close by, and add both depths",
  }),
  "swim-spot-without-rig": (v) => ({
    reason: `no rig of the guide can be fished at "${v.spot}"`,
    hint: "npx dotdown choose says what rules each of them out; add a rig that would do, or take the spot out",
  }),
  "notes-depth-other": (v) => ({
    reason: `${v.found} was found at "${v.spot}", where depths and level of the water give ${v.plumbed}`,
    hint: "look at `level`; or plumb the swim anew where its bed has changed",
  }),
  "swim-spot-unsure": (v) => ({
    reason: `the nearest depth to "${v.spot}" is ${v.nearest} away: how deep it is there is a guess`,
    hint: "plumb there and add the depth to the soundings",
  }),
};
