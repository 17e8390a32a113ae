import type { FishLooks } from "../../model/fish-looks.ts";
import { circle, type Point, point, polygon, thin } from "../items.ts";
import type { Item } from "../model.ts";
import { type Body, flank } from "./fish-outline.ts";

const faint = { ink: "faint", widthMm: 0.35 } as const;
/** Dark marks, with an outline that parts them from the side where a reader's own colours leave no tone. */
const dark = { fill: "tone", stroke: thin } as const;

/** Rows and columns of scales over the whole side. */
const scaleRows = { small: 7, large: 5 } as const;

/** What is to be seen on the side: scales, bars, spots or freckles. */
export function markedSides(looks: FishLooks, body: Body, to: (at: Point) => Point): Item[] {
  return [
    ...scalesOf(looks, body, to),
    ...(looks.marks === "none" ? [] : draws[looks.marks](looks, body, to)),
  ];
}

function scalesOf(
  { scales, headShare, depthShare }: FishLooks,
  body: Body,
  to: (at: Point) => Point,
): Item[] {
  if (scales === "none") return [];
  const rows = scaleRows[scales];
  const stepX = (depthShare / rows) * 0.92;
  const items: Item[] = [];
  for (let row = 0; row < rows; row += 1) {
    const height = 0.82 - (1.62 * row) / (rows - 1);
    const shift = row % 2 === 0 ? 0 : stepX / 2;
    for (let x = headShare + 0.05 + shift; x < 0.92; x += stepX) {
      const centre = flank(body, x, height);
      const radius = stepX * 0.5;
      // Towards the tail the rows draw together.
      const half = Math.min(radius, flank(body, x, 1).yMm / (rows - 1) / 0.6);
      const at = (along: number, up: number) => {
        const { xMm, yMm } = to(point(centre.xMm + radius * along, centre.yMm + half * up));
        return [xMm, yMm] as const;
      };
      items.push({
        kind: "path",
        steps: [
          ["M", ...at(0, 0.9)],
          ["C", ...at(0.85, 0.45), ...at(0.85, -0.45), ...at(0, -0.9)],
        ],
        stroke: faint,
      });
    }
  }
  return items;
}

/** Where along the body a dark bar is, from the head on. */
export const barShare = (headShare: number, place: number): number =>
  headShare + 0.07 + (0.83 - headShare) * (place / 5.2);

type DrawMarks = (looks: FishLooks, body: Body, to: (at: Point) => Point) => Item[];

const draws: Readonly<Record<Exclude<FishLooks["marks"], "none">, DrawMarks>> = {
  bars: ({ headShare }, body, to) =>
    Array.from({ length: 6 }, (_, i) => {
      const x = barShare(headShare, i);
      const wide = 0.024 - 0.002 * i;
      const low = i % 2 === 0 ? -0.55 : -0.3;
      const heights = [0.97, 0.6, 0.2, low];
      const left = heights.map((h, at) => flank(body, x - wide * (1 - at / 3.2), h));
      const right = heights.map((h, at) => flank(body, x + wide * (1 - at / 3.2), h)).reverse();
      return polygon([...left, ...right].map(to), "tone", thin);
    }),
  spots: ({ headShare }, body, to) =>
    Array.from({ length: 8 }, (_, i) => {
      const at = flank(body, headShare + 0.06 + (0.9 - headShare - 0.06) * (i / 7), 0.12);
      const edge = to(point(at.xMm + 0.017, at.yMm));
      const centre = to(at);
      return circle(centre, edge.xMm - centre.xMm, dark);
    }),
  freckles: ({ headShare }, body, to) =>
    [
      [0.03, 0.45],
      [0.07, 0.1],
      [0.1, 0.6],
      [0.13, 0.3],
      [0.18, -0.1],
      [0.2, 0.5],
      [0.25, 0.2],
    ].flatMap(([x = 0, height = 0]) => {
      const at = to(flank(body, headShare + 0.02 + x, height));
      return [circle(at, 1, { fill: "paper" }), circle(at, 0.6, dark)];
    }),
};
