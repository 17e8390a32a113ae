import {
  accent,
  bold,
  circle,
  curveTo,
  ellipse,
  pathFrom,
  polygon,
  polyline,
  rectangle,
  thin,
  thinSoft,
} from "../items.ts";
import type { Item, PathItem, Stroke } from "../model.ts";
import { smooth } from "../smooth.ts";
import { strandStrokes } from "../strands.ts";
import type { Hundredths } from "./step-pictures.ts";

/** How round a disc of the spool looks that is seen at a slant: its width against its height. */
const slant = 0.3;

/** A disc whose axis runs along the rod, seen from in front and aside. */
function disc({ at, mm }: Hundredths, x: number, y: number, half: number): PathItem["steps"] {
  return ellipse(at(x, y), mm(half * slant), mm(half));
}

/** A drum between two discs: its mantle and the disc in front. */
function drum(
  grid: Hundredths,
  from: readonly [number, number],
  to: readonly [number, number],
  stroke: Stroke,
): Item[] {
  const { at, mm } = grid;
  const [[x0, r0], [x1, r1]] = [from, to];
  const front = at(x1, axisY);
  const [, , , ...behind] = disc(grid, x0, axisY, r0);
  const mantle: PathItem = {
    kind: "path",
    steps: [
      ["M", front.xMm, front.yMm + mm(r1)],
      ["L", at(x0, axisY).xMm, front.yMm + mm(r0)],
      ...behind.slice(0, -1),
      ["L", front.xMm, front.yMm - mm(r1)],
      ["Z"],
    ],
    fill: "paper",
    stroke,
  };
  return [mantle, { kind: "path", steps: disc(grid, x1, axisY, r1), fill: "paper", stroke }];
}

const axisY = 60;

/** Seen from in front and aside, spool towards the rod tip. */
export function largeReel(grid: Hundredths): Item[] {
  const { at } = grid;
  const through = (points: readonly (readonly [number, number])[], closed = false) =>
    smooth(
      points.map(([x, y]) => at(x, y)),
      closed,
    );
  return [
    ...rodAbove(grid),
    // Foot and stem.
    polygon(
      through(
        [
          [20, 41],
          [26, 38.4],
          [46, 38.4],
          [52, 41],
          [46, 41.6],
          [26, 41.6],
        ],
        true,
      ),
      "paper",
      bold,
    ),
    polygon(
      through(
        [
          [32, 41.4],
          [40, 41.4],
          [38.6, 47],
          [40, 53],
          [30, 53],
          [32.6, 47],
        ],
        true,
      ),
      "paper",
      bold,
    ),
    // Lever of the anti-reverse.
    polyline([at(36, 68), at(38, 72.4)], { ink: "ink", widthMm: 1.3, cap: "round" }),
    // Body.
    polygon(
      through(
        [
          [24, 61],
          [26, 53.6],
          [34, 50.4],
          [42, 52.6],
          [45, 60],
          [42, 67.4],
          [35, 70],
          [27, 68],
        ],
        true,
      ),
      "paper",
      bold,
    ),
    polyline(
      through([
        [41.5, 53.2],
        [43, 60],
        [41.5, 67],
      ]),
      thin,
    ),
    ...bail(grid, "behind"),
    ...drum(grid, [46, 11.4], [54, 10.6], bold),
    ...drum(grid, [56, 10], [57, 10], bold),
    ...drum(grid, [57.5, 8], [67, 7.6], thin),
    ...lineLay(grid),
    ...drum(grid, [67.6, 10], [69.4, 10], bold),
    ...drum(grid, [70, 4.6], [74, 4], bold),
    ...[-2, 0, 2].map((dy) => polyline([at(71, axisY + dy), at(74.4, axisY + dy * 0.9)], thin)),
    polyline([at(60, 52.4), at(66.2, 46.8), at(96.2, 46.6)], strandStrokes["main line"]),
    ...bail(grid, "before"),
    ...handle(grid),
  ];
}

/** The rod over the reel with its grip and seat, and the first ring that the line runs through. */
function rodAbove({ at, mm }: Hundredths): Item[] {
  return [
    polygon([at(58, 35), at(100, 35.6), at(100, 37), at(58, 37.8)], "ink"),
    polygon(smooth([at(0, 33.4), at(54, 33.4), at(60, 35), at(60, 38), at(54, 39.4), at(0, 39.4)]), "paper"),
    polyline([at(0, 33.4), at(54, 33.4), at(60, 35.2), at(60, 37.8), at(54, 39.4), at(0, 39.4)], bold),
    ...[19, 48].map((x) => rectangle(mm(x), mm(33), mm(4), mm(6.8), { fill: "ink" })),
    ...[6, 12].map((x) => polyline([at(x, 33.8), at(x, 39)], thinSoft)),
    polyline([at(92.6, 37), at(95, 43)], bold),
    polyline([at(99.4, 37), at(97.4, 43)], bold),
    circle(at(96.2, 45), mm(2.2), { stroke: bold }),
  ];
}

/** Turns of line on the spool, laid crossing each other a little. */
function lineLay(grid: Hundredths): Item[] {
  const { at } = grid;
  return [58.6, 60, 61.4, 62.8, 64.2, 65.6].map((x, i) => {
    const tilt = i % 2 === 0 ? 0.8 : -0.8;
    const [a, b, c] = [at(x + tilt, axisY - 7.8), at(x - 2.9, axisY), at(x - tilt, axisY + 7.8)];
    return polyline(smooth([a, at(x - 1.9, axisY - 5), b, at(x - 1.9, axisY + 5), c]), thinSoft);
  });
}

/** The bail: an arm of the rotor above and below the spool, the roller on the upper, the wire between them. */
function bail({ at, mm }: Hundredths, which: "behind" | "before"): Item[] {
  if (which === "behind")
    return [
      polygon(
        smooth([at(46, 69), at(58, 71.6), at(66, 72.4), at(66, 75), at(56, 74.6), at(46, 72.4)], true),
        "paper",
        bold,
      ),
    ];
  const wire = pathFrom(at(66, 47), [curveTo(at(84, 44), at(86, 78), at(66, 73.8))], {
    ...accent,
    cap: "round",
  });
  return [
    polygon(
      smooth(
        [at(46, 51.4), at(50, 48.6), at(58, 46.4), at(65, 45.6), at(66, 48.4), at(58, 49.4), at(52, 51.2)],
        true,
      ),
      "paper",
      bold,
    ),
    wire,
    circle(at(66.2, 47), mm(1.5), { fill: "paper", stroke: bold }),
  ];
}

/** One crank from the side of the body with one knob. */
function handle({ at, mm }: Hundredths): Item[] {
  const boss = at(33, 60);
  return [
    circle(boss, mm(3), { fill: "paper", stroke: bold }),
    polygon([at(31.6, 59), at(34.2, 61.4), at(19.4, 76.4), at(17.6, 74.6)], "paper", bold),
    circle(boss, mm(1.1), { fill: "ink" }),
    polygon(
      smooth(
        [at(10, 72.4), at(13, 70.6), at(18, 73.4), at(20, 77), at(18, 80), at(14, 79.6), at(10.6, 76.6)],
        true,
      ),
      "ink",
    ),
  ];
}
