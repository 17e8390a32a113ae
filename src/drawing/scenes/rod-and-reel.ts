import type { WordKeyIn } from "../../words/words.ts";
import { bold, circle, point, polygon, polyline, rectangle, text, thin, thinSoft } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item } from "../model.ts";
import { smooth } from "../smooth.ts";
import { strandStrokes } from "../strands.ts";
import { largeReel } from "./large-reel.ts";
import { rod } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { type Hundredths, hundredths } from "./step-pictures.ts";

/** Rod rings from the reel to the tip, in hundredths of the width. */
const rings = [36, 50, 62, 73, 83, 91.5, 98];
const rodY = 15;
const gripEnd = 27;
const reelX = 19;

/** Parts of the reel: what its word stands beside and where the word goes, in hundredths of the width. */
const reelParts = {
  rotor: { part: [47, 68.4], word: [45, 84], anchor: "start" },
  handle: { part: [24, 69.6], word: [3, 88], anchor: "start" },
  "anti-reverse": { part: [37.6, 71.6], word: [24, 92.5], anchor: "start" },
  roller: { part: [66.2, 46.6], word: [70, 43.4], anchor: "start" },
  "bail-arm": { part: [80.3, 60], word: [99.4, 54.5], anchor: "end" },
  spool: { part: [62, 60], word: [70, 79], anchor: "start" },
  clutch: { part: [75, 61.4], word: [83, 69], anchor: "start" },
} as const;

/** A rod with its reel on, and the reel again larger, with their parts named. */
export function drawRodAndReel(box: Box, kit: DrawingKit): Drawing {
  const { words } = kit;
  const grid = hundredths(box);
  return {
    ...box,
    title: words("drawing.scenes.rod-and-reel.title"),
    description: words("drawing.scenes.rod-and-reel.do.parts"),
    items: [
      ...wholeRod(grid),
      ...rodNames(grid, sceneTextMm(box), kit),
      ...largeReel(grid),
      ...reelNames(grid, sceneTextMm(box), kit),
    ],
  };
}

function wholeRod({ at, mm }: Hundredths): Item[] {
  const seat = at(reelX, rodY);
  return [
    ...rod(at(gripEnd, rodY), at(99, rodY)),
    polygon(
      smooth(
        [
          at(3, rodY),
          at(3.6, rodY - 1.4),
          at(gripEnd - 2, rodY - 1.4),
          at(gripEnd + 1, rodY),
          at(gripEnd - 2, rodY + 1.4),
          at(3.6, rodY + 1.4),
        ],
        true,
      ),
      "paper",
      bold,
    ),
    polyline([seat, at(reelX, rodY + 3.4)], bold),
    polygon(
      smooth(
        [
          at(reelX - 3.4, rodY + 5),
          at(reelX - 2, rodY + 3),
          at(reelX + 1.4, rodY + 3.2),
          at(reelX + 1.4, rodY + 6.8),
          at(reelX - 2, rodY + 7),
        ],
        true,
      ),
      "paper",
      bold,
    ),
    rectangle(mm(reelX + 1.4), mm(rodY + 3), mm(3.4), mm(4), { fill: "paper", stroke: thin }),
    polyline(
      [at(reelX + 4.8, rodY + 3.4), ...rings.map((x) => at(x, rodY + 1.8))],
      strandStrokes["main line"],
    ),
    ...rings.map((x) => circle(at(x, rodY + 1.4), mm(0.9), { stroke: thin })),
  ];
}

function rodNames({ at }: Hundredths, textMm: number, { words }: DrawingKit): Item[] {
  const name = (
    key: WordKeyIn<"drawing.scenes.rod-and-reel">,
    x: number,
    y: number,
    anchor: "start" | "middle" | "end",
  ) => text(at(x, y), words(`drawing.scenes.rod-and-reel.${key}`), textMm, { face: "bold", anchor });
  return [
    name("grip", 4, 7, "start"),
    polyline([at(8, 8.4), at(8, rodY - 1.8)], thinSoft),
    name("rings", 62, 7, "middle"),
    ...[50, 62, 73].map((x) => polyline([at(62 + (x - 62) * 0.35, 8.4), at(x, rodY - 0.9)], thinSoft)),
    name("tip", 99, 7, "end"),
    polyline([at(98, 8.4), at(98.4, rodY - 0.9)], thinSoft),
    name("reel", 29, 26, "start"),
    polyline([at(28.4, 24.8), at(reelX + 5, rodY + 6)], thinSoft),
  ];
}

function reelNames({ at, mm }: Hundredths, textMm: number, { words }: DrawingKit): Item[] {
  return (Object.keys(reelParts) as (keyof typeof reelParts)[]).flatMap((key) => {
    const { part, word, anchor } = reelParts[key];
    const [x, y] = word;
    const tip = at(part[0], part[1]);
    const below = y > part[1];
    const beside = anchor === "end" ? x - 12 : x + 3;
    const downMm = below ? -0.85 * textMm : 0.3 * textMm;
    const from =
      below || anchor === "end" ? point(mm(beside), mm(y) + downMm) : point(mm(x - 1), mm(y) - 0.2 * textMm);
    return [
      text(at(x, y), words(`drawing.scenes.rod-and-reel.${key}`), textMm, { face: "bold", anchor }),
      polyline([from, tip], thinSoft),
      circle(tip, Math.max(0.4, mm(0.5)), { fill: "ink" }),
    ];
  });
}
