import type { WordKeyIn } from "../../words/words.ts";
import { arrow, type Point, polyline, text } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, PathItem } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { rotated } from "../transform.ts";
import { angler } from "./angler.ts";
import { fish } from "./fish.ts";
import { bank } from "./ground.ts";
import { rod } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { type Hundredths, hundredths, stepPictures } from "./step-pictures.ts";

const landSteps = ["play", "sink-net", "lift-net"] as const;
type LandStep = (typeof landSteps)[number];

const accent = { ink: "accent", widthMm: 0.9 } as const;

/** Landing a fish: the bent rod tires it, the net is sunk and still, the fish comes over its rim head first. */
export function drawLandFish(box: Box, kit: DrawingKit): Drawing[] {
  const grid = hundredths(box);
  const { at, mm } = grid;
  const textMm = sceneTextMm(box);
  const surfaceMm = mm(38);
  const hands = at(18, 26);
  const tip = at(56, 12);
  const bentTowards = at(34, 2);

  const label = (
    key: WordKeyIn<"drawing.scenes.land.say">,
    place: Point,
    anchor: "start" | "middle" | "end" = "start",
  ) => text(place, kit.words(`drawing.scenes.land.say.${key}`), textMm, { ink: "soft", anchor });
  const lineTo = (nose: Point) => polyline([tip, nose], strandStrokes["main line"]);
  const swimming = (nose: Point, degrees: number) => rotated(fish(nose, mm(18)), degrees, nose);

  const scenes: Readonly<Record<LandStep, () => Item[]>> = {
    play: () => [
      lineTo(at(74, 47)),
      ...swimming(at(74, 47), 12),
      ...arrow(at(80, 44), at(90, 46), accent, 2.6),
      label("play", at(60, 9)),
    ],
    "sink-net": () => [
      ...net(grid, 46),
      lineTo(at(60, 37)),
      ...swimming(at(60, 37), 6),
      ...arrow(at(80, 33), at(68, 33), accent, 2.6),
      label("sunk", at(66, 53)),
      label("head", at(99, 31), "end"),
    ],
    "lift-net": () => [
      ...swimming(at(41, 43), 4),
      ...net(grid, 42),
      ...arrow(at(66, 47), at(66, 39), accent, 2.6),
      label("lift", at(69, 46)),
    ],
  };
  return stepPictures("land", landSteps, box, kit, (step) => [
    ...bank(box, surfaceMm, mm(24)),
    ...parts.waterSurface.draw({ leftMm: mm(24), rightMm: box.widthMm, yMm: surfaceMm }),
    ...angler({ hips: at(9, 29), heightMm: mm(22), hands, sits: true }),
    ...(step === "lift-net" ? [] : rod(hands, tip, bentTowards)),
    ...scenes[step](),
  ]);
}

/** A landing net held from the bank, its rim at a height: rim, meshes, handle. */
function net({ at, mm }: Hundredths, rim: number): Item[] {
  const [left, right] = [at(38, rim), at(62, rim)];
  const bag: PathItem = {
    kind: "path",
    steps: [
      ["M", left.xMm, left.yMm],
      ["C", left.xMm + mm(2), left.yMm + mm(13), right.xMm - mm(2), right.yMm + mm(13), right.xMm, right.yMm],
    ],
    stroke: { ink: "soft", widthMm: 0.5, dashMm: [1, 0.7] },
  };
  return [
    bag,
    polyline([left, right], { ink: "ink", widthMm: 0.9 }),
    polyline([at(15, 27), left], { ink: "ink", widthMm: 1.2, cap: "round" }),
  ];
}
