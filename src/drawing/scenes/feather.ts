import type { Rig } from "../../model/rig.ts";
import {
  accent,
  arrow,
  bold,
  circle,
  curveTo,
  type Point,
  partWay,
  pathFrom,
  point,
  polygon,
  polyline,
  text,
  thin,
  thinSoft,
} from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, PathStep } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { smooth } from "../smooth.ts";
import { strandStrokes } from "../strands.ts";
import { rotated } from "../transform.ts";
import { angler, hipsShare } from "./angler.ts";
import { bank, bankAbove } from "./ground.ts";
import { pointAlong } from "./path.ts";
import { rod } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { smallFloat } from "./small-float.ts";
import { type Hundredths, hundredths, stepPictures } from "./step-pictures.ts";

const featherSteps = ["flight", "slow", "landed", "heap"] as const;
type FeatherStep = (typeof featherSteps)[number];

/** Where the water is, and the angler's height. */
const surface = 32;
const tall = 22;

/** How a rig lands: the float flies first, a finger slows the line, the rest swings past it; and how it lands without. */
export function drawFeather(rig: Rig, box: Box, kit: DrawingKit): Drawing[] {
  const grid = hundredths(box);
  const { at, mm } = grid;
  const textMm = sceneTextMm(box);
  const surfaceMm = mm(surface);
  const tips: Readonly<Record<FeatherStep, Point>> = {
    flight: at(42, 9),
    slow: at(41, 8),
    landed: at(44, 19),
    heap: at(44, 19),
  };
  const butt = at(13.6, 25.4);

  const label = (step: FeatherStep, place: Point, anchor: "start" | "middle" | "end" = "middle") =>
    text(place, kit.words(`drawing.scenes.feather.say.${step}`), textMm, { ink: "soft", anchor });

  const line = (step: FeatherStep, steps: readonly PathStep[]) =>
    pathFrom(tips[step], steps, strandStrokes["main line"]);
  /** The rig below the float: two shot and the hook along a line. */
  const tail = (from: Point, to: Point): Item[] => [
    polyline([from, to], strandStrokes["main line"]),
    ...[0.45, 0.75].flatMap((share) => parts.shot.draw({ at: partWay(from, to, share), radiusMm: 0.7 })),
    ...rotated(
      parts.hook.draw({ bend: point(to.xMm, to.yMm + 2.4), heightMm: 2.4 }),
      (Math.atan2(to.yMm - from.yMm, to.xMm - from.xMm) * 180) / Math.PI - 90,
      to,
    ),
  ];

  /** Where the foot of the float is once it stands. */
  const standing = point(at(74, 0).xMm, surfaceMm + mm(6));
  const afloat = (step: FeatherStep, below: readonly Item[]): Item[] => {
    const dips = point(at(70, 0).xMm, surfaceMm - 0.7);
    return [
      line(step, [curveTo(at(52, 31), at(60, 31.4), dips), ["L", standing.xMm, standing.yMm]]),
      ...smallFloat(rig, standing, mm(9)),
      ...below,
      label(step, at(70, 22)),
    ];
  };

  const scenes: Readonly<Record<FeatherStep, () => Item[]>> = {
    flight: () => {
      const float = at(72, 14);
      return [
        line("flight", [curveTo(at(50, 4), at(62, 5), float)]),
        ...rotated(smallFloat(rig, float, mm(9)), 105, float),
        ...tail(float, at(58, 15)),
        ...arrow(at(77, 9), at(89, 13), accent, 2.6),
        label("flight", at(82, 5.5)),
      ];
    },
    slow: () => {
      const float = at(76, 26);
      return [
        line("slow", [curveTo(at(54, 9), at(66, 15), float)]),
        ...rotated(smallFloat(rig, float, mm(9)), 60, float),
        ...tail(float, at(92, 20)),
        ...arrow(at(85, 13), at(95, 16), accent, 2.6),
        ...fingerOnSpool(grid, at(52, 52), handOn(tips.slow)),
        // From the words to the finger's tip.
        polyline([at(67, 55.4), at(61, 49.8)], thinSoft),
        label("slow", at(68, 62), "start"),
      ];
    },
    landed: () => afloat("landed", tail(standing, at(95, 38))),
    heap: () => afloat("heap", loops(standing, mm(1))),
  };

  /** A hand's breadth up the rod from its end. */
  function handOn(tip: Point): Point {
    return pointAlong([butt, tip], mm(4.6));
  }

  return stepPictures("feather", featherSteps, box, kit, (step) => [
    ...bank(box, surfaceMm, mm(24)),
    ...parts.waterSurface.draw({ leftMm: mm(24), rightMm: box.widthMm, yMm: surfaceMm }),
    ...rod(butt, tips[step], { reel: true }),
    ...scenes[step](),
    ...angler({
      hips: at(9, surface - bankAbove - hipsShare.sits * tall),
      heightMm: mm(tall),
      hands: handOn(tips[step]),
      sits: true,
    }),
  ]);
}

