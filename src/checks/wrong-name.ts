import { closest, distance } from "fastest-levenshtein";
import type { MessageValues } from "../model/message-table.ts";
import type { WordedMessage } from "./worded-message.ts";

/** A name as it may have been typed: with its folder, its ending, or in quotes of the printer's. */
const plain = (typed: string) =>
  typed
    .replace(/^.*\//, "")
    .replace(/\.(?:md|ya?ml|html)$/, "")
    .replace(/^[“”„‘’"']+|[“”„‘’"']+$/g, "");

/** Letters and digits alone: `No. 8`, `no8` and `No 8` are the same. */
const bare = (name: string) => name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");

/**
 * The allowed name that was meant, where one is the same but for case, spaces and signs, or near enough to be a slip of
 * the finger. Names with a digit are never guessed at: "No 9" for "No 6" would be a wrong rig.
 */
function meantBy(typed: string, allowed: readonly string[]): string | undefined {
  const found = plain(typed);
  const same = allowed.find((name) => bare(name) === bare(found));
  if (same !== undefined || /\d/.test(found)) return same;
  const near = closest(found.toLowerCase(), [...allowed]);
  const slipsMax = Math.max(1, Math.floor(found.length / 3));
  return distance(found.toLowerCase(), near.toLowerCase()) <= slipsMax ? near : undefined;
}

const oneOf = (allowed: readonly string[]) => `allowed: ${allowed.join(", ")}`;

/** A wrong name: says what is allowed, and the likely slip first. */
export function wrongName(
  reason: string,
  found: string,
  allowed: readonly string[],
  byTitle?: string,
): WordedMessage {
  if (allowed.length === 0) return { reason, hint: "there is none to choose from" };
  const meant = byTitle ?? meantBy(found, allowed);
  const guess = meant === undefined ? "" : `did you mean "${meant}"? — `;
  return { reason, hint: `${guess}${oneOf(allowed)}` };
}

/** A name that nothing has; of a picture, where there is none at all, how one comes to be there. */
export function unknownName({ what, found, allowed, meant }: MessageValues["unknown-name"]): WordedMessage {
  const told = wrongName(`there is no ${what} "${found}"`, found, allowed, meant);
  if (what !== "picture in images/" || allowed.length > 0) return told;
  return { ...told, hint: "put the file into the folder images/ beside guide.yaml: SVG, PNG or JPEG" };
}
