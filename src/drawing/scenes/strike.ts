import type { Rig } from "../../model/rig.ts";
import { arrow, text } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, PathStep } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { angler } from "./angler.ts";
import { bank } from "./ground.ts";
import { rod } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { smallFloat } from "./small-float.ts";
import { hundredths, stepPictures } from "./step-pictures.ts";

const strikeSteps = ["ready", "lift"] as const;
type StrikeStep = (typeof strikeSteps)[number];

/** The strike: rod low and line nearly straight while you wait, then one firm lift that takes up the slack. */
export function drawStrike(rig: Rig, box: Box, kit: DrawingKit): Drawing[] {
  const { at, mm } = hundredths(box);
  const textMm = sceneTextMm(box);
  const surfaceMm = mm(36);
  const hands = at(19, 24);
  const low = at(58, 33);
  const high = at(53, 11);
  const eye = at(86, 48);

  const line = (steps: readonly PathStep[]): Item => ({
    kind: "path",
    steps,
    stroke: strandStrokes["main line"],
  });
  const scenes: Readonly<Record<StrikeStep, () => Item[]>> = {
    ready: () => [
      ...rod(hands, low),
      line([
        ["M", low.xMm, low.yMm],
        ["C", at(64, 46).xMm, at(64, 46).yMm, at(74, 50).xMm, at(74, 50).yMm, eye.xMm, eye.yMm],
      ]),
      ...arrow(at(92, 40), at(92, 49), { ink: "accent", widthMm: 0.9 }, 2.6),
      text(at(99, 29), kit.words("drawing.scenes.strike.say.under"), textMm, { ink: "soft", anchor: "end" }),
    ],
    lift: () => [
      ...rod(hands, high, at(40, 10)),
      line([
        ["M", high.xMm, high.yMm],
        ["L", eye.xMm, eye.yMm],
      ]),
      ...arrow(at(60, 30), at(60, 12), { ink: "accent", widthMm: 0.9 }, 2.6),
      text(at(64, 14), kit.words("drawing.scenes.strike.say.lift"), textMm, { ink: "soft" }),
    ],
  };
  return stepPictures("strike", strikeSteps, box, kit, (step) => [
    ...bank(box, surfaceMm, mm(24)),
    ...parts.waterSurface.draw({ leftMm: mm(24), rightMm: box.widthMm, yMm: surfaceMm }),
    ...angler({ hips: at(10, 27), heightMm: mm(22), hands, sits: true }),
    ...scenes[step](),
    ...smallFloat(rig, eye, mm(9)),
    ...parts.ripples.draw({ at: at(86, 36) }),
  ]);
}