/** Radius of the circle that shows the reel larger. */
const lens = 14;

/** The reel in a circle, larger: a hand on the rod, its first finger down on the rim of the spool. */
function fingerOnSpool({ mm }: Hundredths, middle: Point, from: Point): Item[] {
  const p = (x: number, y: number) => point(middle.xMm + mm(x), middle.yMm + mm(y));
  const outline = (points: readonly (readonly [number, number])[]) =>
    smooth(
      points.map(([x, y]) => p(x, y)),
      true,
    );
  const skin = { ink: "ink", widthMm: 0.5 } as const;
  const fingers = [-8.6, -6.2].map((x) =>
    polygon(
      outline([
        [x - 1.1, -9.6],
        [x + 1.1, -9.6],
        [x + 1.3, -7.4],
        [x + 1.1, -5.2],
        [x - 1.1, -5.2],
        [x - 1.3, -7.4],
      ]),
      "paper",
      skin,
    ),
  );
  const forefinger = outline([
    [-1.6, -9.4],
    [2.2, -9],
    [5.8, -7],
    [8, -4.6],
    [8.2, -3],
    [7, -2.8],
    [4.8, -5],
    [1.6, -6.6],
    [-1.6, -6.8],
  ]);
  const thumb = outline([
    [-11.4, -9.2],
    [-8, -11.2],
    [-3, -11.3],
    [-0.4, -10.2],
    [-1.6, -9],
    [-6, -9.2],
  ]);
  const towards = pointAlong([middle, from], mm(lens));
  return [
    polyline([from, towards], thinSoft),
    circle(middle, mm(lens), { fill: "paper", stroke: bold }),
    // Rod, foot and stem, body, spool with its line.
    polygon([p(-11.6, -8.6), p(11.6, -8.4), p(11.6, -6.6), p(-11.6, -6.4)], "ink"),
    polygon(
      outline([
        [-4.6, -6.6],
        [-2, -6.6],
        [-2.2, -2],
        [-4.8, -2],
      ]),
      "paper",
      skin,
    ),
    polygon(
      outline([
        [-9.4, 1.6],
        [-7.6, -2.4],
        [-3, -3.6],
        [-0.6, -1.6],
        [-0.6, 5],
        [-4, 6.4],
        [-8, 5.4],
      ]),
      "paper",
      skin,
    ),
    polygon([p(-0.6, -4.2), p(0.8, -4.2), p(0.8, 7.4), p(-0.6, 7.4)], "paper", skin),
    polygon([p(0.8, -1.8), p(6, -1.8), p(6, 5), p(0.8, 5)], "paper", thin),
    ...[1.9, 3, 4.1, 5.2].map((x) => polyline([p(x - 0.3, -1.8), p(x + 0.3, 5)], thinSoft)),
    polygon([p(6, -3), p(7.4, -3), p(7.4, 6.2), p(6, 6.2)], "paper", skin),
    polygon(
      outline([
        [7.4, 0],
        [9.4, 0],
        [9.4, 3.2],
        [7.4, 3.2],
      ]),
      "ink",
    ),
    polyline([p(5.4, -1.8), p(12.6, -4.4)], strandStrokes["main line"]),
    polygon(thumb, "paper", skin),
    ...fingers,
    polygon(forefinger, "paper", skin),
  ];
}

/** Line, shot and hook all in one place round the foot of the float. */
function loops({ xMm, yMm }: Point, unit: number): Item[] {
  const p = (x: number, y: number) => [xMm + x * unit, yMm + y * unit] as const;
  return [
    {
      kind: "path",
      steps: [
        ["M", xMm, yMm],
        ["C", ...p(9, 1), ...p(8, 8), ...p(1, 5)],
        ["C", ...p(-7, 2), ...p(-6, -2), ...p(2, 1)],
        ["C", ...p(8, 3), ...p(3, 10), ...p(-4, 7)],
      ],
      stroke: strandStrokes["main line"],
    },
    ...parts.shot.draw({ at: point(...p(6.6, 4)), radiusMm: 0.7 }),
    ...parts.shot.draw({ at: point(...p(-4.4, 1.4)), radiusMm: 0.7 }),
    ...parts.hook.draw({ bend: point(...p(-4, 9.6)), heightMm: 2.4 }),
  ];
}
