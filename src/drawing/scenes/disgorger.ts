import type { WordKeyIn } from "../../words/words.ts";
import { accent, arrow, bold, circle, type Point, point, polygon, polyline, text, thin } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { smooth } from "../smooth.ts";
import { strandStrokes } from "../strands.ts";
import { rotated } from "../transform.ts";
import { sceneTextMm } from "./scene-text.ts";
import { type Hundredths, hundredths, stepPictures } from "./step-pictures.ts";

const disgorgerSteps = ["on-the-line", "push", "out"] as const;
type DisgorgerStep = (typeof disgorgerSteps)[number];

/** Height of the line that is held tight out of the mouth, in hundredths of the width. */
const lineY = 25;
const hookLong = 9;

/** Freeing a hook that is out of sight: slot on the tight line, down to the bend, a small push, and out together. */
export function drawDisgorger(box: Box, kit: DrawingKit): Drawing[] {
  const grid = hundredths(box);
  const { at, mm } = grid;
  const textMm = sceneTextMm(box);
  const label = (
    key: WordKeyIn<"drawing.scenes.disgorger.say">,
    place: Point,
    anchor: "start" | "middle" | "end" = "start",
  ) => text(place, kit.words(`drawing.scenes.disgorger.say.${key}`), textMm, { ink: "soft", anchor });
  /** Shank along the line, its point up. */
  const hook = (bend: Point) => rotated(parts.hook.draw({ bend, heightMm: mm(hookLong) }), -90, bend);
  const line = (from: Point, to: Point) => polyline([from, to], strandStrokes["hook length"]);
  const tight = (y: number): Item[] => [
    ...arrow(at(13, y), at(2, y), accent, 2.6),
    label("tight", at(2, y - 3)),
  ];

  const scenes: Readonly<Record<DisgorgerStep, () => Item[]>> = {
    "on-the-line": () => {
      const bend = at(73, lineY);
      return [
        line(at(1, lineY), point(bend.xMm - mm(hookLong), bend.yMm)),
        ...hook(bend),
        ...rotated(stick(grid, at(37, lineY + 0.4)), -32, at(37, lineY + 0.4)),
        ...arrow(at(42, 42), at(38.8, 30), accent, 2.6),
        label("slot", at(38, 48.6)),
        ...tight(19),
      ];
    },
    push: () => {
      const bend = at(76.5, lineY + 2.6);
      return [
        line(at(1, lineY), point(bend.xMm - mm(hookLong), bend.yMm)),
        ...rotated(stick(grid, at(73.6, lineY + 2.3)), 1.4, at(73.6, lineY + 2.3)),
        ...hook(bend),
        ...arrow(at(22, 14), at(36, 14), accent, 2.6),
        label("push", at(29, 11), "middle"),
        ...tight(19),
      ];
    },
    out: () => {
      const bend = at(46, lineY);
      return [
        line(at(1, lineY), point(bend.xMm - mm(hookLong), bend.yMm)),
        ...stick(grid, at(43, lineY)),
        ...hook(bend),
        ...arrow(at(40, 14), at(26, 14), accent, 2.6),
        label("together", at(33, 11), "middle"),
        ...tight(19),
      ];
    },
  };
  return stepPictures("disgorger", disgorgerSteps, box, kit, (step) => [...head(grid), ...scenes[step]()]);
}

/** The front of a fish cut down its middle, mouth open to the left; the gill cover and flank as they are behind the cut. */
function head({ at, mm }: Hundredths): Item[] {
  const through = (points: readonly (readonly [number, number])[]) =>
    smooth(points.map(([x, y]) => at(x, y)));
  const back = through([
    [54.4, 21.6],
    [52.6, 19.6],
    [54.6, 16.6],
    [61, 12.4],
    [70, 8.6],
    [82, 5],
    [99, 2.4],
  ]);
  const throat = through([
    [99, 47.4],
    [86, 45.4],
    [74, 41.6],
    [63, 36.4],
    [56.4, 32.8],
    [54.2, 30.6],
    [56.2, 28.4],
  ]);
  const mouth = through([
    [56.2, 28.4],
    [62, 29.6],
    [70, 30.4],
    [78, 29.6],
    [83.5, 26.6],
    [79, 23.4],
    [70, 21.6],
    [61, 21.8],
    [54.4, 21.6],
  ]);
  const soft = { ink: "soft", widthMm: 0.5 } as const;
  const faint = { ink: "faint", widthMm: 0.35 } as const;
  const gill = through([
    [80.5, 9],
    [88, 15],
    [91, 25],
    [88.6, 35],
    [81, 42],
  ]);
  const cheek = through([
    [77, 12],
    [83.5, 18],
  ]);
  const jaw = through([
    [84.6, 31],
    [81, 36],
    [75, 38.4],
  ]);
  const fin = through([
    [90, 37],
    [99, 38.4],
    [99, 41.4],
    [92, 40.6],
    [90, 37],
  ]);
  const scale = (x: number, y: number) =>
    polyline(
      through([
        [x, y - 2],
        [x + 1.6, y - 1],
        [x + 1.6, y + 1],
        [x, y + 2],
      ]),
      faint,
    );
  return [
    polygon([...back, ...throat, ...mouth.slice(1)], "water"),
    polyline([...back], bold),
    polyline(throat, bold),
    polyline(mouth, { ink: "ink", widthMm: 0.5 }),
    polyline(gill, bold),
    polyline(cheek, soft),
    polyline(jaw, soft),
    ...[9, 13.6, 18.2, 22.8, 27.4, 32].map((y, i) => scale(i % 2 === 0 ? 94.5 : 96.5, y + 2)),
    polygon(fin, "paper", thin),
    circle(at(68, 14.6), mm(2.5), { fill: "paper", stroke: bold }),
    circle(at(68, 14.6), mm(1.1), { fill: "ink" }),
    circle(at(58.4, 16.2), Math.max(0.3, mm(0.4)), { fill: "ink" }),
  ];
}

/** A disgorger lying level: a grip, a thin shaft, and to the right its head with the slot that takes the line. */
function stick({ mm }: Hundredths, end: Point): Item[] {
  const p = (x: number, y: number) => point(end.xMm + mm(x), end.yMm + mm(y));
  const stroke = { ink: "ink", widthMm: 0.5 } as const;
  const grip = smooth(
    [p(-34, 0), p(-33, -1.6), p(-22, -1.6), p(-20.5, -0.8), p(-20.5, 0.8), p(-22, 1.6), p(-33, 1.6)],
    true,
  );
  const tip = smooth(
    [
      p(-6.5, -0.8),
      p(-5, -1.8),
      p(-1, -1.8),
      p(0.4, -0.9),
      p(0.4, 0.9),
      p(-1, 1.8),
      p(-5, 1.8),
      p(-6.5, 0.8),
    ],
    true,
  );
  return [
    polygon([p(-20.5, -0.8), p(-6, -0.8), p(-6, 0.8), p(-20.5, 0.8)], "paper", stroke),
    polygon(grip, "paper", stroke),
    ...[-31, -29, -27, -25].map((x) => polyline([p(x, -1.5), p(x, 1.5)], thin)),
    polygon(tip, "paper", stroke),
    polyline([p(-5, 0), p(0.4, 0)], { ink: "ink", widthMm: 0.7 }),
  ];
}
