/** A font of the guide's own, for signs that the tool's lack. */
export interface OwnFont {
  /** Name of its file in `fonts/`. */
  readonly id: string;
  readonly path: string;
  readonly bytes: Uint8Array;
  /** Code points of the signs that it has. */
  readonly signs: ReadonlySet<number>;
}

/** Endings of files that may be a font. */
export const fontEndings = [".ttf", ".otf", ".woff", ".woff2"] as const;

export const isFontFile = (path: string): boolean =>
  /^fonts\/[^/]+$/.test(path) && fontEndings.some((ending) => path.endsWith(ending));

/**
 * Scripts whose letters join, stack or run from right to left. Pages could set them; paper, which sets sign beside sign
 * from the left, would make nonsense of them, so no font helps.
 */
const joined =
  /[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Devanagari}\p{Script=Bengali}\p{Script=Gurmukhi}\p{Script=Gujarati}\p{Script=Oriya}\p{Script=Tamil}\p{Script=Telugu}\p{Script=Kannada}\p{Script=Malayalam}\p{Script=Sinhala}\p{Script=Thai}\p{Script=Lao}\p{Script=Tibetan}\p{Script=Myanmar}\p{Script=Khmer}\p{Script=Mongolian}]/u;

export const isJoined = (codePoint: number): boolean => joined.test(String.fromCodePoint(codePoint));
