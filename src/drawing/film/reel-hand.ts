import {
  accent,
  arrow,
  bold,
  circle,
  type Point,
  polygon,
  polyline,
  rectangle,
  thin,
  thinSoft,
} from "../items.ts";
import type { Item, Stroke } from "../model.ts";
import type { Hundredths } from "../scenes/step-pictures.ts";
import { smooth } from "../smooth.ts";
import { strandStrokes } from "../strands.ts";
import { type Limb, limbOf } from "./hand.ts";

/**
 * What the forefinger does with the line: it holds it against the rod, lets it run, brakes it on the rim, stops
 * it, or rests on the rod once the bail has the line.
 */
export type Finger = "holds" | "off" | "brakes" | "stops" | "rests";

/** Where the reel is drawn and its bail named, in hundredths of the picture's width. */
export const reelRoom = { top: 71, foot: 120, bail: 115.5 } as const;

/** Its axis, below the top of its room; the spool is at the right, as the rod's tip is. */
const axis = 29;
const rim = { x: 64, y: 19 } as const;
const ring = { x: 93, y: 16 } as const;

type Place = readonly [number, number];

const placesOf =
  ({ at }: Hundredths) =>
  (...[x, y]: Place): Point =>
    at(x, reelRoom.top + y);

/** The rod over the reel with its first ring, foot, body, rotor, and the spool with its line. */
export function largeReel(grid: Hundredths): Item[] {
  const on = placesOf(grid);
  const round = (places: readonly Place[]) =>
    polygon(
      smooth(
        places.map((place) => on(...place)),
        true,
      ),
      "paper",
      bold,
    );
  const box = (x: number, half: number, wide: number, stroke: Stroke) => {
    const corner = on(x, axis - half);
    return rectangle(corner.xMm, corner.yMm, grid.mm(wide), grid.mm(2 * half), { fill: "paper", stroke });
  };
  return [
    polygon([on(60, 8.4), on(100, 9), on(100, 10.4), on(60, 11.2)], "ink"),
    round([
      [3, 6.8],
      [30, 6.8],
      [58, 7],
      [62, 9.8],
      [58, 12.6],
      [30, 12.8],
      [3, 12.8],
    ]),
    polyline([on(91.4, 10.4), on(92.4, 14)], bold),
    circle(on(ring.x, ring.y), grid.mm(2), { fill: "paper", stroke: bold }),
    round([
      [31, 12.6],
      [38, 12.6],
      [37, 18],
      [38.5, 24],
      [28, 24],
      [31, 18],
    ]),
    round([
      [22, 30],
      [24, 23.6],
      [32, 21],
      [40, 22.6],
      [43, 29],
      [40, 35.4],
      [32, 37.4],
      [24, 35.4],
    ]),
    polygon([on(42, axis - 7), on(48, axis - 9), on(48, axis + 9), on(42, axis + 7)], "paper", bold),
    box(48, 8.6, 4, bold),
    box(52, 7, 10, thin),
    ...[53.6, 55.4, 57.2, 59, 60.8].map((x) =>
      polyline([on(x - 0.5, axis - 7), on(x + 0.5, axis + 7)], thinSoft),
    ),
    box(62, axis - rim.y, 2.6, bold),
    box(64.6, 3.4, 4.4, bold),
  ];
}

/** Where the tip of the forefinger is, how it bends on the way there, and where the line goes from the spool. */
interface FingerPose {
  readonly through: readonly [Place, Place];
  readonly tip: Place;
  readonly line: readonly [Place, Place];
  /** Which way finger or line go. */
  readonly moves?: readonly [Place, Place];
}

const root: Place = [49, 5.6];

const fingers: Readonly<Record<Finger, FingerPose>> = {
  holds: {
    through: [
      [57, 4],
      [67, 6],
    ],
    tip: [66, 14.4],
    line: [
      [rim.x, rim.y],
      [66, 16.2],
    ],
  },
  off: {
    through: [
      [55, 3],
      [62, 2],
    ],
    tip: [71, 3.6],
    line: [
      [rim.x, rim.y],
      [78, 15],
    ],
    moves: [
      [72, 21],
      [84, 20],
    ],
  },
  brakes: {
    through: [
      [55, 3.4],
      [63, 8],
    ],
    tip: [64.2, 16.2],
    line: [
      [rim.x, rim.y - 0.6],
      [78, 16.6],
    ],
    moves: [
      [72, 21],
      [80, 20.4],
    ],
  },
  stops: {
    through: [
      [56, 4],
      [66, 8],
    ],
    tip: [65.4, 18.6],
    line: [
      [rim.x, rim.y],
      [78, 17.4],
    ],
    moves: [
      [75, 5],
      [69.5, 13],
    ],
  },
  rests: {
    through: [
      [56, 4],
      [64, 4],
    ],
    tip: [70, 6.8],
    line: [
      [58, axis - 10.6],
      [78, axis - 11.8],
    ],
  },
};

