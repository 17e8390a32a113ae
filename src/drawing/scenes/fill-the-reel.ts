import type { WordKeyIn } from "../../words/words.ts";
import {
  accent,
  arrow,
  bold,
  circle,
  curveTo,
  type Point,
  pathFrom,
  polygon,
  polyline,
  rectangle,
  text,
  thin,
  thinSoft,
} from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item } from "../model.ts";
import { smooth } from "../smooth.ts";
import { strandStrokes } from "../strands.ts";
import { verdictMark } from "../verdict.ts";
import { sceneTextMm } from "./scene-text.ts";
import { hundredths, stepPictures } from "./step-pictures.ts";

const fillSteps = ["noose", "wind", "level"] as const;
type FillStep = (typeof fillSteps)[number];

/** How full a spool is: the line's half thickness as a share of the rim's. */
const levels = { little: 0.5, right: 0.88, much: 1.12 } as const;

/** Filling a reel: the line tied on with a noose, wound on under a wet cloth, and how full the spool should be. */
export function drawFillTheReel(box: Box, kit: DrawingKit): Drawing[] {
  const { at, mm } = hundredths(box);
  const textMm = sceneTextMm(box);
  const label = (
    key: WordKeyIn<"drawing.scenes.fill.say">,
    place: Point,
    anchor: "start" | "middle" | "end" = "middle",
  ) => text(place, kit.words(`drawing.scenes.fill.say.${key}`), textMm, { ink: "soft", anchor });
  const mainLine = strandStrokes["main line"];

  /** A spool from the side, its front rim to the right; `full` is how far the line on it reaches to the rim. */
  const spool = (x: number, y: number, half: number, full: number, turns = [2, 4, 6, 8, 10]): Item[] => {
    const top = y - half * full;
    const bottom = y + half * full;
    return [
      rectangle(mm(x), mm(top), mm(12), mm(bottom - top), { fill: "paper", stroke: thin }),
      ...turns.map((step) => polyline([at(x + step, top), at(x + step, bottom)], thinSoft)),
      ...[x - 2, x + 12].map((left) =>
        rectangle(mm(left), mm(y - half), mm(2), mm(2 * half), { fill: "paper", stroke: bold }),
      ),
    ];
  };

  /** A cloth hung over the line and pinched together on it, wet: drops fall from it. */
  const cloth = (): Item[] => [
    polygon(
      smooth(
        [
          at(42, 11.6),
          at(45, 10.8),
          at(48, 12),
          at(49.6, 17),
          at(51.4, 24),
          at(47.6, 22.6),
          at(45, 25),
          at(42.4, 22.6),
          at(38.6, 24),
          at(40.6, 17),
        ],
        true,
      ),
      "paper",
      bold,
    ),
    polyline([at(43.6, 13.4), at(42.6, 20.6)], thin),
    polyline([at(46.4, 13.4), at(47.2, 20.4)], thin),
    ...(
      [
        [41, 27.4],
        [45.4, 28.6],
        [49.4, 27],
      ] as const
    ).map(([x, y]) => circle(at(x, y), mm(0.7), { fill: "ink" })),
  ];

  const scenes: Readonly<Record<FillStep, () => Item[]>> = {
    // A bare spool with the noose once round it, and the knot that it runs through.
    noose: () => {
      const knot = at(52, 21);
      return [
        ...spool(28, 24, 14, 0.35, []),
        polyline([at(33, 19), at(33, 29)], mainLine),
        pathFrom(at(33, 19), [curveTo(at(36, 16), at(46, 18), knot)], mainLine),
        pathFrom(at(33, 29), [curveTo(at(36, 32), at(46, 26), knot)], mainLine),
        circle(knot, Math.max(0.9, mm(1.2)), { fill: "ink" }),
        polyline([knot, at(96, 14)], mainLine),
        ...arrow(at(70, 24), at(90, 21), accent, 2.6),
        label("noose", at(60, 33), "start"),
        label("spool", at(35, 45)),
      ];
    },
    // The shop's spool on a pencil, a hand with a cloth, the reel.
    wind: () => [
      circle(at(16, 22), mm(11), { fill: "paper", stroke: bold }),
      circle(at(16, 22), mm(8), { stroke: thinSoft }),
      circle(at(16, 22), mm(1.6), { fill: "ink" }),
      label("new", at(16, 41)),
      ...arrow(at(4.6, 13), at(9, 8.4), accent, 2.6),
      ...spool(74, 24, 9, levels.right),
      // Over the rim of the reel, down on to the line that is on it.
      polyline([at(16, 11), at(73.6, 14.7), at(80, 16.1)], mainLine),
      ...cloth(),
      label("cloth", at(45, 34)),
      ...arrow(at(56, 9), at(69, 9.8), accent, 2.6),
      label("reel", at(80, 41)),
    ],
    level: () => [
      ...([10, 44, 78] as const).flatMap((x, i) => {
        const key = (["little", "right", "much"] as const)[i]!;
        return [
          ...spool(x, 20, 12, levels[key]),
          ...verdictMark(key === "right" ? "right" : "wrong", at(x + 6, 20), mm(3.6)),
          label(key, at(x + 6, 41)),
        ];
      }),
      // Line that rubs on the rim, line that lifts clear of it, loops that fall off.
      pathFrom(at(22, 14), [curveTo(at(23, 9), at(25, 7), at(34, 5))], mainLine),
      polyline([at(56, 9.6), at(68, 5)], mainLine),
      pathFrom(at(90, 7), [curveTo(at(99, 3), at(99, 14), at(92.4, 16))], mainLine),
      pathFrom(at(90, 12), [curveTo(at(98, 14), at(98, 28), at(92.4, 30))], mainLine),
    ],
  };
  return stepPictures("fill", fillSteps, box, kit, (step) => scenes[step]());
}
