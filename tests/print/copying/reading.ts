import type { Face, Item, TextItem } from "../../../src/drawing/model.ts";
import type { FileFonts } from "../../../src/layout/font-file.ts";
import { drawingToPng } from "../../../src/layout/png.ts";
import { lineStartMm } from "../../../src/layout/shape-line.ts";
import { dotsOf } from "../raster.ts";
import { copiedTwice, type Greys, greysOf } from "./copier.ts";

/** Dots to the inch of a printer and a copier. */
export const dpi = 300;
const dotsPerMm = dpi / 25.4;

/** The signs that figures are made of, and nothing. A dash stands for a minus sign too, which is hardly wider. */
const signs = [..."0123456789.,½¼¾×–+ "];

/** Whether a sign belongs to a figure; a point or comma does between two digits. */
function isOfFigure(sign: string, before: string | undefined, after: string | undefined): boolean {
  if (sign === "." || sign === ",") return /\d/.test(before ?? "") && /\d/.test(after ?? "");
  return sign !== " " && signs.includes(sign);
}

/** Templates are drawn so many times finer than the page. */
const finer = 4;

/** A sign of a face and size as fine dots, its origin at `originX`, `originY`. */
interface Template {
  readonly fine: Greys;
  readonly left: number;
  readonly right: number;
  readonly originX: number;
  readonly originY: number;
  /** Copies of it, by where in a dot it lies and how large they are. */
  readonly copies: Map<string, Greys>;
}

/** Lines of text of a page, where they stand on it. */
export function linesOn(items: readonly Item[], xMm = 0, yMm = 0): TextItem[] {
  return items.flatMap((item) => {
    if (item.kind === "group") return linesOn(item.items, xMm + item.xMm, yMm + item.yMm);
    return item.kind === "text" ? [{ ...item, xMm: item.xMm + xMm, yMm: item.yMm + yMm }] : [];
  });
}

/** Reads the figures of copies by comparing their strokes with the face in which the page was set. */
export class FigureReader {
  readonly #templates = new Map<string, ReadonlyMap<string, Template>>();

  constructor(private readonly fonts: FileFonts) {}

  /** A line as the copy has it: each sign of a figure the one that it looks most like, all else as it was set. */
  read(copy: Greys, line: TextItem): string {
    const typeface = this.fonts.faces[line.face];
    const run = typeface.layout(line.text);
    const xMm = lineStartMm(line, this.fonts);
    const scale = line.sizeMm / typeface.source.unitsPerEm;
    const templates = this.#templatesOf(line.face, line.sizeMm);
    let pen = 0;
    return run.glyphs
      .map(({ text, advance, kern }, i) => {
        const at = { x: (xMm + pen * scale) * dotsPerMm, y: line.yMm * dotsPerMm };
        pen += advance + kern;
        if (!isOfFigure(text, run.glyphs[i - 1]?.text, run.glyphs[i + 1]?.text)) return text;
        return nearest(copy, at, advance * scale * dotsPerMm, line.sizeMm * dotsPerMm, templates);
      })
      .join("");
  }

  #templatesOf(face: Face, sizeMm: number): ReadonlyMap<string, Template> {
    const key = `${face} ${sizeMm.toFixed(4)}`;
    const known = this.#templates.get(key) ?? this.#drawn(face, sizeMm);
    this.#templates.set(key, known);
    return known;
  }

  #drawn(face: Face, sizeMm: number): ReadonlyMap<string, Template> {
    const cellMm = 2 * sizeMm;
    const page = {
      widthMm: signs.length * cellMm,
      heightMm: 2 * sizeMm,
      items: signs.map(
        (text, i): TextItem => ({
          kind: "text",
          xMm: (i + 0.5) * cellMm,
          yMm: 1.4 * sizeMm,
          text,
          sizeMm,
          face,
          ink: "ink",
          anchor: "start",
        }),
      ),
    };
    const fine = greysOf(dotsOf(drawingToPng(page, finer * dpi, this.fonts)));
    const perMm = finer * dotsPerMm;
    return new Map(
      signs.map((sign, i) => [
        sign,
        {
          fine,
          left: Math.ceil(i * cellMm * perMm),
          right: Math.floor((i + 1) * cellMm * perMm),
          originX: (i + 0.5) * cellMm * perMm,
          originY: 1.4 * sizeMm * perMm,
          copies: new Map<string, Greys>(),
        },
      ]),
    );
  }
}

/** The sign whose copy differs in the fewest dots, wherever within a dot and a half it came to lie. */
function nearest(
  copy: Greys,
  at: { readonly x: number; readonly y: number },
  advance: number,
  em: number,
  templates: ReadonlyMap<string, Template>,
): string {
  const box = {
    left: Math.floor(at.x),
    right: Math.ceil(at.x + advance),
    top: Math.floor(at.y - 0.8 * em),
    bottom: Math.ceil(at.y + 0.25 * em),
  };
  let [best, least] = ["", Number.POSITIVE_INFINITY];
  for (const [sign, template] of templates) {
    const patch = copyOf(template, at, box);
    for (const dx of [0, 1, 2]) {
      for (const dy of [0, 1, 2]) {
        const differing = difference(copy, patch, box, dx - 1, dy - 1);
        if (differing < least) [best, least] = [sign, differing];
      }
    }
  }
  return best;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** White dots round a patch, for what a copier spreads. */
const rim = 4;

/** A copy of a copy of a template where a sign stands, to a part of a dot. */
function copyOf(template: Template, at: { readonly x: number; readonly y: number }, box: Box): Greys {
  const fine = (dots: number) => Math.round(dots * finer) / finer;
  const [x, y] = [fine(at.x - box.left), fine(at.y - box.top)];
  const key = [x, y, box.right - box.left, box.bottom - box.top].join();
  const known =
    template.copies.get(key) ?? copiedTwice(patchOf(template, { x: x + box.left, y: y + box.top }, box));
  template.copies.set(key, known);
  return known;
}

/** A template as a printer makes it where a sign stands. */
function patchOf(
  { fine, left, right, originX, originY }: Template,
  at: { readonly x: number; readonly y: number },
  box: Box,
): Greys {
  const width = box.right - box.left + 2 * rim;
  const height = box.bottom - box.top + 2 * rim;
  const values = new Float32Array(width * height).fill(1);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let sum = 0;
      for (let i = 0; i < finer; i++) {
        for (let j = 0; j < finer; j++) {
          const fx = Math.round(originX + (box.left - rim + x - at.x) * finer) + i;
          const fy = Math.round(originY + (box.top - rim + y - at.y) * finer) + j;
          const inside = fx >= left && fx < right && fy >= 0 && fy < fine.height;
          sum += inside ? fine.values[fy * fine.width + fx]! : 1;
        }
      }
      values[y * width + x] = sum / finer ** 2;
    }
  }
  return { width, height, values };
}

function difference(
  copy: Greys,
  patch: Greys,
  { left, right, top, bottom }: Box,
  dx: number,
  dy: number,
): number {
  let count = 0;
  for (let y = top; y < bottom; y++) {
    for (let x = left; x < right; x++) {
      const [atX, atY] = [x + dx, y + dy];
      const on = atX >= 0 && atX < copy.width && atY >= 0 && atY < copy.height;
      const seen = on ? copy.values[atY * copy.width + atX]! : 1;
      if (seen !== patch.values[(y - top + rim) * patch.width + x - left + rim]!) count += 1;
    }
  }
  return count;
}
