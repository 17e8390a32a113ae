import type { Face } from "../../drawing/model.ts";
import { faces } from "../../layout/fonts.ts";
import { hex4 } from "./pdf-values.ts";

/**
 * Which code a glyph has follows from the signs that it stands for, so that text is written alike in all documents: a sign's own
 * two bytes in its plane of Unicode, each plane being a font of its own. Glyphs that stand for several signs have codes of
 * control characters, which no font has signs for.
 */
const ofSeveral: ReadonlyMap<string, number> = new Map(
  ["ff", "fi", "fl", "ffi", "ffl"].map((signs, i) => [signs, i + 1]),
);

interface SignCode {
  readonly plane: number;
  readonly number: number;
  /** The number as hexadecimal digits. */
  readonly code: string;
}

const known = new Map<string, SignCode>();

/** @throws Error where several signs are joined to one that no code is meant for */
export function signCode(sign: string): SignCode {
  let found = known.get(sign);
  if (found === undefined) {
    const point = ofSeveral.get(sign) ?? sign.codePointAt(0) ?? 0;
    if (!ofSeveral.has(sign) && [...sign].length !== 1) throw new Error(`no code for "${sign}" as one glyph`);
    const number = point & 0xffff;
    found = { plane: point >> 16, number, code: hex4(number) };
    known.set(sign, found);
  }
  return found;
}

const letters: Readonly<Record<Face, string>> = { regular: "R", bold: "B", italic: "I" };

/** Name by which pages call a face's font of a plane. */
export const fontName = (face: Face, plane: number): string => letters[face] + (plane === 0 ? "" : plane);

/** Signs by the faces that they are set in. */
export type Signs = Readonly<Record<Face, readonly string[]>>;

/** Gathers the signs that are used of each face. */
export class UsedSigns {
  private readonly used: Readonly<Record<Face, Set<string>>> = {
    regular: new Set(),
    bold: new Set(),
    italic: new Set(),
  };

  add(face: Face, sign: string): void {
    this.used[face].add(sign);
  }

  addAll(signs: Signs): void {
    for (const face of faces) for (const sign of signs[face]) this.used[face].add(sign);
  }

  get all(): Signs {
    const { regular, bold, italic } = this.used;
    return { regular: [...regular], bold: [...bold], italic: [...italic] };
  }
}
