import { last } from "../../core/lists.ts";
import type { Rig } from "../../model/rig.ts";
import { accent, arrow, curveTo, type Point, pathFrom, polyline, text } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item } from "../model.ts";
import { strandStrokes } from "../strands.ts";
import { rotated } from "../transform.ts";
import { angler, hipsShare } from "./angler.ts";
import { bankAbove, bankAndWater } from "./ground.ts";
import { pointAlong } from "./path.ts";
import { rigEnd } from "./rig-end.ts";
import { rod, rodAlong, rodPath } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { floatInAir, smallFloat } from "./small-float.ts";
import { hundredths, stepPictures } from "./step-pictures.ts";
import { wholeFish } from "./whole-fish.ts";

const whipSteps = ["hold", "swing", "lie", "hand"] as const;
type WhipStep = (typeof whipSteps)[number];

/** Height of the angler. */
const tall = 22;

/** A whip's line is nearly as long as the whip in every step: swung out, laid down, and a fish swung to the hand. */
export function drawWhip(rig: Rig, box: Box, kit: DrawingKit): Drawing[] {
  const { at, mm } = hundredths(box);
  const textMm = sceneTextMm(box);
  const surfaceMm = mm(50);
  const grip = at(15.4, 39.4);
  /** A hand's breadth up the whip from its end. */
  const handOn = (tip: Point) => pointAlong([grip, tip], mm(4));
  const hands: Readonly<Record<WhipStep, Point>> = {
    hold: handOn(at(47, 14)),
    swing: handOn(at(45, 12)),
    lie: handOn(at(55, 46)),
    hand: at(17, 37),
  };
  /** Where the hand is that holds line or fish. */
  const free: Partial<Record<WhipStep, Point>> = { hold: at(24, 38), swing: at(26, 38), hand: at(26, 36.5) };

  const label = (key: WhipStep, place: Point, anchor: "start" | "middle" | "end" = "start") =>
    text(place, kit.words(`drawing.scenes.whip.say.${key}`), textMm, { ink: "soft", anchor });
  const mainLine = strandStrokes["main line"];
  const scenes: Readonly<Record<WhipStep, () => Item[]>> = {
    hold: () => {
      const tip = at(47, 14);
      const hand = at(24, 38);
      const float = pointAlong([hand, tip], mm(10));
      return [
        ...rod(grip, tip),
        pathFrom(tip, [curveTo(at(39.6, 22.4), at(32, 30.4), hand)], mainLine),
        ...rotated(smallFloat(rig, float, mm(7)), 43, float),
        ...rigEnd(hand, at(24.6, 42)),
        label("hold", at(52, 30)),
      ];
    },
    swing: () => {
      const tip = at(45, 12);
      const float = at(57, 30);
      return [
        ...rod(grip, tip),
        polyline([tip, float], mainLine),
        // In flight the float lies along the line.
        ...rotated(smallFloat(rig, float, mm(7)), -34, float),
        ...rigEnd(float, at(63, 39)),
        ...arrow(at(70, 42), at(86, 37), accent, 2.6),
        label("swing", at(66, 30)),
      ];
    },
    lie: () => {
      const tip = at(55, 46);
      const foot = at(80, 56);
      return [
        ...rod(grip, tip),
        // To the rubber under the float's tip, and down along it.
        pathFrom(tip, [curveTo(at(64, 50), at(74, 50), at(80, 51))], mainLine),
        ...smallFloat(rig, foot, mm(9)),
        ...rigEnd(foot, at(80, 60)),
        label("lie", at(58, 42)),
      ];
    },
    hand: () => {
      const upright = rodPath({ butt: at(17, 41), degrees: 92, lengthMm: mm(37), bendDegrees: 34 });
      const tip = last(upright);
      const mouth = at(27, 36.5);
      return [
        ...rodAlong(upright),
        polyline([tip, mouth], mainLine),
        ...floatInAir(rig, pointAlong([mouth, tip], mm(11)), tip, mm(7)),
        ...wholeFish(mouth, mm(11)),
        label("hand", at(44, 30)),
      ];
    },
  };
  return stepPictures("whip", whipSteps, box, kit, (step) => [
    ...bankAndWater(box, surfaceMm, mm(26)),
    ...scenes[step](),
    ...angler({
      hips: at(11, 50 - bankAbove - hipsShare.sits * tall),
      heightMm: mm(tall),
      hands: hands[step],
      sits: true,
      ...(free[step] && { otherHand: free[step] }),
    }),
  ]);
}
