import type { AttributeSlip, MessageValues, SlippedSign } from "../model/message-table.ts";
import type { WordedMessage } from "./worded-message.ts";

/** Signs of a link, a figure or a drawing that are shown as they were typed. */
export const slippedWords: Readonly<Record<SlippedSign, (found: string) => WordedMessage>> = {
  "space in address": (found) => ({
    reason: `"${found}" is no link: there is a space in its address`,
    hint: "call the file by a name without spaces, and write it so here",
  }),
  "no address": (found) => ({
    reason: `"${found}" is no link: no line of the text says where it leads`,
    hint: `write where it leads in round brackets: ${found.replace(/\]\[.*/, "](…)")}`,
  }),
  "parts swapped": (found) => ({
    reason: `"${found}" is no link: its brackets are swapped`,
    hint: `write it like ${found.replace(/^\((.*)\)\[(.*)\]$/, "[$1]($2)")}`,
  }),
  "block in sentence": (found) => ({
    reason: `"${found.slice(0, -1)}" stands within a sentence`,
    hint: "put it on a line of its own, with an empty line above and below",
  }),
  "space behind colons": (found) => withoutSpace(found),
  "space before brace": (found) => withoutSpace(found),
  "space behind colon": (found) => withoutSpace(found),
  "near a name": (found) => ({
    reason: `"${found}" looks like a live figure, and none is called so`,
    hint: "write it like :weight[]{load=…}; put a space behind the colon, where it is none",
  }),
};

const withoutSpace = (found: string): WordedMessage => ({
  reason: `"${found}" is shown as it stands here: there is a space in it`,
  hint: `write it like ${found.replace(/ +/, "")}`,
});

/** What a directive does not say, and where it may stand instead. */
export function missingAttribute({
  name,
  of,
  slip,
  label,
}: MessageValues["missing-attribute"]): WordedMessage {
  const brackets = of.startsWith("::") ? "" : "[]";
  const written = `${of}${brackets}{${name}="…"}`;
  const hints: Readonly<Record<AttributeSlip, string>> = {
    none: `write it like ${written}`,
    "in brackets": `write it in braces: ${of}{${name}="${label}"}`,
    "in braces": `its braces are not understood: put { right behind what is before it, end with }, and use plain quotes, like ${written}`,
  };
  return { reason: `"${of}" does not say its "${name}"`, hint: hints[slip] };
}

/** Addresses of the web as people say them. */
const spoken = /^(?:www\.|[\w-]+\.(?:com|org|net|[a-z]{2})(?:\/|$))/i;

export function badLink({ link, meant }: MessageValues["bad-link"]): WordedMessage {
  const reason = `nothing is at ${link}`;
  if (spoken.test(link)) return { reason, hint: `write the whole address: https://${link}` };
  if (meant !== undefined) return { reason, hint: `did you mean ${meant}?` };
  return { reason, hint: "write the file that it leads to as seen from this one, such as ../rigs/NAME.md" };
}

/** So many signs say which script it is. */
const fewSigns = 5;

function alsoLacking(others: readonly string[]): string {
  // What shows nothing by itself goes with what stands before it.
  const seen = others.filter((sign) => /[^\p{C}\p{M}\p{Z}]/u.test(sign));
  const more = seen.length - fewSigns;
  const named = seen.slice(0, fewSigns).map((sign) => `"${sign}"`);
  return named.length === 0 ? "" : `, nor for ${named.join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}

/** A sign that cannot be set, and the others beside it. */
export function noSign({ sign, number, others, isJoined, font }: MessageValues["no-sign"]): WordedMessage {
  const which =
    font === undefined ? "the fonts of the guide have" : `neither the guide's fonts nor ${font} has`;
  const no = font === undefined ? "no sign" : "a sign";
  const reason = `${which} ${no} for "${sign}" (${number})${alsoLacking(others)}`;
  const inWords = "say it in words, in Latin, Greek or Cyrillic letters";
  if (isJoined)
    return { reason, hint: `${inWords}: paper sets no letters that join or run from right to left` };
  const another = font === undefined ? "lay a font that has it" : "lay another font";
  return {
    reason,
    hint: `${inWords}; or ${another} into fonts/ and name it in guide.yaml, as look: { font: NAME.ttf }`,
  };
}

export function textAsBegun({ sentence, others }: MessageValues["text-as-begun"]): WordedMessage {
  const more = others === 1 ? ", and 1 more such sentence" : `, and ${others} more such sentences`;
  return {
    reason: `"${sentence}" still stands as the file was begun${others > 0 ? more : ""}; readers would find it in print`,
    hint: "say it in your own words, or take it out",
  };
}
