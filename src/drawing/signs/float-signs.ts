import {
  bold,
  circle,
  curveTo,
  type Point,
  pathFrom,
  point,
  polygon,
  polyline,
  rectangle,
  thinSoft,
} from "../items.ts";
import type { Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { fish } from "../scenes/fish.ts";
import { rotated } from "../transform.ts";
import { float, floatBefore, footOf, rodTo } from "./sign-float.ts";
import {
  bed,
  bedMm,
  clock,
  crossed,
  dashed,
  fine,
  flow,
  hook,
  line,
  move,
  moveAlong,
  shot,
  surfaceMm,
  water,
  wind,
} from "./sign-parts.ts";

const midMm = 18;
/** As a float should stand. */
const right = 0.25;

const ripples = (x: number): Item[] => [...parts.ripples.draw({ at: point(x, surfaceMm) })];

/** A float, the line from it to a fish's mouth, and the fish. */
const taken = (drawn: Parameters<typeof float>[0], nose: Point): Item[] => {
  const foot = footOf(drawn);
  return [
    ...fish(nose, 12),
    line([
      [foot.xMm, foot.yMm],
      [nose.xMm, nose.yMm],
    ]),
    ...float(drawn, 0),
  ];
};

/** Signs that the float itself gives. */
export const floatSigns = {
  "goes-under": () => [
    ...water(),
    // As it should stand, and with its load under instead; no fish, and the hook hangs clear.
    ...floatBefore({ xMm: 10, tip: right, lengthMm: 8 }),
    ...float({ xMm: 21, tip: -0.2, lengthMm: 8 }, 4),
    shot(point(21, 19.6)),
    ...hook(point(21, 22.6), 2.2),
    ...move(point(27, 3), point(27, 14)),
  ],
  "stands-tall": () => [
    ...water(),
    ...floatBefore({ xMm: 10, tip: right }),
    ...float({ xMm: 22, tip: 0.72 }),
    ...crossed(point(30, 4)),
  ],
  // Its shot lie on the bed at the end of slack line, and nothing stands it up.
  "lies-flat": () => {
    const drawn = { xMm: 23, tip: 0.5, lean: 86 };
    const foot = footOf(drawn);
    return [
      ...water(),
      bed(),
      ...floatBefore({ xMm: 7, tip: right }),
      pathFrom(
        foot,
        [
          curveTo(point(foot.xMm - 4, 15), point(20, 15), point(20, 19)),
          ["L", 23, bedMm - 0.8],
          ["L", 30, bedMm - 0.6],
        ],
        fine,
      ),
      ...[24, 26.2].map((x) => shot(point(x, bedMm - 1), 0.9)),
      ...float(drawn, 0),
      ...crossed(point(32, 4)),
    ];
  },
  "half-cocked": () => [
    ...water(),
    bed(),
    // Upright as it should stand, and as it lies instead; the hook hangs clear of the bed.
    ...floatBefore({ xMm: 11, tip: right }),
    ...float({ xMm: 24, tip: 0.5, lean: 60 }, 3),
    ...hook(point(footOf({ xMm: 24, tip: 0.5, lean: 60 }).xMm, 18.6), 3.4),
    ...crossed(point(31, 4)),
  ],
  "sinks-lower": () => [
    ...water(),
    ...floatBefore({ xMm: midMm, tip: 0.42 }),
    ...float({ xMm: midMm, tip: 0.06 }, 4),
    ...move(point(12, 3), point(12, 11)),
    ...clock(0.4),
  ],
  "drifts-with-wind": () => [
    ...water(),
    ...wind(),
    ...floatBefore({ xMm: 10, tip: right, lengthMm: 8 }),
    ...float({ xMm: 21, tip: right, lengthMm: 8 }),
    ...move(point(23.5, 7), point(33, 7)),
  ],
  "moves-against-wind": () => [
    ...water(),
    ...wind(),
    ...floatBefore({ xMm: 32, tip: right, lengthMm: 8 }),
    ...float({ xMm: 27, tip: right, lengthMm: 8 }),
    ...move(point(24.5, 7), point(16.5, 7)),
  ],
  "dips-at-a-hump": () => [
    ...water(),
    ...flow(),
    ...floatBefore({ xMm: 12, tip: 0.4, lengthMm: 6 }),
    ...float({ xMm: 22, tip: 0.05, lengthMm: 6 }, 2),
    ...hook(point(22, 18.8), 2.2),
    ...move(point(28, 2.5), point(28, 10)),
    polygon(
      [
        point(0, bedMm),
        point(15, bedMm),
        point(20, 19.2),
        point(25, 19.2),
        point(30, bedMm),
        point(36, bedMm),
      ],
      "tone",
      bold,
    ),
  ],
  // Held at its foot, the current lays it over and takes it down.
  "dives-held-back": () => {
    const drawn = { xMm: 22, tip: -0.1, lean: 28 };
    return [
      ...water(),
      ...flow(),
      ...rodTo(footOf(drawn)),
      ...float(drawn, 2),
      ...move(point(32, 5), point(32, 16)),
    ];
  },
  "leans-held-back": () => [
    ...water(),
    ...flow(),
    ...rodTo(point(19.4, 7.6)),
    ...float({ xMm: 21, tip: 0.3, lean: -36 }),
  ],
  "runs-ahead": () => [
    ...water(),
    ...flow(),
    ...[3, 5.4, 8].map((x) => circle(point(x, surfaceMm - 0.7), 0.8, { fill: "paper", stroke: thinSoft })),
    ...move(point(9.8, 6.6), point(13.6, 6.6)),
    ...float({ xMm: 21, tip: right }),
    ...move(point(23, 6.6), point(35, 6.6)),
  ],
  "quick-dips": () => [
    ...water(),
    ...ripples(14),
    ...float({ xMm: 14, tip: 0.15 }, 1),
    ...hook(point(14, 22), 3),
    ...moveAlong(
      point(21, 2.6),
      [
        ["L", 22.3, 6.6],
        ["L", 23.6, 2.6],
        ["L", 24.9, 6.6],
        ["L", 26.2, 2.6],
        ["L", 27.4, 6.3],
      ],
      point(26.2, 2.6),
      point(27.9, 8),
    ),
  ],
  "bobs-back": () => [
    ...water(),
    ...float({ xMm: 14, tip: right }),
    ...moveAlong(
      point(21.5, 3),
      [
        ["L", 21.5, 14],
        ["C", 21.5, 18, 27.5, 18, 27.5, 14],
        ["L", 27.5, 5.5],
      ],
      point(27.5, 14),
      point(27.5, 3),
    ),
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
    ...floatBefore({ xMm: 6, tip: right }),
    ...taken({ xMm: 17, tip: 0.62 }, point(21, 17.5)),
    ...move(point(29, 1), point(29, 11)),
    ...crossed(point(29, 5), 2.2),
  ],
  // It goes, and the hook that comes up has nothing on it.
  "slides-away": () => [
    ...water(),
    ...float({ xMm: 9, tip: -0.12, lean: -30 }, 1),
    ...move(point(13, 13), point(19, 15.7)),
    line([
      [25, 0],
      [25, 3],
    ]),
    ...hook(point(25, 7.6), 5),
    ...move(point(31, 8), point(31, 1)),
    ...fish(point(35, 17), -11),
  ],
  "bites-stop": () => [
    ...water(),
    ...float({ xMm: 10, tip: right }),
    ...clock(0.5),
    ...fish(point(31, 15.5), -12),
    ...move(point(21, 20.6), point(32, 20.6)),
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
    ...taken({ xMm: 8, tip: right, lengthMm: 8 }, point(14, 19.6)),
    ...clock(0.8),
  ],
  // The float stands in the water otherwise than on the card, which has a hole for its string.
  "card-differs": () => {
    const at = { xMm: 8, yMm: 12 };
    return [
      ...rotated(
        [
          rectangle(2, 3.5, 12, 17.5, { fill: "paper", stroke: fine }),
          circle(point(8, 5.4), 0.8, { fill: "paper", stroke: fine }),
          rectangle(2.2, 12, 5.4, 5.6, { fill: "water" }),
          polyline([point(2.2, 12), point(7.6, 12)], fine),
          ...float({ xMm: 4.9, tip: 0.15, lengthMm: 6.4, waterMm: 12 }, 1.6),
          ...[8, 9.8, 11.6, 13.4, 15.2, 17, 18.8].map((y, i) =>
            polyline([point(8.6, y), point(i % 3 === 2 ? 11 : 12.8, y)], thinSoft),
          ),
        ],
        -9,
        at,
      ),
      {
        kind: "path",
        steps: [
          ["M", 6.9, 5.2],
          ["C", 3, 3, 5, -0.4, 9.5, 0.4],
          ["C", 12.6, 1, 10.6, 3.6, 6.9, 5.2],
        ],
        stroke: fine,
      },
      rectangle(22, 11, 14, 13, { fill: "water" }),
      line([
        [22, 11],
        [36, 11],
      ]),
      ...float({ xMm: 29, tip: 0.7, lengthMm: 8, waterMm: 11 }, 5),
      shot(point(29, 18.6), 0.8),
      ...[10.8, 13.2].map((y) => polyline([point(16.4, y), point(20.4, y)], { ink: "accent", widthMm: 0.7 })),
      polyline([point(17.2, 15), point(19.6, 9)], { ink: "accent", widthMm: 0.7 }),
    ];
  },
} satisfies Readonly<Record<string, () => readonly Item[]>>;
