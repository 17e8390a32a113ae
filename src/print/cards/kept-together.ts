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
  const roomMm = widthMm - slackMm;
  const members = text
    .split(`${ending} `)
    .map((member, at, all) => (at < all.length - 1 ? member + ending : member));
  const most = linesOf(text, roomMm, measure);
  return members
    .reduce<readonly string[]>((kept, member, at) => {
      const tried = kept.with(at, unbroken(member));
      return linesOf(tried.join(" "), roomMm, measure) <= most ? tried : kept;
    }, members)
    .join(" ");
}

/** Lines that a text takes; none are enough for a word that is wider than they are. */
function linesOf(text: string, roomMm: number, measure: (text: string) => number): number {
  let [lines, line] = [1, ""];
  for (const word of text.split(" ")) {
    if (measure(word) > roomMm) return Number.POSITIVE_INFINITY;
    const longer = line === "" ? word : `${line} ${word}`;
    if (measure(longer) <= roomMm) line = longer;
    else [lines, line] = [lines + 1, word];
  }
  return lines;
}
