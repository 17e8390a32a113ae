import type {
  CircleItem,
  Face,
  ImageItem,
  PathItem,
  PathStep,
  Stroke,
  TextItem,
} from "../../drawing/model.ts";
import { printGrey } from "../../drawing/palette.ts";
import type { Fonts, Typeface } from "../../layout/fonts.ts";
import type { Matrix } from "../../layout/paper.ts";
import { shapeLine } from "../../layout/shape-line.ts";
import type { PdfFont } from "./pdf-font.ts";
import type { PdfImages } from "./pdf-images.ts";
import { decimal, PdfString } from "./pdf-values.ts";

/** The faces as a document embeds them. */
type EmbeddedFonts = Readonly<Record<Face, PdfFont>>;

/** Names by which pages call the faces. */
export const fontNames: Readonly<Record<Face, string>> = { regular: "R", bold: "B", italic: "I" };

/** Writes the operators of one content stream after another. Source: ISO 32000-1, annex A. */
export class ContentWriter {
  private readonly lines: string[] = [];
  /** What shows the lines met, by face and text. */
  private readonly known = new Map<string, string>();

  constructor(
    private readonly fonts: Fonts,
    private readonly embedded: EmbeddedFonts,
    private readonly images: PdfImages,
  ) {}

  /** The operators written since the last page. */
  takePage(): string {
    return `${this.lines.splice(0).join("\n")}\n`;
  }

  /** Everything in between is moved by the matrix. */
  moved(matrix: Matrix, write: () => void): void {
    const [a, b, c, d, e, f] = matrix;
    const still = a === 1 && b === 0 && c === 0 && d === 1 && e === 0 && f === 0;
    if (!still) this.lines.push(`q ${matrix.map(factor).join(" ")} cm`);
    write();
    if (!still) this.lines.push("Q");
  }

  marked(tag: string, mcid: number, write: () => void): void {
    this.lines.push(`/${tag} <</MCID ${mcid}>> BDC`);
    write();
    this.lines.push("EMC");
  }

  artifact(write: () => void): void {
    this.lines.push("/Artifact BMC");
    write();
    this.lines.push("EMC");
  }

  shape(item: PathItem | CircleItem): void {
    const steps = item.kind === "path" ? item.steps : circleSteps(item);
    if (item.fill) this.lines.push(`${number(printGrey(item.fill))} g`);
    if (item.stroke) this.lines.push(strokeState(item.stroke));
    const operator = item.fill ? (item.stroke ? "B" : "f") : item.stroke ? "S" : "n";
    this.lines.push(`${steps.map(step).join(" ")} ${operator}`);
  }

  /** A picture, stretched over its box. */
  image({ xMm, yMm, widthMm, heightMm, image }: ImageItem): void {
    // An image's own unit square has its origin at the bottom left. Source: ISO 32000-1, section 8.9.5.1.
    const matrix = [widthMm, 0, 0, -heightMm, xMm, yMm + heightMm].map(factor);
    this.lines.push(`q ${matrix.join(" ")} cm /${this.images.nameOf(image)} Do Q`);
  }

  /** A line's glyphs with its kerning. Source: ISO 32000-1, section 9.4.3. */
  private shown(face: Face, text: string, { layout, source }: Typeface): string {
    const key = `${face} ${text}`;
    let shown = this.known.get(key);
    if (shown === undefined) {
      const font = this.embedded[face];
      const { glyphs } = layout(text);
      let open = "<";
      for (const [i, glyph] of glyphs.entries()) {
        open += font.codeOf(glyph);
        const kern = (-glyph.kern * 1000) / source.unitsPerEm;
        if (kern !== 0 && i < glyphs.length - 1) open += `>${number(kern)}<`;
      }
      shown = `[${open}>]`;
      this.known.set(key, shown);
    }
    return shown;
  }

  /** One line of text, and signs after it that take no part in where it stands. */
  line(item: TextItem, after = ""): void {
    const { typeface, xMm } = shapeLine(item, this.fonts);
    const shown = this.shown(item.face, item.text + after, typeface);
    if (item.spoken !== undefined) {
      this.lines.push(`/Span <</ActualText ${spokenInstead(item).written}>> BDC`);
    }
    this.lines.push(
      `BT ${number(printGrey(item.ink))} g /${fontNames[item.face]} ${number(item.sizeMm)} Tf ` +
        `1 0 0 -1 ${number(xMm)} ${number(item.yMm)} Tm ${shown} TJ ET`,
    );
    if (item.spoken !== undefined) this.lines.push("EMC");
  }
}

/** What is read out, or copied, in place of a sign that stands right behind a word. */
function spokenInstead({ spoken, text }: TextItem): PdfString {
  return PdfString.text(` ${spoken}${text.endsWith(" ") ? " " : ""}`);
}

function strokeState({ ink, widthMm, dashMm, cap }: Stroke): string {
  const round = cap === "round" ? 1 : 0;
  return `${number(printGrey(ink))} G ${number(widthMm)} w ${round} J ${round} j [${(dashMm ?? []).map(number).join(" ")}] 0 d`;
}

function step([letter, ...numbers]: PathStep): string {
  const operator = { M: "m", L: "l", C: "c", Z: "h" }[letter];
  return [...numbers.map(number), operator].join(" ");
}

/** Handle length of the cubic curve nearest to a quarter of a circle: `4/3·(√2 − 1)`, off by 0.03 % of the radius. */
const quarterHandle = (4 / 3) * (Math.SQRT2 - 1);

function circleSteps({ cxMm: x, cyMm: y, radiusMm: r }: CircleItem): PathStep[] {
  const k = quarterHandle * r;
  return [
    ["M", x + r, y],
    ["C", x + r, y + k, x + k, y + r, x, y + r],
    ["C", x - k, y + r, x - r, y + k, x - r, y],
    ["C", x - r, y - k, x - k, y - r, x, y - r],
    ["C", x + k, y - r, x + r, y - k, x + r, y],
    ["Z"],
  ];
}

/** Four decimals and never an exponent. */
function number(value: number): string {
  return decimal(value, 4);
}

/** Nine decimals, as a factor stretches whole pages: a length of 300 mm is off by less than a nanometre. */
function factor(value: number): string {
  return decimal(value, 9);
}
