import { base64 } from "./base64.ts";
import type { ImageItem, Item, PathStep, Stroke, TextItem } from "./model.ts";
import { colourOf, type Theme } from "./palette.ts";

/** How wide a text is to be set, as attributes. */
type SetWidth = (item: TextItem) => string;

/** A mark as SVG; its words as wide as whatever face shows them has them, unless told otherwise. */
export function itemToSvg(item: Item, theme: Theme, setWidth?: SetWidth): string {
  switch (item.kind) {
    case "path":
      return `<path d="${theme === "page" ? shortPathData(item.steps) : pathData(item.steps)}"${paint(item, theme)}/>`;
    case "circle":
      return `<circle cx="${round(item.cxMm)}" cy="${round(item.cyMm)}" r="${round(item.radiusMm)}"${paint(item, theme)}/>`;
    case "text":
      return textToSvg(item, theme, setWidth);
    case "image":
      return imageToSvg(item);
    case "group": {
      const at = item.xMm || item.yMm ? ` transform="translate(${round(item.xMm)} ${round(item.yMm)})"` : "";
      const hidden = item.artifact ? ' aria-hidden="true"' : "";
      return `<g${at}${hidden}>\n${item.items.map((inner) => itemToSvg(inner, theme, setWidth)).join("\n")}\n</g>`;
    }
  }
}

/** A picture with its bytes within the SVG. */
export function imageToSvg({ xMm, yMm, widthMm, heightMm, image }: ImageItem): string {
  const box = `x="${round(xMm)}" y="${round(yMm)}" width="${round(widthMm)}" height="${round(heightMm)}"`;
  return `<image ${box} href="data:image/jpeg;base64,${base64(image.jpeg)}"/>`;
}

const faces = { regular: "", bold: ' font-weight="600"', italic: ' font-style="italic"' };
const anchors = { start: "", middle: ' text-anchor="middle"', end: ' text-anchor="end"' };

function textToSvg(typed: TextItem, theme: Theme, setWidth?: SetWidth): string {
  // Browsers hide the sign of a word that goes on in the next line, where paper shows a hyphen.
  const item = { ...typed, text: typed.text.replaceAll("\u00ad", "-") };
  const place = `x="${round(item.xMm)}" y="${round(item.yMm)}" font-size="${round(item.sizeMm)}"`;
  const look = `${faces[item.face]}${anchors[item.anchor]} fill="${colourOf(item.ink, theme)}"`;
  return `<text ${place}${setWidth?.(item) ?? ""}${look}>${escaped(item.text)}</text>`;
}

/** Fill and stroke of a mark as attributes, its figures written as finely as asked. */
export function paint(
  item: { fill?: TextItem["ink"]; stroke?: Stroke },
  theme: Theme,
  written: (value: number) => string = round,
): string {
  // A page has thousands of marks that are not filled: there the drawing as a whole says so.
  const isPlain = !item.fill && theme === "page";
  const fill = isPlain ? "" : ` fill="${item.fill ? colourOf(item.fill, theme) : "none"}"`;
  if (!item.stroke) return fill;
  const { ink, widthMm, dashMm, cap } = item.stroke;
  const dash = dashMm ? ` stroke-dasharray="${dashMm.map(written).join(" ")}"` : "";
  const ends = cap === "round" ? ' stroke-linecap="round" stroke-linejoin="round"' : "";
  return `${fill} stroke="${colourOf(ink, theme)}" stroke-width="${written(widthMm)}"${dash}${ends}`;
}

/** Path steps as the data of an SVG path. */
export function pathData(steps: readonly PathStep[], written: (value: number) => string = round): string {
  return steps.map(([letter, ...numbers]) => letter + numbers.map(written).join(" ")).join("");
}

/** The same in as little room as a page can have it in: from place to place, in hundredths that add up exactly. */
function shortPathData(steps: readonly PathStep[]): string {
  let [x, y, startX, startY] = [0, 0, 0, 0];
  return steps
    .map(([letter, ...numbers]) => {
      if (letter === "Z") {
        [x, y] = [startX, startY];
        return "z";
      }
      const at = numbers.map((value) => Math.round(value * 100));
      const moved = at.map((value, i) => hundredths(value - (i % 2 === 0 ? x : y)));
      [x = 0, y = 0] = at.slice(-2);
      if (letter === "M") [startX, startY] = [x, y];
      return letter.toLowerCase() + moved.join(" ").replaceAll(" -", "-");
    })
    .join("");
}

/** Hundredths as a number without its leading zero. */
function hundredths(value: number): string {
  return String(value / 100).replace(/^(-?)0\./, "$1.");
}

/** Two decimals: a hundredth of a millimetre is less than any printer's dot. */
export function round(value: number): string {
  return String(Math.round(value * 100) / 100 || 0);
}

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

export function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (character) => entities[character]!);
}
