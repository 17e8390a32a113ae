import type { Share } from "../../core/units.ts";

/** A part, and where it is. */
export interface Pose {
  readonly part: number;
  /** Whether it is a line through its places, a group at its place, or neither. */
  readonly kind: "path" | "group" | "mark";
  /** What stands between the numbers; and all of it, as a pose can become another with the same alone. */
  readonly letters: readonly string[];
  readonly shape: string;
  readonly numbers: readonly number[];
}

const number = /-?\d+(?:\.\d+)?/g;

/**
 * The poses of a moment from their text, such as `0M1 2L3 4;1@12.5 40;2`: a line through places, a group at a place, and a
 * mark that stays where it was drawn.
 */
export function readPoses(packed: string): Pose[] {
  if (packed === "") return [];
  return packed.split(";").map((one): Pose => {
    const at = one.search(/[M@]/);
    if (at < 0) return { part: Number(one), kind: "mark", letters: [], shape: "", numbers: [] };
    const place = one[at] === "@" ? one.slice(at + 1) : one.slice(at);
    const letters = place.split(number);
    return {
      part: Number(one.slice(0, at)),
      kind: one[at] === "@" ? "group" : "path",
      letters,
      shape: letters.join(),
      numbers: (place.match(number) ?? []).map(Number),
    };
  });
}

/**
 * A pose a share of the way to the next, both being poses of one part: what lies between two moments of the sums lies
 * nearly straight between them. Without a next pose of its kind it stays.
 *
 * @param letters what is written between the numbers
 */
export function poseBetween(
  pose: Pose,
  next: Pose | undefined,
  share: Share,
  letters: readonly string[] = pose.letters,
): string {
  const moves = next?.part === pose.part && next.shape === pose.shape;
  let at = "";
  for (const [i, letter] of letters.entries()) {
    const from = pose.numbers[i];
    if (from === undefined) return at + letter;
    const to = moves ? (next.numbers[i] ?? from) : from;
    at += letter + written(from + share * (to - from));
  }
  return at;
}

/** How a number of so many hundredths ends. */
const endings = Array.from({ length: 100 }, (_, i) => String(i / 100).slice(1));

/** A number to the hundredth: an engine writes a whole number several times as quickly as any other. */
function written(value: number): string {
  const hundredths = Math.round(100 * value);
  const size = Math.abs(hundredths);
  return (hundredths < 0 ? "-" : "") + ~~(size / 100) + endings[size % 100];
}
