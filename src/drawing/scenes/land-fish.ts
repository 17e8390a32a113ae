import { last } from "../../core/lists.ts";
import type { Rig } from "../../model/rig.ts";
import type { WordKeyIn } from "../../words/words.ts";
import { accent, arrow, curveTo, ellipse, type Point, pathFrom, point, polyline, text } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, PathItem } from "../model.ts";
import { strandStrokes } from "../strands.ts";
import { rotated } from "../transform.ts";
import { angler, hipsShare } from "./angler.ts";
import { bankAbove, bankAndWater } from "./ground.ts";
import { pointAlong } from "./path.ts";
import { type HeldRod, rodAlong, rodPath } from "./rod.ts";
import { sceneTextMm } from "./scene-text.ts";
import { floatInAir, smallFloat } from "./small-float.ts";
import { type Hundredths, hundredths, stepPictures } from "./step-pictures.ts";
import { wholeFish } from "./whole-fish.ts";

const landSteps = ["play", "sink-net", "lift-net"] as const;
type LandStep = (typeof landSteps)[number];

/** Height of the angler. */
const tall = 22;
const rodMm = 42;
/** From the fish up to the float. */
const lineBelowMm = 10;

/** Landing a fish: the bent rod tires it, the net is sunk and still, the fish comes over its rim head first. */
export function drawLandFish(rig: Rig, box: Box, kit: DrawingKit): Drawing[] {
  const grid = hundredths(box);
  const { at, mm } = grid;
  const textMm = sceneTextMm(box);
  const surfaceMm = mm(42);

  const label = (
    key: WordKeyIn<"drawing.scenes.land.say">,
    place: Point,
    anchor: "start" | "middle" | "end" = "start",
  ) => text(place, kit.words(`drawing.scenes.land.say.${key}`), textMm, { ink: "soft", anchor });
  const swimming = (nose: Point, degrees: number) => rotated(wholeFish(nose, mm(20)), degrees, nose);
  /** Somebody on the bank with a rod bent to the fish, and with the net where one hand is free for it. */
  const playing = (held: Omit<HeldRod, "lengthMm">, hands: Point, nose: Point, net?: Point): Item[] => {
    const path = rodPath({ ...held, lengthMm: mm(rodMm) });
    const tip = last(path);
    const float = pointAlong([nose, tip], mm(lineBelowMm));
    const isUnder = float.yMm > surfaceMm;
    return [
      polyline([tip, nose], strandStrokes["main line"]),
      ...(isUnder ? smallFloat(rig, float, mm(8)) : floatInAir(rig, float, tip, mm(8))),
      ...rodAlong(path, { reel: true }),
      ...angler({
        hips: at(9, 42 - bankAbove - hipsShare.sits * tall),
        heightMm: mm(tall),
        hands,
        sits: true,
        ...(net && { otherHand: net }),
      }),
    ];
  };

  const scenes: Readonly<Record<LandStep, () => Item[]>> = {
    play: () => {
      const nose = at(70, 52);
      return [
        ...playing({ butt: at(12, 33), degrees: 62, bendDegrees: 112 }, at(16, 25.6), nose),
        ...swimming(nose, 10),
        ...arrow(at(76, 46), at(88, 48.5), accent, 2.6),
        label("play", at(64, 10)),
      ];
    },
    "sink-net": () => {
      const nose = at(56, 43);
      const grip = at(18.5, 31);
      return [
        ...playing({ butt: at(13.6, 34), degrees: 76, bendDegrees: 128 }, at(15.4, 26.6), nose, grip),
        ...net(grid, grip, 50),
        ...swimming(nose, 4),
        ...arrow(at(72, 37), at(61, 37), accent, 2.6),
        label("head", at(99, 35), "end"),
        label("sunk", at(68, 58)),
      ];
    },
    "lift-net": () => {
      const nose = at(41, 45);
      const grip = at(18.5, 30);
      return [
        ...playing({ butt: at(13, 34), degrees: 88, bendDegrees: 132 }, at(13.4, 26.6), nose, grip),
        ...swimming(nose, 3),
        ...net(grid, grip, 44),
        ...arrow(at(67, 52), at(67, 43.5), accent, 2.6),
        label("lift", at(70, 51)),
      ];
    },
  };
  return stepPictures("land", landSteps, box, kit, (step) => [
    ...bankAndWater(box, surfaceMm, mm(24)),
    ...scenes[step](),
  ]);
}

/** A landing net held from the bank, its rim at a height: handle, rim seen from a little above, meshes of its bag. */
function net({ at, mm }: Hundredths, grip: Point, rim: number): Item[] {
  const [left, right] = [at(37, rim), at(65, rim)];
  const middle = (left.xMm + right.xMm) / 2;
  const half = (right.xMm - left.xMm) / 2;
  const deep = mm(13);
  const rimMm = left.yMm;
  const bagY = (share: number) => rimMm + deep * Math.sqrt(Math.max(0, 1 - share * share));
  const mesh: PathItem[] = [-0.75, -0.45, -0.15, 0.15, 0.45, 0.75].flatMap((share) =>
    [-0.3, 0.3].map(
      (lean): PathItem => ({
        kind: "path",
        steps: [
          ["M", middle + share * half, rimMm + 0.6],
          ["L", middle + (share + lean) * half * 0.92, bagY(Math.min(0.98, Math.abs(share + lean))) * 0.999],
        ],
        stroke: { ink: "faint", widthMm: 0.35 },
      }),
    ),
  );
  const bag = pathFrom(
    left,
    [
      curveTo(
        point(left.xMm + mm(2), rimMm + 1.32 * deep),
        point(right.xMm - mm(2), rimMm + 1.32 * deep),
        right,
      ),
    ],
    { ink: "soft", widthMm: 0.5 },
  );
  const hoop: PathItem = {
    kind: "path",
    steps: ellipse(point(middle, rimMm), half, mm(2.2)),
    stroke: { ink: "ink", widthMm: 0.8 },
  };
  return [...mesh, bag, hoop, polyline([grip, left], { ink: "ink", widthMm: 1.1, cap: "round" })];
}
