import type { WordKeyIn } from "../../words/words.ts";
import { arrow, bold, type Point, polygon, polyline, text, thin } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, PathStep } from "../model.ts";
import { verdictMark } from "../verdict.ts";
import { angler, hipsShare } from "./angler.ts";
import { bankAbove, bankAndWater } from "./ground.ts";
import { rod } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { type Hundredths, hundredths } from "./step-pictures.ts";

/**
 * Least distance from overhead wires to a rod [mm]; published safety advice of the electricity networks in the United
 * Kingdom.
 */
const wiresAwayMm = 30_000;

const groundY = 48;
/** The two poles that carry the wires, and where the distance from them is shortened. */
const poles = [4, 46];
const breakX = 60;
const shoreX = 97;
/** Height of the people. */
const tall = 22;

/** Fish well away from overhead wires, and carry the rod flat under them, never raised. */
export function drawWires(box: Box, kit: DrawingKit): Drawing {
  const grid = hundredths(box);
  const { at, mm } = grid;
  const { words, figures } = kit;
  const textMm = sceneTextMm(box);
  const away = figures.shortDepth(wiresAwayMm);
  const label = (key: WordKeyIn<"drawing.scenes.wires">, place: Point, anchor: "start" | "middle" | "end") =>
    text(place, words(`drawing.scenes.wires.${key}`, { away }), textMm, { face: "bold", anchor });
  const measureY = groundY + 6;
  const [standing, sitting] = [groundY - hipsShare.stands * tall, groundY - hipsShare.sits * tall];
  return {
    ...box,
    title: words("drawing.scenes.wires.title"),
    description: words("drawing.scenes.wires.do", { away }),
    items: [
      ...bankAndWater(box, mm(groundY + bankAbove), mm(shoreX)),
      ...overhead(grid),
      label("wires", at(25, 6.5), "middle"),
      // Raised under the wires: wrong.
      ...rod(at(12, 36), at(21.5, 15.5)),
      ...angler({ hips: at(11, standing), heightMm: mm(tall), hands: at(14.4, 30.8), sits: false }),
      ...verdictMark("wrong", at(24, 22.5), mm(3.4)),
      // Carried flat.
      ...rod(at(25, 36.2), at(44.4, 35.5)),
      ...angler({ hips: at(32, standing), heightMm: mm(tall), hands: at(36, 35.8), sits: false }),
      ...verdictMark("right", at(40, 29), mm(3.4)),
      label("flat", at(23.6, 57), "middle"),
      ...shortened(grid),
      ...rod(at(72, 38.5), at(98.5, 36), { reel: true }),
      ...angler({ hips: at(72, sitting), heightMm: mm(tall), hands: at(77.5, 38), sits: true }),
      ...arrow(at(breakX, measureY), at(46, measureY), thin, 2),
      ...arrow(at(breakX, measureY), at(74, measureY), thin, 2),
      ...breakMark(grid, measureY),
      label("away", at(breakX, measureY + 6.5), "middle"),
    ],
  };
}

/** Two poles with their arms, insulators and three sagging wires between them. */
function overhead({ at, mm }: Hundredths): Item[] {
  const armY = 11;
  const sag = (from: Point, to: Point, downMm: number): Item => {
    const steps: PathStep[] = [
      ["M", from.xMm, from.yMm],
      [
        "C",
        from.xMm + (to.xMm - from.xMm) / 3,
        from.yMm + downMm,
        from.xMm + (2 * (to.xMm - from.xMm)) / 3,
        to.yMm + downMm,
        to.xMm,
        to.yMm,
      ],
    ];
    return { kind: "path", steps, stroke: thin };
  };
  const [left = 0, right = 0] = poles;
  return [
    ...poles.flatMap((x) => [
      polyline([at(x, groundY), at(x, 8.5)], { ink: "ink", widthMm: 1.3 }),
      polyline([at(x - 3.6, armY), at(x + 3.6, armY)], bold),
      ...[-3, 3].map((aside) => polyline([at(x + aside, armY), at(x + aside, armY - 1.6)], bold)),
    ]),
    // They end at the pole that the distance is measured from: none hangs over whoever fishes.
    ...[-3, 3].map((aside) => sag(at(left + aside, armY - 1.6), at(right + aside, armY - 1.6), mm(5))),
  ];
}

/** The ground left out between the wires and whoever fishes: not to scale. */
function shortened({ at }: Hundredths): Item[] {
  const edge = (x: number) => [at(x + 1.4, groundY - 4), at(x - 1.4, groundY + 3.4)] as const;
  const [a, b] = edge(breakX - 1.3);
  const [c, d] = edge(breakX + 1.3);
  return [polygon([a, b, d, c], "paper"), polyline([a, b], thin), polyline([c, d], thin)];
}

function breakMark({ at }: Hundredths, y: number): Item[] {
  const [a, b] = [at(breakX - 1.6, y - 1.6), at(breakX - 2.6, y + 1.6)];
  const [c, d] = [at(breakX + 2.6, y - 1.6), at(breakX + 1.6, y + 1.6)];
  return [polygon([a, b, d, c], "paper"), polyline([a, b], thin), polyline([c, d], thin)];
}
