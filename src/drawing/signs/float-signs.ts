import { bold, point, polygon, polyline, rectangle, thin } from "../items.ts";
import type { Item } from "../model.ts";
import { fish } from "../scenes/fish.ts";
import {
  bed,
  bedMm,
  clock,
  float,
  flow,
  line,
  move,
  rings,
  shot,
  surfaceMm,
  water,
  wind,
} from "./sign-parts.ts";

const midMm = 18;
/** As a float should stand. */
const right = 0.25;

/** The plummet of a float that is set with one. */
const plummet = (x: number, y: number): Item => rectangle(x - 1.1, y, 2.2, 2.4, { fill: "ink" });

/** Signs that the float itself gives. */
export const floatSigns = {
  "goes-under": () => [
    ...water(),
    ...float({ xMm: midMm, tip: -0.15 }, 2),
    ...move(point(24, 5), point(24, 13)),
  ],
  "stands-tall": () => [
    ...water(),
    ...float({ xMm: midMm, tip: 0.62 }),
    ...float({ xMm: 26, tip: right, before: true }),
  ],
  "lies-flat": () => [...water(), bed(), ...float({ xMm: 14, tip: 0.5, lean: 86 }, 12)],
  "half-cocked": () => [
    ...water(),
    ...float({ xMm: 15, tip: 0.5, lean: 55 }, 8),
    ...move(point(29, 10), point(29, 21)),
  ],
  "sinks-lower": () => [
    ...water(),
    ...float({ xMm: 13, tip: 0.4, before: true }),
    ...float({ xMm: 21, tip: 0.1 }),
    ...clock(point(31, 4), 0.3),
  ],
  "drifts-with-wind": () => [
    ...water(),
    ...wind(),
    ...float({ xMm: midMm, tip: right }),
    ...move(point(21, 7), point(31, 7)),
  ],
  "moves-against-wind": () => [
    ...water(),
    ...wind(),
    ...float({ xMm: 25, tip: right }),
    ...move(point(22, 7), point(13, 7)),
  ],
  "dips-at-a-hump": () => [
    ...water(),
    ...flow(),
    ...float({ xMm: 22, tip: 0.06 }),
    ...move(point(28, 3), point(28, 8.5)),
    polyline([point(0, bedMm), point(15, bedMm), point(22, 19.8), point(29, bedMm), point(36, bedMm)], thin),
  ],
  "dives-held-back": () => [
    ...water(),
    ...flow(),
    line([
      [0, 2],
      [20.5, 11],
    ]),
    ...float({ xMm: 20, tip: -0.12, lean: -12 }, 2),
    ...move(point(28, 7), point(28, 15)),
  ],
  "leans-held-back": () => [
    ...water(),
    ...flow(),
    line([
      [0, 2],
      [18, 7],
    ]),
    ...float({ xMm: 20, tip: 0.3, lean: -32 }),
  ],
  "runs-ahead": () => [
    ...water(),
    ...flow(),
    ...[4, 7, 10].map((x) => rectangle(x, surfaceMm - 0.9, 1, 0.9, { stroke: thin })),
    ...float({ xMm: 21, tip: right }),
    ...move(point(23, 6.5), point(34, 6.5)),
  ],
  "quick-dips": () => [
    ...water(),
    ...rings(midMm),
    ...float({ xMm: midMm, tip: 0.15 }),
    ...move(point(24, 3), point(24, 8)),
    ...move(point(27, 8), point(27, 3)),
  ],
  "bobs-back": () => [
    ...water(),
    ...float({ xMm: 15, tip: 0.02, before: true }),
    ...float({ xMm: 20, tip: right }),
    ...move(point(27, 12), point(27, 4)),
  ],
  "rises-flat": () => [
    ...water(),
    ...float({ xMm: 9, tip: 0.7, before: true }),
    ...float({ xMm: 19, tip: 0.5, lean: 84 }, 5),
    ...move(point(9, 14), point(9, 7.5)),
  ],
  "stops-early": () => [...water(), ...float({ xMm: 13, tip: 0.4, lean: 28 }, 3), ...fish(point(16, 18), 10)],
  "slides-away": () => [
    ...water(),
    ...float({ xMm: 15, tip: -0.2, lean: -30 }, 1),
    ...move(point(20, 14), point(32, 19)),
  ],
  "bites-stop": () => [
    ...water(),
    ...float({ xMm: 13, tip: right }),
    ...clock(point(28, 4), 0.35),
    ...fish(point(34, 17), -11),
    ...move(point(24, 21), point(32, 21)),
  ],
  "no-bites": () => [...water(), ...float({ xMm: midMm, tip: right }, 6), ...clock(point(28, 4), 0.02)],
  "fish-high": () => [...water(), bed(), ...float({ xMm: 10, tip: right }, 3), ...fish(point(18, 13), 11)],
  "fish-low": () => [...water(), bed(), ...float({ xMm: 10, tip: right }, 3), ...fish(point(18, 20), 11)],
  "plummet-hangs": () => [...water(), bed(), ...float({ xMm: midMm, tip: 0.4 }, 1.5), plummet(18, 16.2)],
  "plummet-on-slope": () => [
    ...water(),
    polygon([point(0, 17.4), point(36, 24), point(0, 24)], "paper"),
    polyline([point(0, 17.4), point(36, 24)], bold),
    ...float({ xMm: 9, tip: 0.4 }, 1.2),
    ...float({ xMm: 27, tip: 0.05 }, 0.6),
    plummet(9, 16.7),
    plummet(27, 20),
  ],
  "card-differs": () => [
    rectangle(1.5, 3, 13, 18, { fill: "paper", stroke: thin }),
    line([
      [3.5, 9],
      [12.5, 9],
    ]),
    line([
      [8, 5],
      [8, 14],
    ]),
    shot(point(8, 16), 0.8),
    shot(point(8, 18.5), 0.8),
    rectangle(17, surfaceMm, 19, 15, { fill: "water" }),
    ...float({ xMm: 26, tip: 0.6 }),
  ],
} satisfies Readonly<Record<string, () => readonly Item[]>>;
