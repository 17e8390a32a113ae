import { type Float, lengthMm } from "../../core/float/float.ts";
import { last } from "../../core/lists.ts";
import type { SolvedRig } from "../../model/solved.ts";
import { accent, arrow, circle, type Point, partWay, point, polyline, text } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item } from "../model.ts";
import { anglerArm, anglerBody, anglerHead, hipsShare } from "../scenes/angler.ts";
import { bank, bankAbove } from "../scenes/ground.ts";
import { pointAlong } from "../scenes/path.ts";
import { rodAlong, rodPath } from "../scenes/rod.ts";
import { type Hundredths, hundredths } from "../scenes/step-pictures.ts";
import { strandStrokes } from "../strands.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { baitAt, movable, movingFloat, placed, waterCut } from "./moving.ts";
import { type Finger, handOnReel, largeReel, reelRoom } from "./reel-hand.ts";

const steps = ["hold", "back", "go", "flight", "feather", "stop", "straight"] as const;
type Step = (typeof steps)[number];

/** Where all is at one step, in hundredths of the picture's width. */
interface CastPose {
  /** The rod's end, its way from there up from level, and how far its tip is behind [degrees]. */
  readonly butt: readonly [number, number];
  readonly rodDegrees: number;
  readonly behindDegrees?: number;
  /** The float's eye, and how it is turned from upright [degrees]. */
  readonly eye: readonly [number, number];
  readonly turned: number | "hangs";
  readonly hook: readonly [number, number];
  /** How much lower the line hangs than straight between rod and float; above it below 0. */
  readonly sag?: number;
  readonly finger: Finger;
  /** Where an arrow points which way it flies. */
  readonly flies?: readonly [readonly [number, number], readonly [number, number]];
}

const surface = 52;
const waterFrom = 38;
const pictureFoot = 66;
const rodLength = 40;
/** Head to foot, standing. */
const tall = 20;
const hips = [20, surface - bankAbove - hipsShare.sits * tall] as const;
const floatLength = 9;

/**
 * A float flies with the end first that carries its shot, its tip behind, as the line holds that end back least. Common
 * practice, no source.
 */
const poses: Readonly<Record<Step, CastPose>> = {
  hold: {
    butt: [24, 43.6],
    rodDegrees: 55,
    eye: [46.9, 20],
    turned: "hangs",
    hook: [46.9, 31],
    finger: "holds",
  },
  back: {
    butt: [28.4, 40.4],
    rodDegrees: 118,
    eye: [9.6, 14],
    turned: "hangs",
    hook: [9.6, 24],
    finger: "holds",
  },
  go: {
    butt: [24, 40],
    rodDegrees: 58,
    behindDegrees: 26,
    eye: [60, 6.5],
    turned: -80,
    hook: [50, 11.5],
    finger: "off",
    flies: [
      [65, 7],
      [76, 8],
    ],
  },
  flight: {
    butt: [24, 41],
    rodDegrees: 38,
    eye: [80, 15],
    turned: -62,
    hook: [68.5, 17.5],
    sag: -8,
    finger: "off",
    flies: [
      [85, 17],
      [95, 21.5],
    ],
  },
  feather: {
    butt: [24, 41.5],
    rodDegrees: 32,
    eye: [82, 33],
    turned: -40,
    hook: [93, 29],
    sag: -3,
    finger: "brakes",
    flies: [
      [85, 20],
      [95, 24],
    ],
  },
  stop: { butt: [24, 42], rodDegrees: 24, eye: [83, 58], turned: 0, hook: [96, 51], finger: "stops" },
  straight: {
    butt: [24, 43],
    rodDegrees: 10,
    eye: [83, 58],
    turned: 0,
    hook: [96, 62],
    sag: 3,
    finger: "rests",
  },
};

