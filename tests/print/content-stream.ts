/** A painting operator of a content stream, with the marked content around it, outermost first. */
export interface PaintedPiece {
  readonly operator: string;
  readonly around: readonly { readonly tag: string; readonly mcid?: number }[];
  /** For text: the font's name in the page's resources, and the two-byte codes shown. */
  readonly font?: string;
  readonly codes: readonly number[];
}

const token = /<<|>>|<[0-9A-Fa-f\s]*>|\[|\]|\/[^\s<>[\]()/]*|[^\s<>[\]()/]+/g;
const painting = new Set([
  "f",
  "F",
  "f*",
  "B",
  "B*",
  "b",
  "b*",
  "S",
  "s",
  "sh",
  "Do",
  "Tj",
  "TJ",
  "'",
  '"',
  "EI",
]);
const shows = new Set(["Tj", "TJ"]);

/** Source: ISO 32000-1, annex A (operators) and section 14.6 (marked content). */
export function paintedPieces(content: string): PaintedPiece[] {
  const pieces: PaintedPiece[] = [];
  const open: { tag: string; mcid?: number }[] = [];
  let operands: string[] = [];
  let font: string | undefined;
  for (const [word] of content.matchAll(token)) {
    if (/^[<[\]>/+\-.\d]/.test(word)) {
      operands.push(word);
      continue;
    }
    if (word === "BMC" || word === "BDC") {
      const mcid = operands.indexOf("/MCID");
      open.push({
        tag: operands[0]!.slice(1),
        ...(mcid >= 0 && { mcid: Number(operands[mcid + 1]) }),
      });
    } else if (word === "EMC") {
      if (open.pop() === undefined) throw new Error("EMC without a beginning");
    } else if (word === "Tf") {
      font = operands[0]!.slice(1);
    } else if (painting.has(word)) {
      pieces.push({
        operator: word,
        around: [...open],
        ...(shows.has(word) && font !== undefined && { font }),
        codes: shows.has(word) ? operands.filter((o) => /^<[^<]/.test(o)).flatMap(codesOf) : [],
      });
    }
    operands = [];
  }
  if (open.length > 0) throw new Error("marked content left open");
  return pieces;
}

function codesOf(hex: string): number[] {
  return (hex.slice(1, -1).match(/.{4}/g) ?? []).map((digits) => Number.parseInt(digits, 16));
}
