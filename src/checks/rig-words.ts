import type { MessageValues } from "../model/message-table.ts";
import type { WordedMessage } from "./worded-message.ts";

type RigCode =
  | "thick-hook-length"
  | "date-far-off"
  | "rig-title-taken"
  | "rig-shows-another"
  | "rig-without-kit"
  | "rig-not-for-fish"
  | "rig-not-taught";

/** What is said of rigs beside the rest of the guide, and of days that cannot be meant. */
export const rigWords: { readonly [C in RigCode]: (v: MessageValues[C]) => WordedMessage } = {
  "thick-hook-length": () => ({
    reason:
      "the hook length is thicker than the main line: fish see it first, and a snag costs the whole rig",
    hint: "take finer line for the hook length, or look at both diameters",
  }),
  "date-far-off": (v) => ({
    reason: `"${v.key}" is ${v.date}, more than a year after the day of this edition, ${v.edition}`,
    hint: "look at its year, or give guide.yaml the day of a new edition",
  }),
  "rig-title-taken": (v) => ({
    reason: `"${v.title}" is the title of ${v.by}, too: readers and cards cannot tell the two apart`,
    hint: "call one of them something else",
  }),
  "rig-shows-another": (v) => ({
    reason: `the text of "${v.title}" shows figures of the rig "${v.another}" and none of its own`,
    hint: `write rig=${v.id} where its own are meant, which is so in most texts that were copied`,
  }),
  "rig-without-kit": (v) => ({
    reason: `"${v.title}" is a first rig, and no kit is for it`,
    hint: `name it under \`rigs\` of a kit: ${v.kits.join(", ")}`,
  }),
  "rig-not-for-fish": (v) => ({
    reason: `the notes on ${v.fish} lead to "${v.rig}", which does not name it under \`catches\``,
    hint: `rigs that name it: ${v.allowed.join(", ") || "none"}`,
  }),
  "rig-not-taught": (v) => ({
    reason: `no lesson teaches "${v.title}"`,
    hint: "link to it from a lesson, or show its drawing there",
  }),
};
