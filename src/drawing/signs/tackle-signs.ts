import { bold, circle, pathFrom, point, thin } from "../items.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { fish } from "../scenes/fish.ts";
import { float, floatBefore, rodTo } from "./sign-float.ts";
import {
  bed,
  dashed,
  hook,
  line,
  move,
  moveAlong,
  parted,
  shot,
  stopped,
  water,
  weed,
} from "./sign-parts.ts";

const midMm = 18;

/** Signs that line and hook give. */
export const tackleSigns = {
  tangled: () => [
    ...water(),
    line([
      [0, 2],
      [16.4, 15],
    ]),
    // Wound round it from its foot up, behind it and before it in turns.
    ...[14, 11, 7.4].map(
      (y): Item => pathFrom(point(midMm, y + 1.4), [["C", 14, y + 1.4, 14, y, midMm, y]], thin),
    ),
    ...float({ xMm: midMm, tip: 0.5, lengthMm: 13 }, 0),
    line([
      [16.4, 15],
      [midMm, 15.4],
    ]),
    ...[12.6, 9, 5.6].map(
      (y): Item => pathFrom(point(midMm, y + 1.8), [["C", 22.4, y + 1.8, 22.4, y, midMm, y]], bold),
    ),
    shot(point(21.2, 13.4), 0.9),
    shot(point(14.9, 8), 0.9),
    ...hook(point(24, 8.8), 4.4),
    line([
      [midMm, 5.6],
      [24, 4.4],
    ]),
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
    ...floatBefore({ xMm: midMm, tip: 1, lean: 48, lengthMm: 8, waterMm: 6.6 }),
    shot(point(midMm, 5), 1.1),
    shot(point(midMm, 8.2), 1.1),
    ...float({ xMm: midMm, tip: 1, lean: 48, lengthMm: 8, waterMm: 20 }, 0),
    ...move(point(12, 7), point(12, 20)),
  ],
  // The stop knot is still on its way from the rod, and the bulk goes no lower.
  "will-not-slide": () => [
    ...water(),
    bed(),
    ...rodTo(point(21, 12)),
    ...parts.stopKnot.draw({ at: point(14.4, 7.1), turnedDegrees: 40 }),
    // Where they should be.
    ...[18.9, 21.2].map((y) => circle(point(21, y), 1.05, { fill: "paper", stroke: dashed })),
    line([
      [21, 12],
      [21, 15.8],
    ]),
    ...float({ xMm: 21, tip: 0.45, lengthMm: 6 }, 1),
    ...[13.4, 15.7].map((y) => shot(point(21, y), 1.05)),
    ...stopped(27, 11.4, 16.4, 21.8),
  ],
  // Where it should have flown to, and how far that is from where it came down.
  "falls-short": () => [
    ...water(),
    pathFrom(point(9, 3.4), [["C", 14, -0.4, 26, -0.4, 31.4, 5]], dashed),
    ...floatBefore({ xMm: 31.6, tip: 0.3 }),
    ...rodTo(point(9, 3.4)),
    ...moveAlong(point(9.6, 3.4), [["C", 11.4, 1.8, 14, 1.8, 15.3, 3.2]], point(14.6, 2.4), point(16.6, 5)),
    ...float({ xMm: 17, tip: 0.3 }, 3),
  ],
  "breaks-at-hook": () => [
    line([
      [midMm, 0],
      [midMm, 11],
    ]),
    ...parted(midMm, 12.5),
    ...hook(point(midMm, 21), 6),
  ],
  // The knot slipped: curls where it was, and the hook without it.
  "curly-end": () => [
    {
      kind: "path",
      steps: [
        ["M", midMm, 0],
        ["L", midMm, 6],
        ["C", 18, 10.4, 23, 10.4, 23, 8],
        ["C", 23, 5.8, 18.6, 6, 18.6, 9.4],
        ["C", 18.6, 13, 23, 13, 23, 11],
        ["C", 23, 9, 19.2, 9.4, 19.2, 12],
        ["C", 19.2, 15, 22.8, 15, 22.8, 13.6],
      ],
      stroke: thin,
    },
    ...hook(point(midMm, 23), 5),
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
    ...rodTo(point(16, 4)),
    ...parted(18.4, 4.2),
    ...float({ xMm: 21, tip: 0.25 }),
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
    // Behind all of its stems but one a fish would be lost.
    ...[17, 27].flatMap((x) => weed(x, 10)),
    ...fish(point(15, 18), 12),
    ...weed(22, 10),
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
} satisfies Readonly<Record<string, () => readonly Item[]>>;
