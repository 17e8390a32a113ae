import type { Rig } from "../../model/rig.ts";
import { arrow, circle, type Point, point, polyline, text } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, PathStep } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { rotated } from "../transform.ts";
import { bank } from "./ground.ts";
import { rod } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { smallFloat } from "./small-float.ts";
import { hundredths, stepPictures } from "./step-pictures.ts";

const featherSteps = ["flight", "slow", "landed", "heap"] as const;
type FeatherStep = (typeof featherSteps)[number];

const accent = { ink: "accent", widthMm: 0.9 } as const;

/** How a rig lands: the float flies first, a finger slows the line, the rest swings past it; and how it lands without. */
export function drawFeather(rig: Rig, box: Box, kit: DrawingKit): Drawing[] {
  const { at, mm } = hundredths(box);
  const textMm = sceneTextMm(box);
  const surfaceMm = mm(32);
  const tip = at(30, 14);

  const label = (step: FeatherStep, place: Point, anchor: "start" | "middle" | "end" = "middle") =>
    text(place, kit.words(`drawing.scenes.feather.say.${step}`), textMm, { ink: "soft", anchor });

  const line = (steps: readonly PathStep[]): Item => ({
    kind: "path",
    steps: [["M", tip.xMm, tip.yMm], ...steps],
    stroke: strandStrokes["main line"],
  });
  const curve = (a: Point, b: Point, c: Point): PathStep => ["C", a.xMm, a.yMm, b.xMm, b.yMm, c.xMm, c.yMm];
  /** The rig below the float: two shot and the hook along a line. */
  const tail = (from: Point, to: Point): Item[] => [
    polyline([from, to], strandStrokes["main line"]),
    ...[0.45, 0.75].flatMap((share) =>
      parts.shot.draw({
        at: point(from.xMm + (to.xMm - from.xMm) * share, from.yMm + (to.yMm - from.yMm) * share),
        radiusMm: 0.7,
      }),
    ),
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
      line([curve(at(44, 31), at(60, 31), dips), ["L", standing.xMm, standing.yMm]]),
      ...smallFloat(rig, standing, mm(9)),
      ...below,
      label(step, at(66, 25)),
    ];
  };

  const scenes: Readonly<Record<FeatherStep, () => Item[]>> = {
    flight: () => {
      const float = at(66, 16);
      return [
        line([curve(at(40, 6), at(54, 6), float)]),
        ...rotated(smallFloat(rig, float, mm(9)), 105, float),
        ...tail(float, at(52, 19)),
        ...arrow(at(72, 10), at(84, 14), accent, 2.6),
        label("flight", at(80, 6)),
      ];
    },
    slow: () => {
      const float = at(74, 27);
      return [
        line([curve(at(44, 14), at(62, 18), float)]),
        ...rotated(smallFloat(rig, float, mm(9)), 60, float),
        ...tail(float, at(90, 22)),
        ...arrow(at(84, 13), at(94, 17), accent, 2.6),
        ...finger(at(6, 23)),
        label("slow", at(66, 7)),
      ];
    },
    landed: () => afloat("landed", tail(standing, at(95, 36))),
    heap: () => afloat("heap", loops(standing, mm(1))),
  };

  return stepPictures("feather", featherSteps, box, kit, (step) => [
    ...bank(box, surfaceMm, mm(14)),
    ...parts.waterSurface.draw({ leftMm: mm(14), rightMm: box.widthMm, yMm: surfaceMm }),
    ...rod(at(3, 24), tip),
    ...scenes[step](),
  ]);
}

/** A finger laid on the line where it leaves the reel. */
function finger(place: Point): Item[] {
  return [circle(place, 1.4, { fill: "paper", stroke: accent }), circle(place, 0.45, { fill: "ink" })];
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
