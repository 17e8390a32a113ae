import { entry, first } from "../core/lists.ts";
import type { TextItem } from "../drawing/model.ts";
import { joiner, type LayoutStyle } from "../markup/boxes.ts";
import { type Fonts, softHyphen } from "./fonts.ts";
import type { TextRun } from "./nodes.ts";
import { partedFor, type Word, widthOf, wordsOf } from "./text-words.ts";

/** What a text takes from the boxes around it. */
export interface TextStyle {
  readonly textAlign: NonNullable<LayoutStyle["textAlign"]>;
  readonly loneWord: NonNullable<LayoutStyle["loneWord"]>;
  /** Multiple of the size of the type; none: as the font says. */
  readonly lineHeight?: number;
}

interface Line {
  readonly words: Word[];
  widthMm: number;
}

/** A text broken into lines of some width. */
interface BrokenText {
  readonly widthMm: number;
  readonly lines: readonly Line[];
}

/** A line may be so much longer than its room [mm]: what sums of widths are off by. */
const toleranceMm = 1e-5;

/** Runs of text, measured once and broken once for any width, whatever the lines of it are like. */
class SetText {
  readonly #words: readonly Word[];
  readonly #broken = new Map<number, BrokenText>();

  constructor(
    readonly runs: readonly TextRun[],
    readonly loneWord: TextStyle["loneWord"],
    readonly fonts: Fonts,
  ) {
    this.#words = wordsOf(runs, fonts);
  }

  /** Each line takes as many words as there is room for; a word that is too wide sticks out. */
  in(roomMm: number): BrokenText {
    let broken = this.#broken.get(roomMm);
    if (broken === undefined) {
      broken = this.#breakInto(roomMm);
      this.#broken.set(roomMm, broken);
    }
    return broken;
  }

  #breakInto(roomMm: number): BrokenText {
    const lines: Line[] = [];
    let line: Line | undefined;
    const add = (word: Word, to: Line) => {
      to.words.push(word);
      to.widthMm += word.widthMm;
    };
    const begin = (): Line => {
      const made = { words: [], widthMm: 0 };
      lines.push(made);
      return made;
    };
    const isRoom = (to: Line, { widthMm, spaceMm }: Word) =>
      to.widthMm + widthMm - spaceMm <= roomMm + toleranceMm;
    for (const word of this.#words) {
      line ??= begin();
      let rest = word;
      while (!isRoom(line, rest)) {
        const [head, tail] = partedFor(rest, roomMm - line.widthMm + toleranceMm, this.fonts);
        if (head) add(head, line);
        else if (line.words.length === 0) break;
        line = begin();
        rest = tail;
      }
      add(rest, line);
    }
    if (this.loneWord === "joined") joinLoneWord(lines, roomMm);
    const widest = lines.reduce((most, one) => Math.max(most, seenWidth(one)), 0);
    return { lines, widthMm: lines.length > 1 ? Math.max(widest, roomMm) : widest };
  }
}

const texts = new WeakMap<Fonts, Map<string, SetText[]>>();

const mostKnown = 2_000;

/** The text of such runs: most are set again and again, each time that a further part of a card is tried. */
function setText(runs: readonly TextRun[], loneWord: TextStyle["loneWord"], fonts: Fonts): SetText {
  const known = texts.get(fonts) ?? new Map<string, SetText[]>();
  texts.set(fonts, known);
  const key = runs.length === 1 ? first(runs).text : runs.map(({ text }) => text).join("\t");
  const alike = known.get(key);
  const found = alike?.find((one) => one.loneWord === loneWord && areAlike(one.runs, runs));
  if (found) return found;
  const made = new SetText(runs, loneWord, fonts);
  if (alike) {
    alike.push(made);
  } else {
    if (known.size >= mostKnown) known.clear();
    known.set(key, [made]);
  }
  return made;
}

function areAlike(one: readonly TextRun[], other: readonly TextRun[]): boolean {
  if (one.length !== other.length) return false;
  return one.every((run, at) => {
    const { text, face, sizeMm, ink, link, spoken } = entry(other, at);
    return (
      run.text === text &&
      run.sizeMm === sizeMm &&
      run.face === face &&
      run.ink === ink &&
      run.link === link &&
      run.spoken === spoken
    );
  });
}

/** Runs of text to be set into a box. */
export class Paragraph {
  readonly #text: SetText;
  readonly #style: TextStyle;
  readonly #lineMm: number;
  /** From the top of a line to its baseline [mm]. */
  readonly baselineMm: number;

