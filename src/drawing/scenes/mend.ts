import type { WordKeyIn } from "../../words/words.ts";
import { accent, arrow, circle, curveTo, type Point, pathFrom, rectangle, text, thin } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { type Verdict, verdictMark } from "../verdict.ts";
import { anglerFromAbove, bankFromAbove } from "./from-above.ts";
import { rod } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { hundredths, stepPictures } from "./step-pictures.ts";

const mendSteps = ["bow", "lift", "mended"] as const;
type MendStep = (typeof mendSteps)[number];
/** Which way the line is right. */
const verdicts: Readonly<Record<MendStep, readonly Verdict[]>> = {
  bow: ["wrong"],
  lift: [],
  mended: ["right"],
};

/** Mending the line, seen from above: the stream bows the line, the rod lifts it, it lies upstream of the float. */
export function drawMend(box: Box, kit: DrawingKit): Drawing[] {
  const { at, mm } = hundredths(box);
  const { words } = kit;
  const textMm = sceneTextMm(box);
  const butt = at(26, 45);
  const float = at(58, 12);

  const label = (
    key: WordKeyIn<"drawing.scenes.mend.say">,
    place: Point,
    anchor: "start" | "middle" | "end",
  ) => text(place, words(`drawing.scenes.mend.say.${key}`), textMm, { ink: "soft", anchor });
  const lineTo = (tip: Point, a: Point, b: Point) =>
    pathFrom(tip, [curveTo(a, b, float)], strandStrokes["main line"]);

  const scenes: Readonly<Record<MendStep, () => Item[]>> = {
    bow: () => {
      const tip = at(34, 32);
      return [lineTo(tip, at(84, 34), at(84, 20)), ...rod(butt, tip), label("bow", at(78, 32), "start")];
    },
    lift: () => {
      const tip = at(30, 29);
      return [
        { ...lineTo(tip, at(84, 34), at(84, 20)), stroke: { ink: "faint", widthMm: 0.5, dashMm: [1, 1] } },
        lineTo(tip, at(36, 18), at(46, 12)),
        ...rod(butt, tip),
        ...arrow(at(72, 26), at(48, 22), accent, 2.6),
        label("lift", at(70, 35), "start"),
      ];
    },
    mended: () => {
      const tip = at(27, 29);
      return [lineTo(tip, at(24, 10), at(42, 6)), ...rod(butt, tip), label("mended", at(30, 8), "end")];
    },
  };

  return stepPictures("mend", mendSteps, box, kit, (step) => [
    rectangle(0, 0, mm(100), mm(42), { fill: "water" }),
    ...bankFromAbove([at(0, 42), at(50, 41.6), at(100, 42)], box, [at(16, 0).xMm, at(34, 0).xMm]),
    ...(
      [
        [80, 8],
        [2, 18],
        [2, 30],
      ] as const
    ).flatMap(([x, y]) => parts.flowArrow.draw({ from: at(x, y), lengthMm: mm(14) })),
    ...scenes[step](),
    ...anglerFromAbove(at(25, 44.8), mm(1.3)),
    circle(float, 1.1, { fill: "accent", stroke: thin }),
    label("float", at(60, 7.5), "start"),
    label("stream", at(80, 5.5), "start"),
    ...verdicts[step].flatMap((verdict) => verdictMark(verdict, at(94, 37))),
  ]);
}
