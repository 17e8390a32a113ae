import type { WordKeyIn } from "../../words/words.ts";
import {
  bold,
  circle,
  type Point,
  point,
  polygon,
  polyline,
  rectangle,
  text,
  thin,
  thinSoft,
} from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item } from "../model.ts";
import { strandStrokes } from "../strands.ts";
import { rod } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { type Hundredths, hundredths } from "./step-pictures.ts";

/** Rod rings from the reel to the tip, in hundredths of the width. */
const rings = [34, 48, 60, 71, 81, 90, 97];
const rodY = 17;
const gripEnd = 27;
const reelX = 19;

/** Parts of the reel: what its word stands beside and where the word goes, in hundredths of the width. */
const reelParts = {
  handle: { part: [22, 70], word: [14, 82], anchor: "middle" },
  "bail-arm": { part: [64, 43.4], word: [72, 41], anchor: "start" },
  spool: { part: [58.5, 57], word: [78, 53.5], anchor: "start" },
  clutch: { part: [68, 60], word: [78, 65], anchor: "start" },
  "anti-reverse": { part: [40.4, 69], word: [47, 77], anchor: "start" },
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
  const rodMiddle = (x: number) => at(x, rodY);
  const reelFoot = at(reelX, rodY);
  return [
    rectangle(mm(4), mm(rodY - 1.3), mm(gripEnd - 4), mm(2.6), { fill: "paper", stroke: bold }),
    ...rod(rodMiddle(gripEnd), rodMiddle(99)),
    polyline([reelFoot, at(reelX, rodY + 3)], bold),
    circle(at(reelX - 0.4, rodY + 4.6), mm(1.9), { fill: "paper", stroke: bold }),
    rectangle(mm(reelX + 1.4), mm(rodY + 3), mm(3.2), mm(3.2), { fill: "paper", stroke: thin }),
    polyline(
      [at(reelX + 4.6, rodY + 3.4), ...rings.map((x) => at(x, rodY + 1.6))],
      strandStrokes["main line"],
    ),
    ...rings.map((x) => circle(at(x, rodY + 1.2), mm(0.9), { stroke: thin })),
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
    name("grip", 4, 8, "start"),
    polyline([at(8, 9.5), at(8, rodY - 1.8)], thinSoft),
    name("rings", 60, 8, "middle"),
    ...[48, 60, 71].map((x) => polyline([at(60 + (x - 60) * 0.35, 9.5), at(x, rodY - 0.9)], thinSoft)),
    name("tip", 99, 8, "end"),
    polyline([at(97, 9.5), at(98, rodY - 0.9)], thinSoft),
    name("reel", 29, 26, "start"),
    polyline([at(28.4, 25), at(reelX + 5, rodY + 5.2)], thinSoft),
  ];
}

/** Seen from the side, spool towards the rod tip. */
function largeReel({ at, mm }: Hundredths): Item[] {
  const stem = [at(35, 39), at(39, 39), at(38, 50), at(33, 50)];
  const cone = (from: Point, to: Point, half: number) => [
    point(from.xMm, from.yMm - mm(half)),
    point(to.xMm, to.yMm - mm(half * 0.72)),
    point(to.xMm, to.yMm + mm(half * 0.72)),
    point(from.xMm, from.yMm + mm(half)),
  ];
  return [
    rectangle(0, mm(35), mm(62), mm(2.6), { fill: "ink" }),
    rectangle(mm(26), mm(37.6), mm(22), mm(1.6), { fill: "paper", stroke: bold }),
    polygon(stem, "paper", bold),
    // Crank and knob.
    polyline([at(33, 58), at(25, 69)], { ink: "ink", widthMm: Math.max(0.9, mm(1.4)), cap: "round" }),
    rectangle(mm(20), mm(67), mm(5.4), mm(5.4), { fill: "paper", stroke: bold }),
    // Lever of the anti-reverse, body, the rotor that carries the bail arm, spool with line on it, clutch knob.
    polyline([at(38, 64), at(40.4, 69)], { ink: "ink", widthMm: Math.max(0.7, mm(1.1)), cap: "round" }),
    circle(at(35, 57), mm(8.4), { fill: "paper", stroke: bold }),
    polygon(cone(at(41, 57), at(49, 57), 9.4), "paper", bold),
    rectangle(mm(49), mm(49.6), mm(2), mm(14.8), { fill: "paper", stroke: bold }),
    rectangle(mm(51), mm(51.2), mm(12), mm(11.6), { fill: "paper", stroke: thin }),
    ...[53, 55, 57, 59, 61].map((x) => polyline([at(x, 51.2), at(x, 62.8)], thin)),
    rectangle(mm(63), mm(49.6), mm(2), mm(14.8), { fill: "paper", stroke: bold }),
    rectangle(mm(65), mm(54.4), mm(4), mm(5.2), { fill: "ink" }),
    bailArm({ at, mm }),
    polyline([at(63, 51.2), at(72, 47), at(99, 40)], strandStrokes["main line"]),
  ];
}

/** The wire hoop, over the lip of the spool. */
function bailArm({ at }: Hundredths): Item {
  const [a, b, c, d] = [at(47, 48.4), at(50, 42), at(67, 40), at(69.6, 50)];
  return {
    kind: "path",
    steps: [
      ["M", a.xMm, a.yMm],
      ["C", b.xMm, b.yMm, c.xMm, c.yMm, d.xMm, d.yMm],
    ],
    stroke: { ink: "accent", widthMm: 0.8, cap: "round" },
  };
}

function reelNames({ at, mm }: Hundredths, textMm: number, { words }: DrawingKit): Item[] {
  return (Object.keys(reelParts) as (keyof typeof reelParts)[]).flatMap((key) => {
    const { part, word, anchor } = reelParts[key];
    const [x, y] = word;
    const tip = at(part[0], part[1]);
    const from = anchor === "middle" ? at(x + 3, y - 5) : at(x - 1, y - 1.4);
    return [
      text(at(x, y), words(`drawing.scenes.rod-and-reel.${key}`), textMm, { face: "bold", anchor }),
      polyline([from, tip], thinSoft),
      circle(tip, Math.max(0.4, mm(0.5)), { fill: "ink" }),
    ];
  });
}