/** The wire of the bail, fixed to the rotor: swung over to hang below it, and back in front of the spool. */
const bail: Readonly<Record<"open" | "closed", readonly Place[]>> = {
  open: [
    [47.6, axis + 8],
    [54, axis + 10.4],
    [56.4, axis + 13],
    [50, axis + 14.2],
    [44, axis + 7.4],
  ],
  closed: [
    [46, axis + 9],
    [60, axis + 12.6],
    [73, axis + 6],
    [73, axis - 6],
    [58, axis - 10.6],
  ],
};

/** From the word for the bail, before it or over it, to its wire. */
const toBail: Readonly<Record<"open" | "closed", readonly [Place, Place]>> = {
  open: [
    [71, reelRoom.bail - reelRoom.top - 1.6],
    [57.4, axis + 13],
  ],
  closed: [
    [77, reelRoom.bail - reelRoom.top - 5.2],
    [72.6, axis + 7.2],
  ],
};

/** A hand over the rod, the stem of the reel between its fingers, and the line from the spool under its forefinger. */
export function handOnReel(finger: Finger, grid: Hundredths): Item[] {
  const on = placesOf(grid);
  const { through, tip, line, moves } = fingers[finger];
  const limb = (from: Place, [a, b]: readonly [Place, Place], to: Place, wide: number): Limb => ({
    from: on(...from),
    through: [on(...a), on(...b)],
    to: on(...to),
    widthMm: grid.mm(wide),
  });
  const round = (x: number) =>
    limb(
      [x - 1.4, 4.6],
      [
        [x + 0.6, 6.4],
        [x + 1, 9],
      ],
      [x, 12],
      5.6,
    );
  const curve = (places: readonly Place[]) => smooth(places.map((place) => on(...place)));
  const bailIs = finger === "rests" ? "closed" : "open";
  return [
    polyline(
      [on(57, axis - 7), ...line.map((place) => on(...place)), on(ring.x, ring.y), on(100, 14.6)],
      strandStrokes["main line"],
    ),
    polyline(curve(bail[bailIs]), accent),
    polyline(
      toBail[bailIs].map((place) => on(...place)),
      thinSoft,
    ),
    ...limbOf(limb(root, through, tip, 4.8)),
    ...backOfHand(on, grid.mm),
    // Round the handle: little, ring, then beyond the stem the middle finger.
    ...[20, 26.4, 43].flatMap((x) => limbOf(round(x))),
    ...(moves ? arrow(on(...moves[0]), on(...moves[1]), accent, 2.6) : []),
  ];
}

/** The back of the hand with its knuckles and the thumb along the rod; the sleeve is at the left. */
function backOfHand(on: (...place: Place) => Point, mm: Hundredths["mm"]): Item[] {
  const back: readonly Place[] = [
    [9, 1],
    [18, -1.4],
    [30, -2.4],
    [42, -1],
    [50, 2.4],
    [52.6, 6],
    [49.4, 8.4],
    [45.4, 7.6],
    [43, 9.6],
    [39, 8.4],
    [33, 8.4],
    [28.6, 10],
    [24.4, 8.6],
    [21, 10],
    [16, 9.4],
    [9, 10],
  ];
  return [
    polygon(
      smooth(
        back.map((place) => on(...place)),
        true,
      ),
      "paper",
      bold,
    ),
    // The thumb lies along the top of the rod, its nail up.
    ...limbOf({ from: on(25, 3.2), through: [on(33, 1), on(40, 1.2)], to: on(48.6, 3.4), widthMm: mm(4.6) }),
    polyline(smooth([on(46.4, 1.6), on(49, 2.2), on(50.4, 3.6)]), thinSoft),
    polygon([on(0.4, -2), on(11, 0), on(12.4, 5), on(11, 10.8), on(0.4, 13)], "ink"),
  ];
}
