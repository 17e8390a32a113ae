import { topMm } from "../../core/float/profile.ts";
import { first, paired } from "../../core/lists.ts";
import type { SolvedRig, SolvedShot } from "../../model/solved.ts";
import {
  bold,
  circle,
  ellipse,
  type Point,
  point,
  polygon,
  polyline,
  text,
  thin,
  thinSoft,
} from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { placeInOrder } from "../labels/label-placement.ts";
import { layLabel, paintLabel } from "../labels/label-text.ts";
import type { Drawing, Item } from "../model.ts";
import { floatEyeRadiusMm } from "../parts/float-body.ts";
import { parts } from "../parts/parts.ts";
import { leastShotRadiusMm } from "../parts/shot.ts";
import { smooth } from "../smooth.ts";
import { strandStrokes } from "../strands.ts";
import { heldFloat } from "./held-float.ts";
import { type Hold, holdOf, type MakeUpStep, makeUpSteps } from "./make-up.ts";
import { drawPiece } from "./make-up-details.ts";
import { sceneTextMm } from "./scene-text.ts";

/** The whole rig takes this share of the width, its details the rest. */
const stripShare = 0.24;
/** Of its own room the whole rig hangs so far to the right: its numbers stand left of it, away from those of the details. */
const rigShare = 0.68;
/** A picture wider than this has its details four abreast, else three [mm]. */
const wideMm = 84;
const gapMm = 1.3;
const hookMm = 3.4;
const floatWideMm = 2.8;
/** Of the lock shot off the float's eye, above it and below. */
const lockOffMm = 2;
/** Of the line that runs down beside the float. */
const lineAsideMm = 2.1;

/** Where the line from the rod passes a float, down to its eye. */
const besideFloat = ({ xMm, yMm }: Point, lengthMm: number): Point[] =>
  [1.15 * lengthMm, 0.6 * lengthMm, lockOffMm].map((upMm) => point(xMm - lineAsideMm, yMm - upMm));

/** Where on the whole rig each step is at work, as shares of its height. */
const heldPlaces: Readonly<Record<MakeUpStep, number>> = {
  rings: 0.08,
  "stop-knot": 0.145,
  bead: 0.21,
  rubbers: 0.3,
  float: 0.3,
  hold: 0.3,
  lock: 0.3,
  shot: 0.56,
  loop: 0.74,
  "hook-length": 0.74,
  plummet: 0.93,
};

/** A float that slides hangs below its stop knot and bead. */
const placesOf = (hold: Hold): typeof heldPlaces =>
  hold === "stop-knot" ? { ...heldPlaces, float: 0.42 } : heldPlaces;

/**
 * The numbers of what is done at one float stand apart, by shares of the height: at its body, and at its foot above and
 * below the eye; or at its upper rubber and its middle.
 */
const numberPlaces = (hold: Hold): typeof heldPlaces => {
  const places = placesOf(hold);
  const { float, rubbers, lock } = places;
  return hold === "rubbers"
    ? { ...places, rubbers: rubbers - 0.07 }
    : { ...places, float: float - 0.1, hold: float - 0.02, lock: lock + 0.06 };
};

/**
 * A rig taken apart on one sheet: at the left the whole of it with a number at each place, beside it each step in the
 * order of making up, larger, in a circle. As high as its circles need.
 */
