import { type Matrix, moved, type PaperSide, type Placed, placing } from "../../layout/paper.ts";
import type { RasterImage } from "../../model/own-image.ts";
import type { Extent } from "../extent.ts";
import { latin1 } from "./pdf-bytes.ts";
import { movedBy } from "./pdf-content.ts";
import { packed } from "./pdf-file.ts";
import type { Deed, PaintedPart } from "./pdf-part.ts";
import { type Signs, UsedSigns } from "./pdf-signs.ts";
import type { PointBox } from "./pdf-structure.ts";

export const pointsPerMm = 72 / 25.4;

/** What a document does for a side, in order, with places in its points: `of` counts the elements of a part from 0. */
export type SideDeed =
  | Extract<Deed, { readonly do: "element" | "span" | "head" }>
  /** The next piece of marked content is this element's. */
  | { readonly do: "mark"; readonly of: number }
  | { readonly do: "figure"; readonly of: number; readonly alt: string; readonly box?: PointBox }
  | { readonly do: "heading"; readonly level: number; readonly text: string; readonly topPt: number }
  | { readonly do: "link"; readonly of: number; readonly name: string; readonly box: PointBox };

/** A side of paper painted, as it is in every document. Plain data, so that it can be kept. */
export interface PaintedSide {
  /** Its content stream, packed. */
  readonly content: Uint8Array;
  readonly signs: Signs;
  /** Its pictures, which it calls by `imageName` of their places. */
  readonly images: readonly RasterImage[];
  /** By its parts. */
  readonly deeds: readonly (readonly SideDeed[])[];
}

/** Name by which a side calls one of its pictures, by its place among them. */
export const imageName = (place: number) => `Im${place + 1}`;

/** Stands for all that a side's marks are made from; nothing where that is not known of one of its parts. */
export function sideFrom({ widthMm, heightMm, parts }: PaperSide): string | undefined {
  if (parts.some(({ from }) => from === undefined)) return undefined;
  return JSON.stringify([
    [widthMm, heightMm],
    parts.map(({ from, xMm, yMm, widthMm: w, heightMm: h, turn, scale }) => [
      from,
      xMm,
      yMm,
      w,
      h,
      turn,
      scale,
    ]),
  ]);
}

/** Lays painted parts on a side of paper. */
export function laidSide(side: PaperSide, paint: (part: Placed) => PaintedPart): PaintedSide {
  const signs = new UsedSigns();
  const images = new Map<string, { readonly name: string; readonly image: RasterImage }>();
  const deeds: SideDeed[][] = [];
  let marks = 0;
  const nameOf = (image: RasterImage) => {
    const found = images.get(image.id) ?? { name: imageName(images.size), image };
    images.set(image.id, found);
    return found.name;
  };

  /** Does what can be done without the document, and gives the part's content stream. */
  const lay = (part: Placed, toPaper: Matrix): string => {
    const { stream, signs: used } = paint(part);
    signs.addAll(used);
    const ofPart: SideDeed[] = [];
    deeds.push(ofPart);
    let text = "";
    for (const piece of stream) {
      if (typeof piece === "string") text += piece;
      else if ("image" in piece) text += nameOf(piece.image);
      else if ("mark" in piece) {
        text += marks++;
        ofPart.push({ do: "mark", of: piece.mark });
      } else ofPart.push(onSide(piece, toPaper, side));
    }
    return text;
  };

  const laid = side.parts.map((part) => {
    const matrix = placing(part);
    return within(matrix, lay(part, matrix));
  });
  const toPoints: Matrix = [pointsPerMm, 0, 0, -pointsPerMm, 0, side.heightMm * pointsPerMm];
  return {
    content: packed(latin1(within(toPoints, laid.join("")))),
    signs: signs.all,
    images: [...images.values()].map(({ image }) => image),
    deeds,
  };
}

function within(matrix: Matrix, inside: string): string {
  const begin = movedBy(matrix);
  return begin === "" ? inside : `${begin}${inside}Q\n`;
}

/** What a part asks of its document, where the part lies on the side. */
function onSide(deed: Deed, toPaper: Matrix, side: PaperSide): SideDeed {
  switch (deed.do) {
    case "figure": {
      const { box, ...figure } = deed;
      return box ? { ...figure, box: onPage(box, toPaper, side) } : figure;
    }
    case "heading": {
      const { at, ...heading } = deed;
      return { ...heading, topPt: pt(side.heightMm - moved(toPaper, at.xMm, at.yMm).yMm) };
    }
    case "link":
      return { ...deed, box: onPage(deed.box, toPaper, side) };
    default:
      return deed;
  }
}

/** A rectangle of a part in the points of its page. */
function onPage({ left, top, right, bottom }: Extent, toPaper: Matrix, { heightMm }: PaperSide): PointBox {
  const a = moved(toPaper, left, top);
  const b = moved(toPaper, right, bottom);
  return [
    pt(Math.min(a.xMm, b.xMm)),
    pt(heightMm - Math.max(a.yMm, b.yMm)),
    pt(Math.max(a.xMm, b.xMm)),
    pt(heightMm - Math.min(a.yMm, b.yMm)),
  ];
}

function pt(mm: number): number {
  return Math.round(mm * pointsPerMm * 1e3) / 1e3;
}
