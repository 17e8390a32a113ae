import type { Rig } from "../../model/rig.ts";
import type { WordKeyIn } from "../../words/words.ts";
import { arrow, type Point, point, polyline, text, thinSoft } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, PathStep } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { bank } from "./ground.ts";
import { rod } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { smallFloat } from "./small-float.ts";
import { hundredths, stepPictures } from "./step-pictures.ts";

const backShotSteps = ["without", "with"] as const;
type BackShotStep = (typeof backShotSteps)[number];

/** From the float to the back shot, along the line [mm]. Common practice, no source. */
const backShotFromFloatMm = 400;

/** The line from rod to float: on the water where the wind has hold of it, and drawn under by a shot behind the float. */
export function drawBackShot(rig: Rig, box: Box, kit: DrawingKit): Drawing[] {
  const { at, mm } = hundredths(box);
  const { words, figures } = kit;
  const textMm = sceneTextMm(box);
  const surfaceMm = mm(21);
  const tip = at(34, 17);
  const foot = at(82, 29);
  const values = { distance: figures.shortGap(backShotFromFloatMm) };
  const label = (
    key: WordKeyIn<"drawing.scenes.back-shot.say">,
    place: Point,
    anchor: "start" | "middle" | "end" = "start",
  ) => text(place, words(`drawing.scenes.back-shot.say.${key}`, values), textMm, { ink: "soft", anchor });
  const line = (steps: readonly PathStep[]): Item => ({
    kind: "path",
    steps: [["M", tip.xMm, tip.yMm], ...steps],
    stroke: strandStrokes["main line"],
  });
  const curve = (a: Point, b: Point, c: Point): PathStep => ["C", a.xMm, a.yMm, b.xMm, b.yMm, c.xMm, c.yMm];

  const scenes: Readonly<Record<BackShotStep, () => Item[]>> = {
    without: () => [
      line([
        curve(at(38, 20), at(42, 20.3), at(48, 20.3)),
        ["L", at(70, 20.3).xMm, at(70, 20.3).yMm],
        curve(at(76, 20.3), at(79, 25), foot),
      ]),
      ...arrow(at(88, 16), at(99, 16), { ink: "accent", widthMm: 0.9 }, 2.6),
      label("drags", at(99, 12), "end"),
      label("on-top", at(59, 27), "middle"),
    ],
    with: () => {
      const shot = at(64, 35);
      return [
        line([curve(at(40, 26), at(52, 34), shot), curve(at(71, 35.5), at(78, 32), foot)]),
        ...parts.shot.draw({ at: shot, radiusMm: Math.max(0.9, mm(1.3)) }),
        polyline([at(64, 37), at(64, 39.4)], thinSoft),
        label("shot", at(64, 43.4), "middle"),
        label("place", at(80, 48.6), "end"),
        label("clear", at(99, 12), "end"),
      ];
    },
  };
  return stepPictures(
    "back-shot",
    backShotSteps,
    box,
    kit,
    (step) => [
      ...bank(box, surfaceMm, mm(20)),
      ...parts.waterSurface.draw({ leftMm: mm(20), rightMm: box.widthMm, yMm: surfaceMm }),
      ...rod(at(8, 14), tip),
      ...scenes[step](),
      ...smallFloat(rig, foot, mm(11)),
      polyline([foot, point(foot.xMm, box.heightMm)], strandStrokes["main line"]),
      text(at(40, 6), words("drawing.scenes.back-shot.say.wind"), textMm, { ink: "soft", anchor: "end" }),
      ...arrow(at(42, 4.6), at(60, 4.6), { ink: "ink", widthMm: 0.6 }, 2.4),
    ],
    values,
  );
}
