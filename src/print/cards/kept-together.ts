import { entry } from "../../core/lists.ts";
import { unbroken } from "../../words/shot-text.ts";

/** What a printed line may differ from one that is measured here [mm]. */
const slackMm = 0.3;

/**
 * A list with its members, such as shot with their place, each on one line wherever that takes no more lines.
 *
 * @param ending what each member but the last ends with
 * @param measure width of a text [mm]
 */
export function keptTogether(
  text: string,
  ending: "," | ";",
  widthMm: number,
  measure: (text: string) => number,
): string {
  const lines = { roomMm: widthMm - slackMm, spaceMm: measure(" ") };
  const members = text
    .split(`${ending} `)
    .map((member, at, all) => (at < all.length - 1 ? member + ending : member));
  const apart = members.map((member) => member.split(" ").map(measure));
  const most = linesOf(apart, lines);
  const kept = apart.slice();
  return members
    .map((member, at) => {
      const whole = unbroken(member);
      kept[at] = [measure(whole)];
      if (linesOf(kept, lines) <= most) return whole;
      kept[at] = entry(apart, at);
      return member;
    })
    .join(" ");
}

/** Lines that words so wide take [mm], a space between any two; none are enough for one that is wider than they are. */
function linesOf(
  members: readonly (readonly number[])[],
  { roomMm, spaceMm }: { readonly roomMm: number; readonly spaceMm: number },
): number {
  let [lines, lineMm] = [1, -spaceMm];
  for (const words of members) {
    for (const wordMm of words) {
      if (wordMm > roomMm) return Number.POSITIVE_INFINITY;
      const longerMm = lineMm + spaceMm + wordMm;
      if (longerMm <= roomMm) lineMm = longerMm;
      else [lines, lineMm] = [lines + 1, wordMm];
    }
  }
  return lines;
}
