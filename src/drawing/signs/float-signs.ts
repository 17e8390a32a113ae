import { bold, circle, curveTo, pathFrom, point, polygon, polyline, rectangle, thinSoft } from "../items.ts";
import type { Item } from "../model.ts";
import { rotated } from "../transform.ts";
import { float, floatBefore, footOf, rodTo } from "./sign-float.ts";
import {
  bed,
  bedMm,
  bubble,
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
  unlike,
  water,
  wind,
} from "./sign-parts.ts";

const midMm = 18;
const halfUp = { xMm: 23, tip: 0.5, lean: 60 };
/** As a float should stand. */
const right = 0.25;

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
    // Upright as it should stand, and as it lies instead, though all hangs straight and clear of the bed.
    ...floatBefore({ xMm: 9, tip: right }),
    ...float(halfUp, 8),
    shot(point(footOf(halfUp).xMm, 14.4), 0.9),
    ...hook(point(footOf(halfUp).xMm, 20.4), 2.6),
    ...crossed(point(32, 4)),
  ],
  "sinks-lower": () => [
    ...water(),
    ...floatBefore({ xMm: 5, tip: 0.42 }),
    ...floatBefore({ xMm: 11.5, tip: 0.24 }),
    ...float({ xMm: midMm, tip: 0.06 }, 3),
    ...move(point(8.4, 1.6), point(midMm, 6.4)),
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
    // From upright, as it should stand, its foot has swung out.
    ...floatBefore({ xMm: 18.4, tip: 0.4 }),
    ...rodTo(point(21, 6.4)),
    ...float({ xMm: 22.6, tip: 0.35, lean: -44 }, 3),
    ...moveAlong(
      point(19.6, 18.6),
      [["C", 21.6, 20.8, 25, 21, 27.4, 19.4]],
      point(27, 19.8),
      point(29.4, 17.4),
    ),
    ...crossed(point(32, 4)),
  ],
  "runs-ahead": () => [
    ...water(),
    ...flow(13),
    // Float and bubbles set out together.
    ...floatBefore({ xMm: 6, tip: 0.35, lengthMm: 9 }),
    ...[2.8, 9.2].map((x) => bubble(x, dashed)),
    ...move(point(6, 1.8), point(28.6, 1.8)),
    ...[13.4, 17, 20.6].map((x) => bubble(x)),
    ...move(point(11.4, 5.4), point(18.6, 5.4)),
    ...float({ xMm: 31, tip: 0.35, lengthMm: 9 }, 4),
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
      ...unlike(point(18.4, 12)),
    ];
  },
} satisfies Readonly<Record<string, () => readonly Item[]>>;