  constructor(runs: readonly TextRun[], style: TextStyle, fonts: Fonts) {
    this.#text = setText(runs, style.loneWord, fonts);
    this.#style = style;
    ({ lineMm: this.#lineMm, baselineMm: this.baselineMm } = lineMeasure(first(runs), style, fonts));
  }

  /** Width and height of the text in a room so wide. */
  in(roomMm: number): { readonly widthMm: number; readonly heightMm: number } {
    const { widthMm, lines } = this.#text.in(roomMm);
    return { widthMm, heightMm: lines.length * this.#lineMm };
  }

  /** Where each line begins, from the top left corner of the text, and how long it is. */
  linesIn(roomMm: number): { readonly xMm: number; readonly yMm: number; readonly widthMm: number }[] {
    const before = { left: 0, center: 0.5, right: 1 }[this.#style.textAlign];
    return this.#text.in(roomMm).lines.map((line, at) => {
      const widthMm = seenWidth(line);
      return { xMm: before * (roomMm - widthMm), yMm: at * this.#lineMm + this.baselineMm, widthMm };
    });
  }

  /**
   * The lines with their top left corner at a place, a run's part of a line each. The space at the end of a line stays
   * with it, so that the words stay apart when the text is copied or read aloud.
   */
  itemsAt(xMm: number, yMm: number, roomMm: number): TextItem[] {
    const places = this.linesIn(roomMm);
    return this.#text.in(roomMm).lines.flatMap((line, i) => {
      const { xMm: besideMm, yMm: belowMm } = entry(places, i);
      return lineItems(line, xMm + besideMm, yMm + belowMm, this.#text.fonts);
    });
  }
}

/** The marks of a line from where it begins on its baseline. */
function lineItems({ words }: Line, fromMm: number, yMm: number, fonts: Fonts): TextItem[] {
  const items: TextItem[] = [];
  let xMm = fromMm;
  let atMm = fromMm;
  let run: TextRun | undefined;
  let text = "";
  const end = () => {
    if (run && text !== "") items.push({ kind: "text", ...run, xMm: atMm, yMm, text, anchor: "start" });
  };
  for (const { pieces } of words) {
    for (const piece of pieces) {
      let own = piece.text.replaceAll(joiner, "");
      if (piece.run === run) {
        text += own;
      } else {
        let beginMm = xMm;
        if (text !== "" && own.startsWith(" ")) {
          text += " ";
          own = own.slice(1);
          beginMm += widthOf(" ", piece.run, fonts);
        }
        if (own !== "") {
          end();
          [run, text, atMm] = [piece.run, own, beginMm];
        }
      }
      xMm += piece.widthMm;
    }
  }
  end();
  return items;
}

/** A last line of one word takes the one before to it, so that no word stands alone: no line more, none wider. */
function joinLoneWord(lines: readonly Line[], roomMm: number): void {
  const [before, end] = lines.slice(-2);
  const moved = before?.words.at(-1);
  if (!before || !end || !moved || end.words.length > 1 || before.words.length < 3) return;
  const isParted = moved.pieces.at(-1)?.text.endsWith(softHyphen) ?? false;
  const isGlued = moved.spaceMm === 0;
  if (isParted || isGlued || moved.widthMm + seenWidth(end) > roomMm + toleranceMm) return;
  before.words.pop();
  before.widthMm -= moved.widthMm;
  end.words.unshift(moved);
  end.widthMm += moved.widthMm;
}

function seenWidth({ words, widthMm }: Line): number {
  return widthMm - (words.at(-1)?.spaceMm ?? 0);
}

/** Lines and baselines lie at whole hundredths of a millimetre. */
const perMm = 100;

/**
 * Height of a line and where its baseline lies: half of what the line has beyond the type's own height goes above it.
 * Source: CSS Inline Layout Module Level 3, `line-height`.
 */
function lineMeasure({ sizeMm, face }: TextRun, { lineHeight }: TextStyle, { faces }: Fonts) {
  const { ascent, descent, unitsPerEm } = faces[face].source;
  const size = sizeMm * perMm;
  const above = Math.round((ascent / unitsPerEm) * size);
  const below = Math.round((-descent / unitsPerEm) * size);
  const height = lineHeight === undefined ? ((ascent - descent) / unitsPerEm) * size : lineHeight * size;
  const baseline = above + Math.floor((height - above - below) / 2);
  return { lineMm: Math.round(height) / perMm, baselineMm: baseline / perMm };
}
