import type { MessageValues } from "../model/message-table.ts";
import type { WordedMessage } from "./worded-message.ts";

const toShorten = {
  title: "shorten its title",
  "change-first": "shorten the first entry of change-first",
  float: "shorten the title of its float",
  bait: "shorten the title of its bait",
  shot: "give it fewer shot, or fewer sizes",
} as const;

export const doesNotFit = ({ reason, shorten }: MessageValues["does-not-fit"]): WordedMessage => ({
  reason,
  hint: shorten ? toShorten[shorten] : "say it in fewer or shorter words; a table, in fewer columns",
});

export const noRoom = ({ reason }: MessageValues["no-room"]): WordedMessage => ({
  reason,
  hint: 'give it fewer shot, or say less below "drawing" and "figures" in fixed words of your own',
});

export const cardLacks = ({ reason }: MessageValues["card-lacks"]): WordedMessage => ({
  reason,
  hint: "larger cards have it; this one does with shorter texts or fewer shot",
});
