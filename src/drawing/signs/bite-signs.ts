import { curveTo, type Point, pathFrom, point } from "../items.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { fish } from "../scenes/fish.ts";
import { float, floatBefore, footOf } from "./sign-float.ts";
import {
  bed,
  clock,
  crossed,
  dashed,
  framesApart,
  hook,
  line,
  move,
  moveAlong,
  stopped,
  surfaceMm,
  water,
} from "./sign-parts.ts";

const midMm = 18;
/** As a float should stand. */
const right = 0.25;

const ripples = (x: number): Item[] => [...parts.ripples.draw({ at: point(x, surfaceMm) })];

/** A float, the line from it to a fish's mouth, and the fish. */
const taken = (drawn: Parameters<typeof float>[0], nose: Point, fishMm = 12): Item[] => {
  const foot = footOf(drawn);
  return [
    ...fish(nose, fishMm),
    line([
      [foot.xMm, foot.yMm],
      [nose.xMm, nose.yMm],
    ]),
    ...float(drawn, 0),
  ];
};

/** A hook that comes up with nothing on it. */
const bareHook = (x: number): Item[] => [
  line([
    [x, 0],
    [x, 5],
  ]),
  ...hook(point(x, 9.6), 5),
  ...move(point(x + 5.6, 9), point(x + 5.6, 2)),
];

/** Signs of bites, and of none. */
export const biteSigns = {
  // A little down and up, again and again, and the hook that comes up is bare.
  "quick-dips": () => [
    ...water(),
    ...ripples(7),
    ...float({ xMm: 7, tip: 0.15 }, 1),
    ...[11.6, 17].flatMap((x) => [
      ...move(point(x, 3), point(x, 7.6)),
      ...move(point(x + 2.7, 7.6), point(x + 2.7, 3)),
    ]),
    ...framesApart(23.4),
    ...bareHook(27),
  ],
  "bobs-back": () => [
    ...water(),
    // Up, under, and up again.
    ...floatBefore({ xMm: 6, tip: right }),
    ...move(point(8.6, 5), point(14.4, 9.6)),
    ...floatBefore({ xMm: midMm, tip: -0.2 }),
    ...move(point(21.6, 9.6), point(27.4, 5)),
    ...float({ xMm: 30, tip: right }),
  ],
  "rises-flat": () => [
    ...water(),
    ...floatBefore({ xMm: 7, tip: right }),
    ...float({ xMm: 24, tip: 0.5, lean: 84 }, 5),
    ...moveAlong(point(9, 6), [["C", 9.5, 0.5, 22, -0.5, 25.4, 4.2]], point(23, 1.6), point(26.6, 6.4)),
  ],
  // Beside it how deep it should settle; it stops above that, as a fish holds what should pull it down.
  "stops-early": () => [
    ...water(),
    ...floatBefore({ xMm: 6, tip: 0.15 }),
    ...taken({ xMm: 15, tip: 0.6 }, point(20, 17.5)),
    ...stopped(22, 0.6, 5.4, 9.6),
  ],
  // First a fish goes off with it, then the hook comes up and the fish is gone.
  "slides-away": () => [
    ...water(),
    ...floatBefore({ xMm: 4, tip: right, lengthMm: 8 }),
    ...taken({ xMm: 8, tip: -0.15, lean: -34, lengthMm: 7 }, point(11.6, 18.6), 6),
    ...move(point(5.6, 4.4), point(15.6, 4.4)),
    ...framesApart(19),
    ...bareHook(24),
    ...fish(point(35, 18), -10),
  ],
  "bites-stop": () => [
    // A fish beside the half hour in which they bit, none beside the next.
    ...clock(0.5, point(midMm, 12), 6.4),
    ...fish(point(26.4, 12), 9),
    ...fish(point(0.6, 12), 9),
    ...crossed(point(5.1, 12), 3.2),
  ],
  "no-bites": () => [
    ...water(),
    ...float({ xMm: 8, tip: right }, 3),
    ...hook(point(8, 22), 3),
    ...clock(1),
    ...fish(point(18, 17), 14),
    ...crossed(point(24.5, 17), 4.2),
  ],
  "fish-high": () => [
    ...water(),
    bed(),
    // It flew there just now.
    pathFrom(point(0, 4), [curveTo(point(3, 0.5), point(8, 0.5), point(10.6, 4.4))], dashed),
    ...taken({ xMm: 9, tip: 0.5, lean: 28, lengthMm: 8 }, point(14, 14)),
    ...clock(0.08),
  ],
  "fish-low": () => [
    ...water(),
    bed(),
    ...floatBefore({ xMm: 5, tip: 0.4, lengthMm: 8 }),
    ...taken({ xMm: 12, tip: -0.05, lengthMm: 8 }, point(17, 19.6)),
    ...move(point(16.4, 4), point(16.4, 12)),
    ...clock(0.8),
  ],
} satisfies Readonly<Record<string, () => readonly Item[]>>;
