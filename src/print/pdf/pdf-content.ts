import { last } from "../../core/lists.ts";
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
import type { Fonts } from "../../layout/fonts.ts";
import type { Matrix } from "../../layout/paper.ts";
import { lineStartMm } from "../../layout/shape-line.ts";
import type { RasterImage } from "../../model/own-image.ts";
import { fontName, signCode, UsedSigns } from "./pdf-signs.ts";
import { decimal, PdfString } from "./pdf-values.ts";

/** Where a content stream says something that is known only in its document. */
type Slot =
  | { readonly image: RasterImage }
  /** The number of a piece of marked content. */
  | { readonly mark: number };

/** Writes the operators of a content stream, with slots for what its document knows. Source: ISO 32000-1, annex A. */
export class ContentWriter<Other> {
  readonly stream: (string | Slot | Other)[] = [];
  /** What text is set in. */
  readonly signs = new UsedSigns();
  private text = "";

  constructor(private readonly fonts: Fonts) {}

  /** What is written so far. */
  end(): readonly (string | Slot | Other)[] {
    if (this.text !== "") this.stream.push(this.text);
    this.text = "";
    return this.stream;
  }

  /** What its document has to do here, in order. */
  other(what: Slot | Other): void {
    this.end();
    this.stream.push(what);
  }

  /** Everything in between is moved by the matrix. */
  moved(matrix: Matrix, write: () => void): void {
    const begin = movedBy(matrix);
    this.text += begin;
    write();
    if (begin !== "") this.text += "Q\n";
  }

  /** @param mark the piece's element, as its document counts them */
  marked(tag: string, mark: number, write: () => void): void {
    this.text += `/${tag} <</MCID `;
    this.other({ mark });
    this.text += ">> BDC\n";
    write();
    this.text += "EMC\n";
  }

  artifact(write: () => void): void {
    this.text += "/Artifact BMC\n";
    write();
    this.text += "EMC\n";
  }

  shape(item: PathItem | CircleItem): void {
    const steps = item.kind === "path" ? item.steps : circleSteps(item);
    if (item.fill) this.text += `${number(printGrey(item.fill))} g\n`;
    if (item.stroke) this.text += `${strokeState(item.stroke)}\n`;
    const operator = item.fill ? (item.stroke ? "B" : "f") : item.stroke ? "S" : "n";
    this.text += `${steps.map(step).join(" ")} ${operator}\n`;
  }

  /** A picture, stretched over its box. */
  image({ xMm, yMm, widthMm, heightMm, image }: ImageItem): void {
    // An image's own unit square has its origin at the bottom left. Source: ISO 32000-1, section 8.9.5.1.
    const matrix = [widthMm, 0, 0, -heightMm, xMm, yMm + heightMm].map(factor);
    this.text += `q ${matrix.join(" ")} cm /`;
    this.other({ image });
    this.text += " Do Q\n";
  }

  /** One line of text, and signs after it that take no part in where it stands. */
  line(item: TextItem, after = ""): void {
    const xMm = lineStartMm(item, this.fonts);
    if (item.spoken !== undefined) this.text += `/Span <</ActualText ${spokenInstead(item).written}>> BDC\n`;
    this.text += `BT ${number(printGrey(item.ink))} g 1 0 0 -1 ${number(xMm)} ${number(item.yMm)} Tm `;
    const size = number(item.sizeMm);
    for (const { plane, shown } of this.runs(item.face, item.text + after))
      this.text += `/${fontName(item.face, plane)} ${size} Tf [<${shown}>] TJ `;
    this.text += "ET\n";
    if (item.spoken !== undefined) this.text += "EMC\n";
  }

  /** A line's signs with its kerning, those of one plane together. */
  private runs(face: Face, text: string): Run[] {
    const { layout, source } = this.fonts.faces[face];
    const { glyphs } = layout(text);
    const runs: Run[] = [];
    glyphs.forEach(({ text: sign, kern }, i) => {
      const { plane, code } = signCode(sign);
      this.signs.add(face, sign);
      if (runs.at(-1)?.plane !== plane) runs.push({ plane, shown: "" });
      const run = last(runs);
      run.shown += code;
      if (kern !== 0 && i < glyphs.length - 1) run.shown += `>${number((-kern * 1000) / source.unitsPerEm)}<`;
    });
    return runs;
  }
}

interface Run {
  readonly plane: number;
  /** What stands between the brackets of its string. */
  shown: string;
}

/** What begins a piece of a stream that is moved by a matrix; nothing where that moves nothing. */
export function movedBy(matrix: Matrix): string {
  const [a, b, c, d, e, f] = matrix;
  const still = a === 1 && b === 0 && c === 0 && d === 1 && e === 0 && f === 0;
  return still ? "" : `q ${matrix.map(factor).join(" ")} cm\n`;
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
