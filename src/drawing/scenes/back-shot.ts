import type { Rig } from "../../model/rig.ts";
import type { WordKeyIn } from "../../words/words.ts";
import { accent, arrow, curveTo, type Point, pathFrom, polyline, text, thinSoft } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, PathStep } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { verdictMark } from "../verdict.ts";
import { angler, hipsShare } from "./angler.ts";
import { bankAbove, bankAndWater } from "./ground.ts";
import { pointAlong } from "./path.ts";
import { rigEnd } from "./rig-end.ts";
import { rod } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { smallFloat } from "./small-float.ts";
import { hundredths, stepPictures } from "./step-pictures.ts";

const backShotSteps = ["without", "with"] as const;
type BackShotStep = (typeof backShotSteps)[number];

/** Where the water is, and the angler's height, in hundredths of the width. */
const surface = 26;
const tall = 22;

/** From the float to the back shot, along the line [mm]. Common practice, no source. */
const backShotFromFloatMm = 400;

/** The line from rod to float: on the water where the wind has hold of it, and drawn under by a shot behind the float. */
export function drawBackShot(rig: Rig, box: Box, kit: DrawingKit): Drawing[] {
  const { at, mm } = hundredths(box);
  const { words, figures } = kit;
  const textMm = sceneTextMm(box);
  const surfaceMm = mm(surface);
  const tip = at(40, surface - 3);
  const butt = at(11, surface - 7);
  const foot = at(82, 34);
  const values = { distance: figures.shortGap(backShotFromFloatMm) };
  const label = (
    key: WordKeyIn<"drawing.scenes.back-shot.say">,
    place: Point,
    anchor: "start" | "middle" | "end" = "start",
  ) => text(place, words(`drawing.scenes.back-shot.say.${key}`, values), textMm, { ink: "soft", anchor });
  const line = (steps: readonly PathStep[]) => pathFrom(tip, steps, strandStrokes["main line"]);

  const scenes: Readonly<Record<BackShotStep, () => Item[]>> = {
    without: () => [
      line([
        curveTo(at(43, 25), at(46, 25.3), at(51, 25.3)),
        ["L", at(70, 25.3).xMm, at(70, 25.3).yMm],
        curveTo(at(76, 25.3), at(79, 30), foot),
      ]),
      ...arrow(at(88, 21), at(99, 21), accent, 2.6),
      label("drags", at(99, 17), "end"),
      label("on-top", at(58, 33), "middle"),
    ],
    with: () => {
      const shot = at(64, 40);
      return [
        line([curveTo(at(46, 32), at(54, 39), shot), curveTo(at(71, 40.5), at(78, 37), foot)]),
        ...parts.shot.draw({ at: shot, radiusMm: Math.max(0.9, mm(1.3)) }),
        // Between shot and float, which are further apart than they are drawn.
        ...parts.lineBreak.draw({ at: at(74.1, 38.3), turnedDegrees: 66 }),
        polyline([at(64, 42), at(64, 44.4)], thinSoft),
        label("shot", at(64, 48.6), "middle"),
        label("place", at(80.6, 53.8), "end"),
        label("clear", at(99, 17), "end"),
      ];
    },
  };
  return stepPictures(
    "back-shot",
    backShotSteps,
    box,
    kit,
    (step) => [
      ...bankAndWater(box, surfaceMm, mm(20)),
      ...rod(butt, tip, { reel: true }),
      ...angler({
        hips: at(7, surface - bankAbove - hipsShare.sits * tall),
        heightMm: mm(tall),
        hands: pointAlong([butt, tip], mm(4.6)),
        sits: true,
      }),
      ...scenes[step](),
      ...smallFloat(rig, foot, mm(11)),
      ...rigEnd(foot, at(82, 45)),
      text(at(56, 6), words("drawing.scenes.back-shot.say.wind"), textMm, { ink: "soft", anchor: "end" }),
      ...verdictMark(step === "without" ? "wrong" : "right", at(94, 6), mm(4)),
      ...arrow(at(58, 4.6), at(76, 4.6), { ink: "ink", widthMm: 0.6 }, 2.4),
    ],
    values,
  );
}