export function drawMakeUp(
  solved: SolvedRig,
  { widthMm }: { readonly widthMm: number },
  kit: DrawingKit,
): Drawing {
  const { words, measure } = kit;
  const steps = makeUpSteps(solved);
  const textMm = sceneTextMm({ widthMm, heightMm: 0 });
  const columns = widthMm > wideMm ? 4 : 3;
  const left = stripShare * widthMm;
  const slotMm = (widthMm - left) / columns;
  const radiusMm = (slotMm - gapMm) / 2;
  const laid = steps.map((step) =>
    layLabel([{ text: words(`drawing.scenes.make-up.part.${step}`) }], slotMm - 1, textMm, measure),
  );
  const labelMm = Math.max(...laid.map(({ heightMm }) => heightMm));
  const badgeMm = badgeEms * textMm;
  const headMm = badgeMm * 0.75;
  const rowMm = headMm + 2 * radiusMm + labelMm + gapMm;
  const heightMm = Math.ceil(steps.length / columns) * rowMm;
  return {
    widthMm,
    heightMm,
    title: words("drawing.scenes.make-up.title", { rig: solved.rig.title }),
    description: words("drawing.scenes.make-up.description", { steps: steps.length }),
    items: [
      ...wholeRig(solved, { xMm: rigShare * left, heightMm }),
      ...numbers(steps, holdOf(solved.rig), { xMm: rigShare * left, heightMm, textMm }),
      ...paired(steps, laid).flatMap(([step, label], index) => {
        const middle = point(
          left + ((index % columns) + 0.5) * slotMm,
          Math.floor(index / columns) * rowMm + headMm + radiusMm + 0.4,
        );
        // In the corner, on the rim.
        const cornerMm = Math.SQRT1_2 * (radiusMm + badgeMm);
        return [
          { kind: "path", steps: ellipse(middle, radiusMm, radiusMm), fill: "paper", stroke: bold } as const,
          ...badge(index + 1, point(middle.xMm - cornerMm, middle.yMm - cornerMm), textMm),
          ...drawPiece(step, solved, { middle, unit: radiusMm / 10 }),
          ...paintLabel(
            label,
            middle.xMm,
            middle.yMm + radiusMm + label.heightMm / 2 + 0.4,
            measure,
            "middle",
          ),
        ];
      }),
    ],
  };
}

/** The rig hanging from the tip of the rod, not to scale. */
function wholeRig(solved: SolvedRig, { xMm, heightMm }: { xMm: number; heightMm: number }): Item[] {
  const { rig, depths } = solved;
  const hold = holdOf(rig);
  const places = placesOf(hold);
  const y = (step: MakeUpStep) => places[step] * heightMm;
  const at = (yMm: number) => point(xMm, yMm);
  const lengthMm = 0.16 * heightMm;
  const foot = at(y("float"));
  const hookAt = at(y("plummet"));
  const { lineShot, lockShot } = first(depths);
  const heaviest = Math.max(0, ...lockShot.map(({ diameterMm }) => diameterMm));
  return [
    polygon([at(0.4), point(0, 2.6), point(0, 3.6), point(xMm, 1.2)], "ink"),
    circle(at(1.6), 1.1, { stroke: { ink: "ink", widthMm: 0.35 } }),
    ...floatOnLine(solved, { top: at(1.6), foot, lengthMm, end: at(y("loop")) }),
    polyline([at(y("loop")), at(hookAt.yMm - hookMm)], strandStrokes["hook length"]),
    ...(hold === "stop-knot"
      ? [
          ...parts.stopKnot.draw({ at: at(y("stop-knot")), turnedDegrees: 90 }),
          circle(at(y("bead")), 0.9, { fill: "paper", stroke: { ink: "ink", widthMm: 0.35 } }),
        ]
      : []),
    ...(heaviest > 0
      ? [point(xMm - lineAsideMm, foot.yMm - lockOffMm), at(foot.yMm + lockOffMm)].flatMap((place) =>
          parts.shot.draw({ at: place, radiusMm: Math.max(leastShotRadiusMm, 0.28 * heaviest) }),
        )
      : []),
    ...shotPlaces(lineShot, solved, [y("float") + lengthMm * 0.7, y("loop") - 2.6]).map(([yMm, radiusMm]) =>
      circle(at(yMm), radiusMm, { fill: "ink" }),
    ),
    ...parts.loopJoin.draw({ at: at(y("loop")), heightMm: 4 }),
    ...parts.hook.draw({ bend: hookAt, heightMm: hookMm }),
    ...takenOff(hookAt),
  ];
}

/** The outline of the plummet round the hook, which is on it for a while alone. */
function takenOff({ xMm, yMm }: Point): Item[] {
  const [high, low] = [yMm - 1.1 * hookMm, yMm + 0.35 * hookMm];
  const bell = [point(xMm - 1, high), point(xMm + 1.4, high), point(xMm + 2.9, low), point(xMm - 2.5, low)];
  return [polyline([...bell, first(bell)], { ...thinSoft, dashMm: [0.7, 0.6] })];
}

