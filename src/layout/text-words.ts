import { entry, last, sum } from "../core/lists.ts";
import { type Fonts, softHyphen } from "./fonts.ts";
import { breakable } from "./line-breaks.ts";
import type { TextRun } from "./nodes.ts";

/** A part of a word in one run. */
interface Piece {
  readonly run: TextRun;
  readonly text: string;
  readonly widthMm: number;
}

/** What lines are broken between. */
export interface Word {
  readonly pieces: readonly Piece[];
  readonly widthMm: number;
  /** Width of the space at its end, which is not seen at the end of a line. */
  readonly spaceMm: number;
}

/** Words of all runs, single spaces between them: a line may also end in the middle of a run, or not at its end. */
export function wordsOf(runs: readonly TextRun[], fonts: Fonts): Word[] {
  let text = "";
  /** Where each run ends. */
  const ends: number[] = [];
  for (const run of runs) {
    const more = run.text.replace(/[ \t\r\n]+/g, " ");
    text += more.startsWith(" ") && (text === "" || text.endsWith(" ")) ? more.slice(1) : more;
    ends.push(text.length);
  }
  text = text.replace(/ $/, "");
  let from = 0;
  let here = 0;
  return breakable(text).map((part) => {
    const to = from + part.length;
    while (entry(ends, here) <= from) here += 1;
    if (entry(ends, here) >= to) {
      from = to;
      return wordOf(part, entry(runs, here), fonts);
    }
    const pieces: Piece[] = [];
    for (; from < to; here += 1) {
      const end = Math.min(entry(ends, here), to);
      const run = entry(runs, here);
      const own = text.slice(from, end);
      if (own !== "") pieces.push({ run, text: own, widthMm: widthOf(own, run, fonts) });
      from = end;
    }
    here -= 1;
    const { run, text: end, widthMm } = last(pieces);
    return {
      pieces,
      widthMm: sum(pieces.map((piece) => piece.widthMm)),
      spaceMm: spaceBehind(end, widthMm, run, fonts),
    };
  });
}

/** What of a text so wide is not seen at the end of a line. */
function spaceBehind(text: string, widthMm: number, { sizeMm, face }: TextRun, fonts: Fonts): number {
  if (!text.endsWith(" ")) return 0;
  const { source, seenWidth } = fonts.faces[face];
  return widthMm - (seenWidth(text) * sizeMm) / source.unitsPerEm;
}

export function widthOf(text: string, { sizeMm, face }: TextRun, fonts: Fonts): number {
  return fonts.measure(text, sizeMm, face);
}

/** Letters that a word keeps at least before a hyphen, and behind it. */
const leastBefore = 3;
const leastBehind = 3;

/**
 * As much of a word as a room takes with a hyphen behind it, and the rest of the word; all of it is the rest where it does
 * not part.
 */
export function partedFor(
  word: Word,
  roomMm: number,
  fonts: Fonts,
): readonly [head: Word | undefined, rest: Word] {
  const [piece, more] = word.pieces;
  const letters = piece && /^([^\p{L}]*)(\p{L}+)/u.exec(piece.text);
  if (!fonts.hyphenate || !letters || more) return [undefined, word];
  const [, before = "", whole = ""] = letters;
  const parts = fonts.hyphenate(whole);
  for (let count = parts.length - 1; count > 0; count--) {
    const head = parts.slice(0, count).join("");
    if (head.length < leastBefore || whole.length - head.length < leastBehind) continue;
    const made = wordOf(before + head + softHyphen, piece.run, fonts);
    if (made.widthMm > roomMm) continue;
    return [made, wordOf(piece.text.slice(before.length + head.length), piece.run, fonts)];
  }
  return [undefined, word];
}

/** A word, or what is left of one, that stands in one run. */
function wordOf(text: string, run: TextRun, fonts: Fonts): Word {
  const widthMm = widthOf(text, run, fonts);
  return { pieces: [{ run, text, widthMm }], widthMm, spaceMm: spaceBehind(text, widthMm, run, fonts) };
}
