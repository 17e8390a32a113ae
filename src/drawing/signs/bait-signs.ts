import { bold, circle, ellipse, point, polyline, thin } from "../items.ts";
import type { Item, Stroke } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { fish } from "../scenes/fish.ts";
import { dashed, hook, line, maggot, move, moveAlong, surfaceMm, water } from "./sign-parts.ts";

const midMm = 18;

const crumbs = (places: readonly (readonly [number, number])[]): Item[] =>
  places.map(([x, y]) => circle(point(x, y), 0.45, { fill: "ink" }));

/** A hard shell with rings across. */
const caster = (x: number, y: number, stroke: Stroke = bold): Item[] => [
  { kind: "path", steps: ellipse(point(x, y), 2.9, 1.4), fill: "paper", stroke },
  ...[-1.3, 0, 1.3].map((aside) =>
    line([
      [x + aside, y - 1.1],
      [x + aside, y + 1.1],
    ]),
  ),
];

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
  // What was on the hook floats up from it.
  "casters-rise": () => [
    ...water(),
    line([
      [11, 0],
      [11, 15],
    ]),
    ...caster(14.2, 21.2, dashed),
    ...hook(point(11, 21), 6),
    ...moveAlong(
      point(18, 20.4),
      [["C", 23, 19, 24.6, 16, 24.8, 13.4]],
      point(24.8, 14.4),
      point(24.9, 11.4),
    ),
    ...parts.ripples.draw({ at: point(25, surfaceMm) }),
    ...caster(25, surfaceMm),
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
    // The ball that it should be, fallen flat.
    circle(point(18, 11), 6.4, { fill: "paper", stroke: dashed }),
    ...move(point(18, 6.4), point(18, 15)),
    {
      kind: "path",
      steps: [
        ["M", 9.6, 19.8],
        ["C", 11, 17.8, 14, 18.2, 16, 17.6],
        ["C", 19, 16.8, 21, 18.4, 23, 18],
        ["C", 24.6, 18, 25.6, 19, 26.2, 19.8],
        ["C", 25.6, 21.6, 22, 20.8, 20.6, 21.4],
        ["C", 18, 22.6, 16, 21, 13.4, 21.4],
        ["C", 11.4, 21.6, 10, 21, 9.6, 19.8],
        ["Z"],
      ],
      fill: "paper",
      stroke: thin,
    },
    ...crumbs([
      [12.6, 19.8],
      [15.6, 20.4],
      [17.6, 18.8],
      [20, 20],
      [22.6, 19.4],
      [24.4, 20],
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
