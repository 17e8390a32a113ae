import { circle, ellipse, point, polyline, thin } from "../items.ts";
import type { Item } from "../model.ts";
import { fish } from "../scenes/fish.ts";
import { dashed, hook, line, maggot, move, surfaceMm, water } from "./sign-parts.ts";

const midMm = 18;

const crumbs = (places: readonly (readonly [number, number])[]): Item[] =>
  places.map(([x, y]) => circle(point(x, y), 0.45, { fill: "ink" }));

/** Signs that bait and feed give. */
export const baitSigns = {
  // What was put on, and what comes back.
  "empty-skin": () => [
    ...[7, 25].map((x) =>
      line([
        [x, 0],
        [x, 8],
      ]),
    ),
    ...hook(point(7, 14), 6),
    ...maggot(point(8.4, 13.2), "full"),
    ...fish(point(14, 6), 9),
    ...move(point(14.5, 13), point(22, 13)),
    ...hook(point(25, 14), 6),
    ...maggot(point(26.4, 13.2), "empty"),
  ],
  "bare-hook": () => [
    line([
      [midMm, 0],
      [midMm, 8],
    ]),
    ...maggot(point(20, 14), "gone"),
    ...hook(point(midMm, 15.5), 8),
  ],
  "casters-rise": () => [
    ...water(),
    line([
      [11, 0],
      [11, 15],
    ]),
    ...hook(point(11, 21), 6),
    ...[
      [18, 17.4],
      [21.5, 13.4],
      [19, surfaceMm],
    ].map(
      ([x = 0, y = 0]): Item => ({
        kind: "path",
        steps: ellipse(point(x, y), 1.9, 1),
        fill: "accent",
        stroke: thin,
      }),
    ),
    ...move(point(28, 20), point(28, 11)),
  ],
  "ball-breaks": () => [
    ...water(),
    {
      kind: "path",
      steps: [
        ["M", 1, 7],
        ["C", 8, 0, 14, 0, 19, 3],
      ],
      stroke: dashed,
    },
    ...[
      [22, 2.5, 1.4],
      [25, 4.5, 1],
      [21.5, 5.5, 0.8],
      [26.5, 2, 0.7],
      [28, 6, 0.6],
    ].map(([x = 0, y = 0, r = 0]) => circle(point(x, y), r, { fill: "ink" })),
  ],
  // What was a ball has run flat.
  porridge: () => [
    line([
      [1, 20],
      [35, 20],
    ]),
    circle(point(7, 15), 4.9, { fill: "paper", stroke: dashed }),
    ...crumbs([
      [5, 13],
      [8.4, 12.4],
      [6.6, 15.4],
      [9.4, 16],
      [4.6, 17],
      [7.6, 18.2],
    ]),
    ...move(point(13, 15), point(19, 15)),
    {
      kind: "path",
      steps: [
        ["M", 18.6, 19.8],
        ["C", 20, 17.8, 23, 18.2, 25, 17.6],
        ["C", 28, 16.8, 30, 18.4, 32, 18],
        ["C", 33.6, 18, 34.6, 19, 35.2, 19.8],
        ["C", 34.6, 21.6, 31, 20.8, 29.6, 21.4],
        ["C", 27, 22.6, 25, 21, 22.4, 21.4],
        ["C", 20.4, 21.6, 19, 21, 18.6, 19.8],
        ["Z"],
      ],
      fill: "paper",
      stroke: thin,
    },
    ...crumbs([
      [21.6, 19.8],
      [24.6, 20.4],
      [26.6, 18.8],
      [29, 20],
      [31.6, 19.4],
      [33.4, 20],
    ]),
  ],
  "weed-on-hook": () => [
    line([
      [midMm, 0],
      [midMm, 8],
    ]),
    // Strands that hang from the bend, and a leaf.
    ...[18.4, 20, 21.6].map(
      (x, i): Item => ({
        kind: "path",
        steps: [
          ["M", x, 14.6],
          ["C", x - 2.6, 17, x + 2, 19 + i / 2, x - 1.4 + i, 23],
        ],
        stroke: { ink: "soft", widthMm: 0.9 },
      }),
    ),
    {
      kind: "path",
      steps: [
        ["M", 20.6, 12.6],
        ["C", 22, 7.4, 27, 6.6, 31.4, 8],
        ["C", 29.6, 12.6, 25, 15, 20.6, 12.6],
        ["Z"],
      ],
      fill: "soft",
    },
    polyline([point(20.6, 12.6), point(29, 9)], { ink: "paper", widthMm: 0.5 }),
    ...hook(point(midMm, 15.5), 8),
  ],
} satisfies Readonly<Record<string, () => readonly Item[]>>;
