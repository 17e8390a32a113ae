import { last } from "../../core/lists.ts";
import type { Rig } from "../../model/rig.ts";
import { accent, arrow, curveTo, type Point, pathFrom, point, polyline, text } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item } from "../model.ts";
import { hookEye } from "../parts/hook.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { angler, hipsShare } from "./angler.ts";
import { bankAbove, bankAndWater } from "./ground.ts";
import { type HeldRod, rodAlong, rodPath } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { smallFloat } from "./small-float.ts";
import { hundredths, stepPictures } from "./step-pictures.ts";
import { wholeFish } from "./whole-fish.ts";

const strikeSteps = ["ready", "lift"] as const;
type StrikeStep = (typeof strikeSteps)[number];

/** Height of the angler. */
const tall = 22;

/** A fish on the hook, and the hook length up to the float: the point has come up through the lip, ahead of the eye. */
function hookedFish(foot: Point, mouth: Point, lengthMm: number): Item[] {
  const held = { bend: point(mouth.xMm - 0.7, mouth.yMm + 1.3), heightMm: 2.6 };
  return [
    ...wholeFish(mouth, lengthMm),
    polyline([foot, hookEye(held)], strandStrokes["hook length"]),
    ...parts.hook.draw(held),
  ];
}

/** The strike: rod low and line nearly straight while you wait, then one firm lift that takes up the slack. */
export function drawStrike(rig: Rig, box: Box, kit: DrawingKit): Drawing[] {
  const { at, mm } = hundredths(box);
  const textMm = sceneTextMm(box);
  const surfaceMm = mm(36);
  const mainLine = strandStrokes["main line"];
  const label = (key: "under" | "lift", place: Point, anchor: "start" | "end") =>
    text(place, kit.words(`drawing.scenes.strike.say.${key}`), textMm, { ink: "soft", anchor });
  const sitting = (hands: Point, held: HeldRod) => [
    ...rodAlong(rodPath(held), { reel: true }),
    ...angler({
      hips: at(10, 36 - bankAbove - hipsShare.sits * tall),
      heightMm: mm(tall),
      hands,
      sits: true,
    }),
  ];
  const scenes: Readonly<Record<StrikeStep, () => Item[]>> = {
    ready: () => {
      const held: HeldRod = { butt: at(11, 22.5), degrees: -12, lengthMm: mm(46) };
      const tip = last(rodPath(held));
      const foot = at(78, 48);
      return [
        pathFrom(tip, [curveTo(at(60, 40), at(68, 50), foot)], mainLine),
        ...sitting(at(18.5, 24), held),
        ...hookedFish(foot, at(80, 57), mm(15)),
        ...smallFloat(rig, foot, mm(9)),
        ...parts.ripples.draw({ at: at(78, 36) }),
        ...arrow(at(85, 40), at(85, 48), accent, 2.6),
        label("under", at(99, 31), "end"),
      ];
    },
    lift: () => {
      const held: HeldRod = { butt: at(12, 24.5), degrees: 48, lengthMm: mm(44), bendDegrees: 80 };
      const tip = last(rodPath(held));
      const mouth = at(80, 55);
      // The float lies on the tight line, under its tip's own weight of water.
      const foot = at(72.5, 45.6);
      return [
        polyline([tip, foot], mainLine),
        ...sitting(at(17, 18.1), held),
        ...hookedFish(foot, mouth, mm(15)),
        ...smallFloat(rig, foot, mm(8)),
        ...arrow(at(36, 25), at(36, 12), accent, 2.6),
        label("lift", at(27, 30), "start"),
      ];
    },
  };
  return stepPictures("strike", strikeSteps, box, kit, (step) => [
    ...bankAndWater(box, surfaceMm, mm(24)),
    ...scenes[step](),
  ]);
}
