import * as fontkit from "fontkit";
import type { Face, MeasureText } from "../drawing/model.ts";

export const faces = ["regular", "bold", "italic"] as const satisfies readonly Face[];

/** What is used of a font: its shaping of a line and its glyphs' outlines, in units of its em. */
export interface Typeface {
  readonly bytes: Uint8Array;
  readonly postscriptName: string;
  readonly unitsPerEm: number;
  /** Glyphs of a line with ligatures and kerning, at unscaled advances. */
  layout(text: string): GlyphRun;
  /** The font as its library made it, shaping words once only: for whoever embeds it. */
  readonly made: object;
}

export interface GlyphRun {
  readonly glyphs: readonly Glyph[];
  readonly positions: readonly {
    readonly xAdvance: number;
    readonly xOffset: number;
    readonly yOffset: number;
  }[];
  readonly advanceWidth: number;
}

interface Glyph {
  readonly id: number;
  readonly advanceWidth: number;
  readonly path: {
    readonly commands: readonly { readonly command: string; readonly args: readonly number[] }[];
  };
}

/** The one family in its three faces. */
export interface Fonts {
  readonly faces: Readonly<Record<Face, Typeface>>;
  readonly measure: MeasureText;
}

/**
 * Fonts from the bytes of their files (TrueType, static).
 *
 * @throws Error where the bytes are no font.
 */
export function makeFonts(bytes: Readonly<Record<Face, Uint8Array>>): Fonts {
  const made = {
    regular: makeTypeface(bytes.regular),
    bold: makeTypeface(bytes.bold),
    italic: makeTypeface(bytes.italic),
  };
  return {
    faces: made,
    measure: (text, sizeMm, face) => {
      const font = made[face];
      return (font.layout(text).advanceWidth * sizeMm) / font.unitsPerEm;
    },
  };
}

function makeTypeface(bytes: Uint8Array): Typeface {
  // The types of the package leave out the drawing commands of a path.
  const font = fontkit.create(bytes as never) as unknown as Omit<Typeface, "bytes" | "made">;
  const known = new Map<string, GlyphRun>();
  const shaped = (word: string): GlyphRun => {
    let run = known.get(word);
    if (run === undefined) {
      run = font.layout(word);
      known.set(word, run);
    }
    return run;
  };
  return {
    bytes,
    made: Object.create(font, { layout: { value: shaped } }),
    postscriptName: font.postscriptName,
    unitsPerEm: font.unitsPerEm,
    layout: (text) => {
      const runs = wordsOf(text).map(shaped);
      return {
        glyphs: runs.flatMap((run) => run.glyphs),
        positions: runs.flatMap((run) => run.positions),
        advanceWidth: runs.reduce((sum, run) => sum + run.advanceWidth, 0),
      };
    },
  };
}

/**
 * Words and the spaces between them: each is shaped by itself and kept, as most words come again and again. A no-break
 * space has done its work once lines are set, and as a sign of its own it would hinder searching.
 */
export function wordsOf(text: string): string[] {
  return text
    .replaceAll("\u00A0", " ")
    .split(/( )/)
    .filter((word) => word !== "");
}
