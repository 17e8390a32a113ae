import type { WordKeyIn } from "../../words/words.ts";
import { arrow, bold, type Point, polyline, text, thin } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item } from "../model.ts";
import { angler } from "./angler.ts";
import { ground } from "./ground.ts";
import { rod } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { hundredths } from "./step-pictures.ts";

/**
 * Least distance from overhead wires to a rod [mm]; published safety advice of the electricity networks in the United
 * Kingdom.
 */
const wiresAwayMm = 30_000;

/** Fish well away from overhead wires, and carry the rod flat under them. */
export function drawWires(box: Box, kit: DrawingKit): Drawing {
  const { at, mm } = hundredths(box);
  const { words, figures } = kit;
  const textMm = sceneTextMm(box);
  const away = figures.shortDepth(wiresAwayMm);
  const groundY = 46;
  const label = (key: WordKeyIn<"drawing.scenes.wires">, place: Point, anchor: "start" | "middle" | "end") =>
    text(place, words(`drawing.scenes.wires.${key}`, { away }), textMm, { face: "bold", anchor });
  const pole = (x: number): Item[] => [
    polyline([at(x, groundY), at(x, 8)], { ink: "ink", widthMm: 1.2 }),
    polyline([at(x - 4, 11), at(x + 4, 11)], bold),
  ];
  const measureY = groundY + 6;
  return {
    ...box,
    title: words("drawing.scenes.wires.title"),
    description: words("drawing.scenes.wires.do", { away }),
    items: [
      ...ground([at(0, groundY), at(100, groundY)]),
      ...pole(12),
      // Wires run towards and away from the reader: from the side each is a point on its arm, so they sag off the page.
      ...[8, 16].map((x): Item => {
        const [from, bend, to] = [at(x, 11), at(x - 4, 20), at(x - 8, 16)];
        return {
          kind: "path",
          steps: [
            ["M", from.xMm, from.yMm],
            ["C", bend.xMm, bend.yMm, bend.xMm, bend.yMm, to.xMm, to.yMm],
          ],
          stroke: thin,
        };
      }),
      label("wires", at(18, 8), "start"),
      ...angler({ hips: at(27, 34.5), heightMm: mm(24), hands: at(32, 33), sits: false }),
      ...rod(at(20, 33.4), at(52, 32.4)),
      label("flat", at(36, 40), "start"),
      ...angler({ hips: at(86, 34.5), heightMm: mm(24), hands: at(91, 29), sits: false }),
      ...rod(at(89, 31), at(99, 5)),
      ...arrow(at(49, measureY), at(12, measureY), thin, 2),
      ...arrow(at(49, measureY), at(86, measureY), thin, 2),
      label("away", at(49, measureY + 6), "middle"),
    ],
  };
}
