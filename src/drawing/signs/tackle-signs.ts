import { bold, circle, point, thin } from "../items.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { fish } from "../scenes/fish.ts";
import { bed, dashed, float, hook, line, move, parted, shot, surfaceMm, water, weed } from "./sign-parts.ts";

const midMm = 18;

/** Signs that line, hook, bait and feed give. */
export const tackleSigns = {
  "empty-skin": () => [
    line([
      [midMm, 0],
      [midMm, 14],
    ]),
    ...hook(point(midMm, 20), 7),
    // A skin with nothing in it: flat, creased, open at its end.
    {
      kind: "path",
      steps: [
        ["M", 22.4, 15.4],
        ["C", 25, 12.6, 28, 14.6, 32.6, 12.4],
        ["L", 31.4, 14.6],
        ["L", 33.4, 16.2],
        ["C", 29, 15.6, 26, 18.6, 22.4, 15.4],
        ["Z"],
      ],
      fill: "paper",
      stroke: thin,
    },
    line([
      [25, 15],
      [27.4, 15.8],
      [29.6, 14.6],
    ]),
  ],
  tangled: () => [
    ...water(),
    line([
      [0, 3],
      [17.4, 14],
    ]),
    ...float({ xMm: midMm, tip: 0.4, lean: 10 }, 0),
    {
      kind: "path",
      steps: [
        ["M", 17, 14],
        ["C", 25, 12, 26, 20, 18, 19],
        ["C", 10, 18, 11, 12, 18, 14.5],
        ["C", 24, 17, 21, 22, 15, 19.6],
        ["C", 11, 18, 12, 15, 20, 17],
      ],
      stroke: thin,
    },
    shot(point(13, 17.6), 0.9),
    shot(point(22.4, 14.4), 0.9),
    ...hook(point(20, 21.6), 4.4),
  ],
  corkscrew: () => [
    {
      kind: "path",
      steps: [
        ["M", midMm, 1],
        ["C", 24, 4, 12, 5, midMm, 8],
        ["C", 24, 11, 12, 12, midMm, 14],
      ],
      stroke: thin,
    },
    ...hook(point(midMm, 20), 6),
  ],
  "slides-down": () => [
    line([
      [midMm, 0],
      [midMm, 24],
    ]),
    ...float({ xMm: midMm, tip: 0.1 }, 0),
    ...move(point(24, 6), point(24, 18)),
  ],
  "will-not-slide": () => [
    ...water(),
    ...float({ xMm: midMm, tip: 0.2 }, 1),
    shot(point(midMm, 20)),
    shot(point(midMm, 22.3)),
    line([
      [16.3, 3],
      [19.7, 3],
    ]),
    line([
      [midMm, 0],
      [midMm, 7],
    ]),
    ...move(point(25, 19), point(25, 12)),
    line([
      [23, 17],
      [27, 14],
    ]),
  ],
  "falls-short": () => [
    ...water(),
    {
      kind: "path",
      steps: [
        ["M", 0, 6],
        ["C", 6, 0, 13, 1, 17, 8.5],
      ],
      stroke: dashed,
    },
    ...float({ xMm: midMm, tip: 0.3 }, 2),
    // Where the feed went in, further out.
    ...parts.ripples.draw({ at: point(31, surfaceMm) }),
    ...[12, 14.5, 17].map((y, i) => circle(point(30 + (i % 2) * 2, y), 0.7, { fill: "ink" })),
  ],
  "breaks-at-hook": () => [
    line([
      [midMm, 0],
      [midMm, 11],
    ]),
    ...parted(midMm, 12.5),
    ...hook(point(midMm, 21), 6),
  ],
  "curly-end": () => [
    {
      kind: "path",
      steps: [
        ["M", midMm, 0],
        ["L", midMm, 11],
        ["C", midMm, 16, 24, 16, 23, 13],
        ["C", 22, 10, 17, 13, 20, 17],
        ["C", 21, 19, 25, 19, 26, 17],
      ],
      stroke: bold,
    },
  ],
  "breaks-at-shot": () => [
    line([
      [midMm, 0],
      [midMm, 10],
    ]),
    shot(point(midMm, 10.5), 1.8),
    ...parted(midMm, 13.6),
    line([
      [midMm, 15],
      [midMm, 23],
    ]),
  ],
  "breaks-above-float": () => [
    ...water(),
    line([
      [22, 0],
      [20, 3],
    ]),
    ...parted(19, 4.4),
    ...float({ xMm: midMm, tip: 0.25 }),
  ],
  "comes-out": () => [
    ...water(),
    ...fish(point(33, 16), -13),
    ...move(point(22, 20.6), point(33, 20.6)),
    line([
      [2, 0],
      [9, 9],
    ]),
    ...hook(point(9, 14), 5),
  ],
  "in-weed": () => [
    ...water(),
    bed(),
    ...fish(point(15, 18), 12),
    ...[17, 22, 27].flatMap((x) => weed(x, 10)),
    line([
      [0, 1],
      [15, 18],
    ]),
  ],
  "hook-deep": () => [
    ...fish(point(5, 13), 26),
    line([
      [0, 5],
      [5, 13],
      [11, 13.4],
    ]),
    ...hook(point(11, 17), 3.6),
  ],
  "bare-hook": () => [
    line([
      [midMm, 0],
      [midMm, 14],
    ]),
    ...hook(point(midMm, 21), 8),
  ],
  "casters-rise": () => [
    ...water(),
    ...hook(point(12, 21), 6),
    circle(point(21, 16), 1.3, { fill: "accent" }),
    circle(point(25, 12), 1.3, { fill: "accent" }),
    ...move(point(30, 20), point(30, 11)),
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
  // What should be a ball has run flat, and drips.
  porridge: () => [
    circle(point(midMm, 8), 5, { stroke: dashed }),
    ...move(point(midMm, 8), point(midMm, 15)),
    {
      kind: "path",
      steps: [["M", 4, 21], ["C", 6, 18.6, 11, 20, midMm, 17.6], ["C", 25, 20, 30, 18.6, 32, 21], ["Z"]],
      fill: "soft",
    },
    line([
      [1, 21.2],
      [35, 21.2],
    ]),
    ...[10, 15, 21.5, 27].map((x, i) => circle(point(x, 16.4 - (i % 2) * 2), 0.6, { fill: "soft" })),
  ],
  "weed-on-hook": () => [
    line([
      [midMm, 0],
      [midMm, 12],
    ]),
    ...hook(point(midMm, 19), 7),
    ...[
      [20, 16],
      [22, 19],
      [17, 20],
    ].map(
      ([x = 0, y = 0]): Item => ({
        kind: "path",
        steps: [
          ["M", x, y],
          ["C", x + 3, y - 2, x + 5, y + 3, x + 7, y + 2],
        ],
        stroke: { ink: "soft", widthMm: 0.9 },
      }),
    ),
  ],
} satisfies Readonly<Record<string, () => readonly Item[]>>;