/** A cast from the hand on the line to the rig that lies out straight; below it the finger and the spool, larger. */
export function castFilm(
  { rig }: SolvedRig,
  _: unknown,
  { widthMm, textMm }: FilmRoom,
  { words }: DrawingKit,
): Film {
  const height = reelRoom.foot;
  const grid = hundredths({ widthMm, heightMm: (height * widthMm) / 100 });
  const { at, mm } = grid;
  const body = { hips: at(...hips), heightMm: mm(tall), sits: true };
  return {
    widthMm,
    heightMm: mm(height),
    title: words("drawing.film.cast.title"),
    description: words("drawing.film.cast.about"),
    still: [
      ...waterCut({
        leftMm: mm(waterFrom),
        rightMm: widthMm,
        surfaceMm: mm(surface),
        footMm: mm(pictureFoot),
      }),
      ...bank({ widthMm, heightMm: mm(pictureFoot) }, mm(surface), mm(waterFrom)),
      ...anglerBody(body),
      ...largeReel(grid),
    ],
    moments: steps.map(
      (step): Moment => ({
        caption: words(`drawing.film.cast.do.${step}`),
        get moving() {
          const { finger } = poses[step];
          const bail = finger === "rests" ? "bail-shut" : "bail-open";
          return [
            ...anglerHead(body, step === "back" ? "back" : "ahead"),
            text(at(2, pictureFoot - 3), words(`drawing.film.cast.name.${step}`), textMm, { face: "bold" }),
            ...casting(rig.float, poses[step], body, grid),
            ...handOnReel(finger, grid),
            text(at(1, height - 1.5), words(`drawing.film.cast.finger.${finger}`), textMm, { ink: "soft" }),
            text(at(72, reelRoom.bail), words(`drawing.film.cast.${bail}`), textMm, { ink: "soft" }),
          ];
        },
      }),
    ),
    strip: [0, 1, 3, 4, 6],
  };
}

/** Rod, arms, line and rig at one step. */
function casting(
  float: Float,
  { butt, rodDegrees, behindDegrees = 0, eye, turned, hook, sag = 0, flies }: CastPose,
  body: { readonly hips: Point; readonly heightMm: number },
  { at, mm }: Hundredths,
): Item[] {
  const path = rodPath({
    butt: at(...butt),
    degrees: rodDegrees,
    lengthMm: mm(rodLength),
    bendDegrees: -behindDegrees,
  });
  const [foot, end] = [at(...eye), at(...hook)];
  const floatMm = lengthMm(float);
  const degrees = turned === "hangs" ? hangingDegrees(float) : turned;
  const holding = [anglerArm(body, at(...butt)), anglerArm(body, pointAlong(path, mm(4.6)))];
  return [
    ...movable(rodAlong(path, { reel: true })),
    ...holding.flatMap((arm) => movable(arm)),
    thread([last(path), foot], mm(sag)),
    ...tail(foot, end),
    ...movingFloat(float, {
      top: point(foot.xMm, foot.yMm - mm(floatLength)),
      scale: mm(floatLength) / floatMm,
      lengthMm: floatMm,
      ...(degrees !== 0 && { lean: { degrees, about: foot } }),
    }),
    ...(flies ? arrow(at(...flies[0]), at(...flies[1]), accent, 2.6) : []),
  ];
}

/** A float that is fixed at its foot alone hangs from it, its tip down beside the line, so far aside that it hides no shot. */
const hangingDegrees = ({ attachment }: Float) => (attachment === "top and bottom" ? 0 : 148);

/** Line from the rod to the float; it hangs through where it is slack, and bows up where it flies. */
function thread([from, to]: readonly [Point, Point], sagMm: number): Item {
  const third = (share: number) =>
    [from.xMm + (to.xMm - from.xMm) * share, from.yMm + (to.yMm - from.yMm) * share + sagMm] as const;
  return {
    kind: "path",
    steps: [
      ["M", from.xMm, from.yMm],
      ["C", ...third(1 / 3), ...third(2 / 3), to.xMm, to.yMm],
    ],
    stroke: strandStrokes["main line"],
  };
}

/** What hangs below the float: two shot and the bait. */
function tail(from: Point, to: Point): Item[] {
  return [
    polyline([from, to], strandStrokes["main line"]),
    ...[0.45, 0.75].map((share) =>
      placed(partWay(from, to, share), [circle(point(0, 0), 0.7, { fill: "ink" })]),
    ),
    baitAt(to),
  ];
}
