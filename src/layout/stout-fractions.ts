import type { FontFile, PathCommand } from "./font-file.ts";
import { simpleOutline } from "./simple-outline.ts";

/** Fractions that have a sign of their own. */
const fractions = "¼½¾";

/**
 * A face whose fractions are drawn as in a stouter one of the same family, as wide as they were: their figures are half
 * as large as others, and where they are as thin, a copier that keeps all else loses them.
 */
export function withStoutFractions(face: FontFile, stout: FontFile): FontFile {
  const paths = new Map(
    [...fractions].flatMap((sign): [number, readonly PathCommand[]][] => {
      const code = sign.codePointAt(0) ?? 0;
      const [own, other] = [face.glyphOf(code), stout.glyphOf(code)];
      return own === undefined || other === undefined ? [] : [[own, stout.path(other)]];
    }),
  );
  return {
    ...face,
    path: (glyph) => paths.get(glyph) ?? face.path(glyph),
    outline: (glyph) => {
      const path = paths.get(glyph);
      return path === undefined ? face.outline(glyph) : simpleOutline(path);
    },
  };
}
