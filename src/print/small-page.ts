import type { Item } from "../drawing/model.ts";
import { colourOf } from "../drawing/palette.ts";
import { fontFamily, marksToSvg } from "../drawing/svg.ts";
import { type PaperSide, placing } from "../layout/paper.ts";

/**
 * A side of paper for lists that show many of them small: its words stay words, as wide as they are, and a photo is a grey
 * field.
 */
export function smallPageSvg({ widthMm, heightMm, parts }: PaperSide): string {
  const placed = parts.map((part) => {
    const marks = marksToSvg(part.items.map(withoutPhotos), "print");
    return `<g transform="matrix(${placing(part).map(fine).join(" ")})">${marks}</g>`;
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthMm}mm" height="${heightMm}mm"`,
    ` viewBox="0 0 ${widthMm} ${heightMm}" font-family="${fontFamily}, sans-serif">`,
    `<rect width="${widthMm}" height="${heightMm}" fill="${colourOf("paper", "print")}"/>`,
    ...placed,
    "</svg>\n",
  ].join("");
}

function withoutPhotos(item: Item): Item {
  if (item.kind === "group") return { ...item, items: item.items.map(withoutPhotos) };
  if (item.kind !== "image") return item;
  const { xMm: x, yMm: y, widthMm: w, heightMm: h } = item;
  return {
    kind: "path",
    steps: [["M", x, y], ["L", x + w, y], ["L", x + w, y + h], ["L", x, y + h], ["Z"]],
    fill: "soft",
  };
}

const fine = (value: number) => String(Math.round(value * 100) / 100);
