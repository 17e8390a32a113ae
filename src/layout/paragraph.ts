import { entry, first } from "../core/lists.ts";
import type { TextItem } from "../drawing/model.ts";
import type { LayoutStyle } from "../markup/boxes.ts";
import { type Fonts, softHyphen } from "./fonts.ts";
import { breakable } from "./line-breaks.ts";
import type { TextRun } from "./nodes.ts";

/** What a text takes from the boxes around it. */
export interface TextStyle {
  readonly textAlign: NonNullable<LayoutStyle["textAlign"]>;
  readonly loneWord: NonNullable<LayoutStyle["loneWord"]>;
  /** Multiple of the size of the type; none: as the font says. */
  readonly lineHeight?: number;
}

/** A part of a word in one run. */
interface Piece {
  readonly run: TextRun;
  readonly text: string;
  readonly widthMm: number;
}

/** What lines are broken between. */
interface Word {
  readonly pieces: readonly Piece[];
  readonly widthMm: number;
  /** Width of the space at its end, which is not seen at the end of a line. */
  readonly spaceMm: number;
}

interface Line {
  readonly words: Word[];
  widthMm: number;
}

/** A text broken into lines of some width. */
interface BrokenText {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly lines: readonly Line[];
}

/** A line may be so much longer than its room [mm]: what sums of widths are off by. */
const toleranceMm = 1e-5;

const keyOf = ({ text, face, sizeMm, ink, link = "", spoken = "" }: TextRun) =>
  [text, face, sizeMm, ink, link, spoken].join("\t");

const paragraphs = new WeakMap<Fonts, Map<string, Paragraph>>();

const mostKnown = 2_000;

/** Runs of text to be set into a box, measured once and broken for any width. */
export class Paragraph {
  readonly #fonts: Fonts;
  readonly #words: readonly Word[];
  readonly #style: TextStyle;
  readonly #broken = new Map<number, BrokenText>();
  readonly #lineMm: number;
  /** From the top of a line to its baseline [mm]. */
  readonly baselineMm: number;

  /** The paragraph of such runs: most are laid out again and again, each time that a further part of a card is tried. */
  static of(runs: readonly TextRun[], style: TextStyle, fonts: Fonts): Paragraph {
    const known = paragraphs.get(fonts) ?? new Map<string, Paragraph>();
    paragraphs.set(fonts, known);
    const key = runs.map(keyOf).join("\n") + style.textAlign + style.loneWord + style.lineHeight;
    let paragraph = known.get(key);
    if (paragraph === undefined) {
      if (known.size >= mostKnown) known.clear();
      paragraph = new Paragraph(runs, style, fonts);
      known.set(key, paragraph);
    }
    return paragraph;
  }

  private constructor(runs: readonly TextRun[], style: TextStyle, fonts: Fonts) {
    this.#fonts = fonts;
    this.#style = style;
    this.#words = wordsOf(runs, fonts);
    ({ lineMm: this.#lineMm, baselineMm: this.baselineMm } = lineMeasure(first(runs), style, fonts));
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
        const [head, tail] = partedFor(rest, roomMm - line.widthMm + toleranceMm, this.#fonts);
        if (head) add(head, line);
        else if (line.words.length === 0) break;
        line = begin();
        rest = tail;
      }
      add(rest, line);
    }
    if (this.#style.loneWord === "joined") joinLoneWord(lines, roomMm);
    const widest = Math.max(0, ...lines.map(seenWidth));
    return {
      lines,
      widthMm: lines.length > 1 ? Math.max(widest, roomMm) : widest,
      heightMm: lines.length * this.#lineMm,
    };
  }

  /** Where each line begins, from the top left corner of the text, and how long it is. */
  linesIn(roomMm: number): { readonly xMm: number; readonly yMm: number; readonly widthMm: number }[] {
    const before = { left: 0, center: 0.5, right: 1 }[this.#style.textAlign];
    return this.in(roomMm).lines.map((line, at) => {
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
    return this.in(roomMm).lines.flatMap((line, i) => {
      const { xMm: besideMm, yMm: belowMm } = entry(places, i);
      return this.#lineItems(line, xMm + besideMm, yMm + belowMm);
    });
  }

  #lineItems({ words }: Line, fromMm: number, yMm: number): TextItem[] {
    const items: TextItem[] = [];
    let xMm = fromMm;
    let run: TextRun | undefined;
    for (const piece of words.flatMap(({ pieces }) => pieces)) {
      const last = items.at(-1);
      let text = piece.text.replaceAll(joiner, "");
      let atMm = xMm;
      if (last && piece.run === run) {
        items[items.length - 1] = { ...last, text: last.text + text };
        text = "";
      } else if (last && text.startsWith(" ")) {
        items[items.length - 1] = { ...last, text: `${last.text} ` };
        text = text.slice(1);
        atMm += widthOf(" ", piece.run, this.#fonts);
      }
      if (text !== "") {
        items.push({ kind: "text", ...piece.run, xMm: atMm, yMm, text, anchor: "start" });
        run = piece.run;
      }
      xMm += piece.widthMm;
    }
    return items;
  }
}

/** Letters that a word keeps at least before a hyphen, and behind it. */
const leastBefore = 3;
const leastBehind = 3;

/**
 * As much of a word as a room takes with a hyphen behind it, and the rest of the word; all of it is the rest where it does
 * not part.
 */
function partedFor(word: Word, roomMm: number, fonts: Fonts): readonly [head: Word | undefined, rest: Word] {
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

function wordOf(text: string, run: TextRun, fonts: Fonts): Word {
  const widthMm = widthOf(text, run, fonts);
  const spaceMm = widthMm - widthOf(text.trimEnd(), run, fonts);
  return { pieces: [{ run, text, widthMm }], widthMm, spaceMm };
}

/** Keeps signs on one line and is not seen. */
const joiner = "\uFEFF";

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

/** Words of all runs, single spaces between them: a line may also end in the middle of a run, or not at its end. */
function wordsOf(runs: readonly TextRun[], fonts: Fonts): Word[] {
  let text = "";
  /** Where each run ends. */
  const ends: number[] = [];
  for (const run of runs) {
    const more = run.text.replace(/[ \t\r\n]+/g, " ");
    text += more.startsWith(" ") && (text === "" || text.endsWith(" ")) ? more.slice(1) : more;
    ends.push(text.length);
  }
  text = text.replace(/ $/, "");
  let at = 0;
  return breakable(text).map((part) => {
    const [from, to] = [at, at + part.length];
    at = to;
    const pieces = runs.flatMap((run, i): Piece[] => {
      const own = text.slice(Math.max(from, ends[i - 1] ?? 0), Math.min(to, ends[i] ?? to));
      return own === "" ? [] : [{ run, text: own, widthMm: widthOf(own, run, fonts) }];
    });
    const last = pieces.at(-1);
    const spaceMm =
      last?.text.endsWith(" ") === true ? last.widthMm - widthOf(last.text.trimEnd(), last.run, fonts) : 0;
    return { pieces, widthMm: pieces.reduce((sum, { widthMm }) => sum + widthMm, 0), spaceMm };
  });
}

function widthOf(text: string, { sizeMm, face }: TextRun, fonts: Fonts): number {
  return fonts.measure(text, sizeMm, face);
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
