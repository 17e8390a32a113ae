import { entry } from "../core/lists.ts";
import type { Face, MeasureText } from "../drawing/model.ts";
import type { GlyphSource } from "./glyph-source.ts";

export const faces = ["regular", "bold", "italic"] as const satisfies readonly Face[];

/** A face that sets lines of text. */
interface Typeface {
  readonly source: GlyphSource;
  /** Glyphs of a line with ligatures and kerning. */
  layout(text: string): GlyphRun;
  /** What `layout` would make the line as wide as. */
  width(text: string): number;
  /** The same without what is not seen at its end. */
  seenWidth(text: string): number;
}

/** A line of glyphs, in units of the em. */
interface GlyphRun {
  readonly glyphs: readonly PlacedGlyph[];
  readonly width: number;
}

interface PlacedGlyph {
  readonly id: number;
  /** The signs that it stands for. */
  readonly text: string;
  readonly advance: number;
  /** What its advance lacks to the next glyph, or has too much. */
  readonly kern: number;
}

/** The one family in its three faces. */
export interface Fonts {
  readonly faces: Readonly<Record<Face, Typeface>>;
  readonly measure: MeasureText;
  /** Parts of a word between which a line may end; none where words stay whole. */
  readonly hyphenate?: Hyphenate;
}

export type Hyphenate = (word: string) => readonly string[];

/** Where a word was parted at the end of a line, as PDF readers know it; it is seen as a hyphen. */
export const softHyphen = "\u00ad";
/** The glyph that is seen of it; no text has it, so that the font can map it back. */
export const shownHyphen = 0x2010;

export function makeFonts(sources: Readonly<Record<Face, GlyphSource>>): Fonts {
  const made = {
    regular: makeTypeface(sources.regular),
    bold: makeTypeface(sources.bold),
    italic: makeTypeface(sources.italic),
  };
  return {
    faces: made,
    measure: (text, sizeMm, face) => {
      const font = made[face];
      return (font.width(text) * sizeMm) / font.source.unitsPerEm;
    },
  };
}

function makeTypeface(source: GlyphSource): Typeface {
  const known = new Map<string, GlyphRun>();
  /** Of whole texts, which are measured again and again while it is looked for what has room. */
  const widths = new Map<string, TextWidths>();
  const word = (text: string): GlyphRun => {
    let run = known.get(text);
    if (run === undefined) {
      if (known.size >= mostKnown) known.clear();
      run = shaped(text, source);
      known.set(text, run);
    }
    return run;
  };
  const widthsOf = (text: string): TextWidths => {
    let found = widths.get(text);
    if (found === undefined) {
      const whole = wholeWidth(text);
      const seen = text.trimEnd();
      found = { whole, seen: seen.length === text.length ? whole : wholeWidth(seen) };
      if (widths.size >= mostKnown) widths.clear();
      widths.set(text, found);
    }
    return found;
  };
  const wholeWidth = (text: string) => {
    let width = 0;
    for (const one of wordsOf(text)) width += word(one).width;
    return width;
  };
  return {
    source,
    layout: (text) => {
      const glyphs: PlacedGlyph[] = [];
      let width = 0;
      for (const one of wordsOf(text)) {
        const run = word(one);
        for (const glyph of run.glyphs) glyphs.push(glyph);
        width += run.width;
      }
      return { glyphs, width };
    },
    width: (text) => widthsOf(text).whole,
    seenWidth: (text) => widthsOf(text).seen,
  };
}

/** Of a text, in units of the em. */
interface TextWidths {
  readonly whole: number;
  readonly seen: number;
}

/** Words, and texts, that are remembered, of each face: most come again and again. */
const mostKnown = 20_000;

const unseen = /[\u00A0\uFEFF]/;

/** Words with the space behind each: no font kerns with a space. */
function wordsOf(text: string): string[] {
  const plain = unseen.test(text) ? text.replaceAll("\u00A0", " ").replaceAll("\uFEFF", "") : text;
  const words: string[] = [];
  for (let from = 0; from < plain.length; ) {
    const space = plain.indexOf(" ", from);
    const to = space < 0 ? plain.length : space + 1;
    words.push(plain.slice(from, to));
    from = to;
  }
  return words;
}

/** @throws Error where the font lacks a sign */
function shaped(text: string, source: GlyphSource): GlyphRun {
  const signs = [...text];
  const ids = signs.map((sign) => {
    const id =
      sign === softHyphen
        ? (source.glyphOf(shownHyphen) ?? source.glyphOf(0x2d))
        : source.glyphOf(sign.codePointAt(0) ?? 0);
    if (id === undefined) throw new Error(`the fonts have no sign for "${sign}"`);
    return id;
  });
  const set: { id: number; text: string }[] = [];
  for (let at = 0; at < ids.length; ) {
    const id = entry(ids, at);
    const joined = source.ligatures(id).find(({ rest }) => rest.every((one, i) => ids[at + 1 + i] === one));
    const length = 1 + (joined?.rest.length ?? 0);
    set.push({ id: joined?.glyph ?? id, text: signs.slice(at, at + length).join("") });
    at += length;
  }
  let width = 0;
  const glyphs = set.map(({ id, text: of }, i) => {
    const next = set[i + 1];
    const advance = source.advance(id);
    const kern = next === undefined ? 0 : source.kern(id, next.id);
    width += advance + kern;
    return { id, text: of, advance, kern };
  });
  return { glyphs, width };
}
