import type { Rig } from "../../model/rig.ts";
import { limbOf } from "../film/hand.ts";
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
import type { Drawing, Item, PathStep, Stroke } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { smooth } from "../smooth.ts";
import { strandStrokes } from "../strands.ts";
import { rotated } from "../transform.ts";
import { verdictMark } from "../verdict.ts";
import { angler, hipsShare } from "./angler.ts";
import { bankAbove, bankAndWater } from "./ground.ts";
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
      ...verdictMark(step === "heap" ? "wrong" : "right", at(94, 8), mm(4)),
      label(step, at(70, 22)),
    ];
  };

  const scenes: Readonly<Record<FeatherStep, () => Item[]>> = {
    flight: () => {
      const float = at(72, 14);
      return [
        line("flight", [curveTo(at(50, 4), at(62, 5), float)]),
        ...rotated(smallFloat(rig, float, mm(9)), -70, float),
        ...tail(float, at(58, 15)),
        ...arrow(at(77, 9), at(89, 13), accent, 2.6),
        label("flight", at(82, 5.5)),
      ];
    },
    slow: () => {
      const float = at(76, 26);
      return [
        line("slow", [curveTo(at(54, 9), at(66, 15), float)]),
        ...rotated(smallFloat(rig, float, mm(9)), -16, float),
        ...tail(float, at(92, 20)),
        ...arrow(at(85, 13), at(95, 16), accent, 2.6),
        ...fingerOnSpool(grid, at(48, 51), handOn(tips.slow)),
        // From the words to the finger's tip.
        polyline([at(68, 57.4), at(57.6, 51)], thinSoft),
        label("slow", at(67, 62), "start"),
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
    ...bankAndWater(box, surfaceMm, mm(24)),
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
const lens = 16;
/** The drawing in it is laid out for a circle so large. */
const laidOutFor = 14;

/** The reel in a circle, larger: a hand over the rod, its first finger reaching down to the rim of the spool. */
function fingerOnSpool({ mm }: Hundredths, middle: Point, from: Point): Item[] {
  const share = lens / laidOutFor;
  const p = (x: number, y: number) => point(middle.xMm + mm(share * x), middle.yMm + mm(share * y));
  const round = (points: readonly (readonly [number, number])[]) =>
    polygon(
      smooth(
        points.map(([x, y]) => p(x, y)),
        true,
      ),
      "paper",
      bold,
    );
  const box = (x: number, y: number, wide: number, high: number, stroke: Stroke) =>
    polygon([p(x, y), p(x + wide, y), p(x + wide, y + high), p(x, y + high)], "paper", stroke);
  const finger = (places: readonly [Point, Point, Point, Point]) =>
    limbOf({ from: places[0], through: [places[1], places[2]], to: places[3], widthMm: mm(2.5 * share) });
  return [
    polyline([from, pointAlong([middle, from], mm(lens))], thinSoft),
    circle(middle, mm(lens), { fill: "paper", stroke: bold }),
    polygon([p(-12.6, -5.4), p(12.8, -5), p(12.8, -3.8), p(-12.6, -2.8)], "ink"),
    // Stem, body, rotor, and the spool with its line between two rims.
    box(-4.8, -2.8, 2.2, 5, bold),
    round([
      [-9.6, 6],
      [-8, 2],
      [-4, 0.6],
      [-1.4, 3],
      [-1.4, 9],
      [-4.4, 10.4],
      [-8.4, 9.4],
    ]),
    box(-1.4, 1.4, 2, 9.4, bold),
    box(0.6, 2.6, 5.4, 7, thin),
    ...[1.8, 3, 4.2, 5.2].map((x) => polyline([p(x - 0.3, 2.6), p(x + 0.3, 9.6)], thinSoft)),
    box(6, 1.2, 1.6, 9.8, bold),
    box(7.6, 4.6, 2, 3.2, bold),
    polyline([p(5, 2.6), p(7.2, 0.6), p(13.4, -1.4)], strandStrokes["main line"]),
    // Two fingers behind the stem, one before it, all round the rod; then the back of the hand over them.
    ...[-9, -6.4, -0.6].flatMap((x) => finger([p(x, -6), p(x + 0.5, -4), p(x + 0.5, -2.6), p(x, -1.4)])),
    ...finger([p(0.6, -7), p(5, -8.6), p(9, -5.4), p(7, -0.4)]),
    polygon(
      smooth(
        [
          p(-11.2, -7.6),
          p(-7, -9.4),
          p(-1.4, -9.2),
          p(2, -7.8),
          p(1.6, -5.4),
          p(-2, -4.6),
          p(-7, -4.4),
          p(-11.2, -4.2),
        ],
        true,
      ),
      "paper",
      bold,
    ),
    polygon([p(-12.4, -6.8), p(-10.4, -8.2), p(-10, -3.6), p(-12.8, -3.4)], "ink"),
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
