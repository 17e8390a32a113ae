import { lengthMm } from "../../core/float/float.ts";
import { paired } from "../../core/lists.ts";
import type { SolvedRig } from "../../model/solved.ts";
import { arrow, circle, type Point, point, polyline, rectangle, text, thin } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item, Stroke } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { bank } from "../scenes/ground.ts";
import { rod } from "../scenes/rod.ts";
import { strandStrokes } from "../strands.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { hand } from "./hand.ts";
import { movingFloat, placed } from "./moving.ts";

const steps = ["hold", "back", "go", "flight", "feather", "stop", "straight"] as const;
type Step = (typeof steps)[number];

type Finger = "holds" | "off" | "brakes" | "stops";

/** Rod, float and the end of the line, in hundredths of the picture's width. */
interface CastPose {
  readonly rodTip: readonly [number, number];
  /** The float's foot, and its lean to the right. */
  readonly float: readonly [number, number, number];
  readonly hook: readonly [number, number];
  /** How high the line bows between rod and float. */
  readonly bow: number;
  readonly finger: Finger;
  readonly flies?: boolean;
}

const butt = [10, 30] as const;
const surface = 42;
const reelTop = 64;
const height = 104;

const poses: Readonly<Record<Step, CastPose>> = {
  hold: { rodTip: [30, 13], float: [31, 27, 0], hook: [31, 37], bow: 0, finger: "holds" },
  back: { rodTip: [3, 8], float: [4, 20, 0], hook: [4, 27], bow: 0, finger: "holds" },
  go: { rodTip: [31, 16], float: [47, 17, 80], hook: [38, 16], bow: -1, finger: "off", flies: true },
  flight: { rodTip: [31, 18], float: [64, 16, 100], hook: [54, 13], bow: -7, finger: "off", flies: true },
  feather: { rodTip: [31, 20], float: [76, 30, 60], hook: [84, 24], bow: -2, finger: "brakes", flies: true },
  stop: { rodTip: [31, 21], float: [79, 50, 0], hook: [94, 41], bow: 0, finger: "stops" },
  straight: { rodTip: [31, 24], float: [79, 50, 0], hook: [94, 54], bow: 4, finger: "stops" },
};

/** A cast from the hand on the line to the rig that lies out straight; below it the finger and the spool, larger. */
export function castFilm(
  { rig }: SolvedRig,
  _: unknown,
  { widthMm, textMm }: FilmRoom,
  { words }: DrawingKit,
): Film {
  const unit = widthMm / 100;
  const at = (x: number, y: number) => point(x * unit, y * unit);
  const floatMm = lengthMm(rig.float);
  const moments = steps.map((step): Moment => {
    const { rodTip, float, hook, bow, finger, flies } = poses[step];
    const [tip, foot, end] = [at(...rodTip), at(float[0], float[1]), at(...hook)];
    const scale = (10 * unit) / floatMm;
    return {
      caption: words(`drawing.film.cast.do.${step}`),
      moving: [
        ...rod(at(...butt), tip),
        thread([tip, foot], bow * unit),
        ...tail(foot, end),
        ...movingFloat(rig.float, {
          top: point(foot.xMm, foot.yMm - 10 * unit),
          scale,
          lengthMm: floatMm,
          ...(float[2] !== 0 && { lean: { degrees: float[2], about: foot } }),
        }),
        ...(flies ? arrow(at(float[0] + 8, float[1] - 8), at(float[0] + 18, float[1] - 5), accent, 2.6) : []),
        ...fingerOnSpool(finger, at, unit),
      ],
    };
  });
  return {
    widthMm,
    heightMm: height * unit,
    title: words("drawing.film.cast.title"),
    description: words("drawing.film.cast.about"),
    still: [
      rectangle(18 * unit, surface * unit, 82 * unit, 13 * unit, { fill: "water" }),
      ...parts.waterSurface.draw({ leftMm: 18 * unit, rightMm: widthMm, yMm: surface * unit }),
      ...bank({ widthMm, heightMm: (surface + 13) * unit }, surface * unit, 18 * unit),
      ...reel(at, unit),
      text(at(1, height - 1.5), words("drawing.film.cast.spool"), textMm, { ink: "soft" }),
    ],
    moments,
    strip: [0, 3, 4, 5, 6],
  };
}

const accent: Stroke = { ink: "accent", widthMm: 0.9 };

/** Line from the rod to the float; it bows down where it hangs, and up where it flies. */
function thread([from, to]: readonly [Point, Point], bowMm: number): Item {
  const third = (share: number) =>
    [from.xMm + (to.xMm - from.xMm) * share, from.yMm + (to.yMm - from.yMm) * share + bowMm] as const;
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
  const on = (share: number) =>
    point(from.xMm + (to.xMm - from.xMm) * share, from.yMm + (to.yMm - from.yMm) * share);
  return [
    polyline([from, to], strandStrokes["main line"]),
    ...[0.45, 0.75].map((share) => placed(on(share), [circle(point(0, 0), 0.7, { fill: "ink" })])),
    placed(to, [circle(point(0, 0), 1, { fill: "accent" })]),
  ];
}

/** The rod's handle with the reel below it: its foot, the spool and its rim, which is on the left. */
function reel(at: (x: number, y: number) => Point, unit: number): Item[] {
  const box = (x: number, y: number, width: number, high: number, fill: "paper" | "soft" | "faint") =>
    rectangle(x * unit, (reelTop + y) * unit, width * unit, high * unit, { fill, stroke: thin });
  return [
    polyline([at(2, reelTop + 6), at(98, reelTop + 6)], { ink: "ink", widthMm: 2.6 * unit }),
    box(55, 7, 4, 8, "faint"),
    box(44, 15, 28, 12, "faint"),
    box(33, 13, 11, 16, "paper"),
    box(30, 11, 3, 20, "soft"),
  ];
}

/** Finger tips on the picture of the reel, and where the line goes from there. */
const fingers: Readonly<Record<Finger, { tip: readonly [number, number]; line: readonly [number, number] }>> =
  {
    holds: { tip: [36, 8.4], line: [2, 8.6] },
    off: { tip: [27, 5], line: [2, 17] },
    brakes: { tip: [31, 10.2], line: [2, 12] },
    stops: { tip: [32, 12.2], line: [2, 10] },
  };

/** The hand round the rod at the reel's foot, its forefinger on the line or on the rim of the spool. */
function fingerOnSpool(finger: Finger, at: (x: number, y: number) => Point, unit: number): Item[] {
  const { tip, line } = fingers[finger];
  const on = (x: number, y: number) => at(x, reelTop + y);
  const grip = paired([52, 60, 66], [9, 9.5, 9]).map(([x, foot]) => ({
    from: on(x, 0.5),
    through: [on(x - 0.8, 3), on(x - 0.8, 6)] as const,
    to: on(x, foot),
    widthMm: 5 * unit,
  }));
  const fore = {
    from: on(50, 1),
    through: [on(44, -1), on((tip[0] + 42) / 2, tip[1] - 4)] as const,
    to: on(...tip),
    widthMm: 4.4 * unit,
  };
  const back = {
    from: on(50, 0),
    through: [on(58, -1), on(70, -1)] as const,
    to: on(93, 3),
    widthMm: 9 * unit,
  };
  return [
    // From the spool over the finger where it holds the line, else off the rim towards the first ring.
    polyline(
      [on(33, 14), finger === "holds" ? on(36, 11) : on(30, 12), on(...line)],
      strandStrokes["main line"],
    ),
    ...hand([back, ...grip, fore]),
  ];
}