/** The float and the line, which runs down from the rod and on to the loop. */
function floatOnLine(
  { rig }: SolvedRig,
  { top, foot, lengthMm, end }: { top: Point; foot: Point; lengthMm: number; end: Point },
): Item[] {
  const hold = holdOf(rig);
  if (hold === "rubbers") {
    const low = point(foot.xMm, foot.yMm + lengthMm / 2);
    const { line, items, rubbers } = heldFloat(rig, { foot: low, lengthMm, widthMm: floatWideMm });
    return [...items, polyline([top, ...line, low, end], strandStrokes["main line"]), ...rubbers];
  }
  const { profile, tipShowingMm } = rig.float;
  // Beside a float that the line runs through at its foot alone.
  const down = hold === "stop-knot" ? [top, foot] : smooth([top, ...besideFloat(foot, lengthMm), foot]);
  return [
    polyline(down, strandStrokes["main line"]),
    polyline([foot, end], strandStrokes["main line"]),
    ...parts.floatBody.draw({
      profile,
      tipMm: Math.max(tipShowingMm, topMm(profile) * 0.12),
      loadMm: 0,
      eye: true,
      at: point(foot.xMm, foot.yMm - floatEyeRadiusMm),
      lengthScale: lengthMm / topMm(profile),
      widthScale: floatWideMm / Math.max(...profile.map(({ diameterMm }) => diameterMm)),
    }),
  ];
}

/** Shot of the main line between two heights, each to its share of the line; as many as there is room for. */
function shotPlaces(
  shot: readonly SolvedShot[],
  { rig, depths }: SolvedRig,
  [topMm, footMm]: readonly [number, number],
): (readonly [number, number])[] {
  const { floatToHookMm } = first(depths);
  return shot
    .filter(({ fromHookMm }) => fromHookMm > rig.hookLengthMm)
    .map(({ fromHookMm, diameterMm }) => {
      const share = (fromHookMm - rig.hookLengthMm) / (floatToHookMm - rig.hookLengthMm);
      const radiusMm = Math.min(1.2, Math.max(leastShotRadiusMm, 0.2 * diameterMm));
      return [footMm - share * (footMm - topMm), radiusMm] as const;
    });
}

/** The ring round a number, in ems: clear of its figure. */
const badgeEms = 0.76;

/** The number of a step in a ring, the same at its place and at its detail. */
function badge(number: number, at: Point, textMm: number): Item[] {
  const radiusMm = badgeEms * textMm;
  return [
    { kind: "path", steps: ellipse(at, radiusMm, radiusMm), fill: "paper", stroke: thin },
    text(point(at.xMm, at.yMm + 0.3 * textMm), String(number), textMm, {
      face: "bold",
      anchor: "middle",
    }),
  ];
}

/** The numbers stand below the rod. */
const rodFootMm = 3.8;
/** How far from the rig's line the leader of a number ends: at the float's side, or just beside the line. */
const leaderOffMm = { float: 0.5 * floatWideMm + 0.1, line: 0.6 } as const;
const besideShotMm = 1.4;

/** Where the leader of a number ends; of the shot that lock a float at the upper of the first two, and at the lower. */
function leaderEnd(step: MakeUpStep, { xMm, yMm }: Point, footMm: number): Point {
  switch (step) {
    // On the rod, above.
    case "rings":
      return point(0.7 * xMm, 2.4);
    case "float":
      return point(xMm - leaderOffMm.float, yMm);
    case "hold":
      return point(xMm - lineAsideMm - besideShotMm, footMm - lockOffMm);
    case "lock":
      return point(xMm - besideShotMm, footMm + lockOffMm);
    default:
      return point(xMm - leaderOffMm.line, yMm);
  }
}

/** The number of each step beside the rig, a line from its place to it; steps at one place stand below each other. */
function numbers(
  steps: readonly MakeUpStep[],
  hold: Hold,
  { xMm, heightMm, textMm }: { xMm: number; heightMm: number; textMm: number },
): Item[] {
  const places = numberPlaces(hold);
  const radiusMm = badgeEms * textMm;
  const numberX = radiusMm + 0.2;
  const numbered = steps
    .map((step, index) => ({ number: index + 1, step, atMm: places[step] * heightMm }))
    .toSorted((a, b) => a.atMm - b.atMm);
  const sizeMm = 2 * radiusMm;
  const wanted = numbered.map(({ atMm }) => ({ atMm, sizeMm }));
  const found = placeInOrder(wanted, rodFootMm, heightMm, 0.35) ?? numbered.map(({ atMm }) => atMm);
  return paired(numbered, found).flatMap(([{ number, step, atMm }, yMm]) => {
    const to = leaderEnd(step, point(xMm, atMm), placesOf(hold)[step] * heightMm);
    return [
      polyline([point(numberX + radiusMm, yMm), to], thinSoft),
      ...badge(number, point(numberX, yMm), textMm),
    ];
  });
}
