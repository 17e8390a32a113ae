import { lengthMm } from "../../core/float/float.ts";
import { loadForTipG } from "../../core/float/tip.ts";
import { last } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { liftBite, lyingShot } from "../float/lift-bite.ts";
import { arrow, circle, type Point, point, rectangle, text } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { rotatedPoint } from "../transform.ts";
import { type Bow, bowed, movingFish } from "./bite-parts.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { movingFloat, placed, shotRadiusMm } from "./moving.ts";
import { flatDegrees, type ShownTip, tipPanel } from "./tip-panel.ts";

const panelMm = 30;
const aboveMm = 30;
/** The line below the float is drawn this long, whatever it is, the part below its lowest shot this long. */
const lineMm = 22;
const belowShotMm = 7;
const underMm = 2.5;
const fishMm = 17;
const baitRadiusMm = 1;

/** How the float, its line and the fish are drawn at one moment, in millimetres of the picture from where all is still. */
interface BitePose {
  readonly tip: ShownTip;
  /** The float's place to the side, and its lean to the right [degrees]. */
  readonly asideMm?: number;
  readonly leanDegrees?: number;
  /** Bait and lowest shot, from where they hang. */
  readonly bait?: Point;
  readonly shot?: Point;
  /** How far the line bows aside, above and below the lowest shot. */
  readonly bows?: readonly [number, number];
  /** Where the fish's nose is from the bait, and how it is turned; none where it is out of the picture. */
  readonly fish?: { readonly off: Point; readonly degrees: number };
}

interface Bite {
  /** What is happening, in a word or two. */
  readonly name: string;
  readonly caption: string;
  readonly strike: boolean;
  readonly pose: BitePose;
}

/**
 * Four bites, one after the other: the float goes under, it lifts, it moves away, and a bait is held on its way down; with
 * the pull or the weight that the sums have for each, and when to strike.
 */
export function bitesFilm(solved: SolvedRig, depth: SolvedDepth, room: FilmRoom, kit: DrawingKit): Film {
  const { words } = kit;
  const { float } = solved.rig;
  const { widthMm, textMm } = room;
  const bites = bitesOf(solved, depth, kit);
  const mostTipMm = Math.max(...bites.map(({ pose }) => pose.tip ?? 0));
  const pictureMm = widthMm - panelMm - 2;
  const surfaceMm = aboveMm + 1.4 * textMm;
  const floatMm = lengthMm(float);
  const scale = Math.min(0.5, aboveMm / Math.max(1, mostTipMm), 26 / floatMm);
  const bedMm = surfaceMm + (floatMm - depth.tipAsSetMm) * scale + lineMm;
  const place = { leftMm: widthMm - panelMm, widthMm: panelMm, surfaceMm, aboveMm, textMm };
  const panel = tipPanel(float, mostTipMm, place, kit);
  const where = { restX: (lyingShot(depth).length > 0 ? 0.4 : 0.5) * pictureMm, surfaceMm, bedMm, scale };
  const moments = bites.map(
    ({ name, caption, strike, pose }): Moment => ({
      caption,
      moving: [
        text(
          point(0, textMm),
          words(strike ? "drawing.film.bites.sign.strike" : "drawing.film.bites.sign.wait", { name }),
          textMm,
          { face: "bold", ...(strike && { ink: "accent" }) },
        ),
        ...(strike
          ? arrow(point(4, surfaceMm - 3), point(4, surfaceMm - 19), { ink: "accent", widthMm: 1.2 }, 3.6)
          : []),
        ...biting(solved, depth, pose, where),
        ...panel.moving(pose.tip),
      ],
    }),
  );
  const strikes = bites.flatMap(({ strike }, i) => (strike ? [i] : []));
  return {
    widthMm,
    heightMm: bedMm + bedThicknessMm + 1.5 * textMm,
    title: words("drawing.film.bites.title", { rig: solved.rig.title }),
    description: words("drawing.film.bites.about"),
    still: [
      rectangle(0, surfaceMm, pictureMm, bedMm - surfaceMm, { fill: "water" }),
      ...parts.waterSurface.draw({ leftMm: 0, rightMm: pictureMm, yMm: surfaceMm }),
      ...parts.bed.draw({ leftMm: 0, rightMm: pictureMm, yMm: bedMm }),
      text(point(0, bedMm + bedThicknessMm + textMm), words("drawing.film.settling.shortened"), textMm, {
        ink: "soft",
      }),
      ...panel.still,
    ],
    moments,
    strip: [0, ...strikes],
  };
}

/** The moments of every bite that this rig can show. */
function bitesOf(solved: SolvedRig, depth: SolvedDepth, kit: DrawingKit): readonly Bite[] {
  const at = (bite: "still" | "under" | "lift" | "away" | "held") =>
    kit.words(`drawing.film.bites.name.${bite}`);
  const still: Bite = {
    name: at("still"),
    caption: kit.words("drawing.film.bites.still", { tip: kit.figures.tip(depth.tipAsSetMm) }),
    strike: false,
    pose: { tip: depth.tipAsSetMm },
  };
  return [
    still,
    ...goingUnder(solved, depth, at("under"), kit),
    ...lifting(solved, depth, at("lift"), kit),
    ...movingAway(solved, depth, at("away"), kit),
    ...held(solved, depth, at("held"), kit),
  ];
}

/** Head down, as fish feed from the bed. */
const atBait = { off: point(0.5, 0), degrees: -20 } as const;

const level = { ...atBait, degrees: -6 } as const;

/** The pull that leaves so much less tip [g]. */
function pullToG({ rig }: SolvedRig, { tipAsSetMm }: SolvedDepth, tipMm: Mm): number {
  const loadG = (showingMm: Mm) => loadForTipG(rig.float, showingMm, rig.conditions);
  return loadG(tipMm) - loadG(tipAsSetMm);
}

function goingUnder(
  solved: SolvedRig,
  depth: SolvedDepth,
  name: string,
  { words, figures }: DrawingKit,
): readonly Bite[] {
  const { tipAsSetMm: tip } = depth;
  const half = tip / 2;
  const pull = (tipMm: Mm) => figures.mass(pullToG(solved, depth, tipMm));
  const begins = { name, caption: words("drawing.film.bites.under.begins"), strike: false };
  return [
    { ...begins, pose: { tip, fish: atBait } },
    {
      name,
      caption: words("drawing.film.bites.under.half", { pull: pull(half) }),
      strike: false,
      pose: { tip: half, bait: point(-2, 0), fish: { ...atBait, degrees: -26 } },
    },
    {
      name,
      caption: words("drawing.film.bites.under.gone", { pull: pull(0) }),
      strike: true,
      pose: { tip: null, asideMm: -1.5, bait: point(-6, 0), fish: { ...atBait, degrees: -30 } },
    },
  ];
}

function lifting(
  solved: SolvedRig,
  depth: SolvedDepth,
  name: string,
  { words, figures }: DrawingKit,
): readonly Bite[] {
  const bite = liftBite(solved, depth);
  // Of several shot on the bed the picture has the lowest alone.
  if (!bite || (bite.isLying && bite.lifted !== depth.lineShot[0])) return [];
  const { tipMm, baitTipMm, lifted, isLying } = bite;
  const shot = lifted.size;
  const upMm = belowShotMm + 4;
  const told =
    tipMm === undefined
      ? words("drawing.film.bites.lift.flat", { shot })
      : words("drawing.film.bites.lift.up", {
          shot,
          tip: figures.tip(tipMm),
          before: figures.tip(depth.tipAsSetMm),
        });
  return [
    {
      name,
      caption: words(isLying ? "drawing.film.bites.lift.lies" : "drawing.film.bites.lift.bait", {
        tip: figures.tip(baitTipMm),
        shot,
      }),
      strike: false,
      pose: { tip: baitTipMm, bait: point(0, -5), bows: [0, 2.5], fish: { ...atBait, degrees: 8 } },
    },
    {
      name,
      caption: told,
      strike: true,
      pose: {
        tip: tipMm,
        bait: point(1, -upMm - belowShotMm),
        shot: point(1, -upMm + 4),
        bows: [3, 0],
        fish: { ...atBait, degrees: 22 },
      },
    },
  ];
}

function movingAway(
  solved: SolvedRig,
  depth: SolvedDepth,
  name: string,
  { words, figures }: DrawingKit,
): readonly Bite[] {
  const tip = depth.tipAsSetMm / 2;
  const pull = figures.mass(pullToG(solved, depth, tip));
  return [
    {
      name,
      caption: words("drawing.film.bites.away.begins"),
      strike: false,
      pose: { tip: depth.tipAsSetMm, bait: point(-4, -1), asideMm: -0.5, leanDegrees: 3, fish: level },
    },
    {
      name,
      caption: words("drawing.film.bites.away.goes", { pull }),
      strike: true,
      pose: {
        tip,
        asideMm: -7,
        leanDegrees: 14,
        bait: point(-15, -2),
        shot: point(-11, -1),
        fish: level,
      },
    },
  ];
}

/** A bait taken on its way down: what should have come onto the float does not. */
function held(
  solved: SolvedRig,
  depth: SolvedDepth,
  name: string,
  { words, figures }: DrawingKit,
): readonly Bite[] {
  const bite = liftBite(solved, depth);
  const [sink] = depth.inWater?.sink ?? [];
  if (!bite || !sink || bite.tipMm === undefined || bite.isLying) return [];
  const { tipMm: tip, lifted } = bite;
  const time = figures.time(last(sink.line.moments).timeS);
  const values = { shot: lifted.size, time, tip: figures.tip(tip), right: figures.tip(depth.tipAsSetMm) };
  const falling = { tip, bait: point(11, -belowShotMm - 8), shot: point(6, -6), bows: [0, 0] } as const;
  return [
    { name, caption: words("drawing.film.bites.held.falls", values), strike: false, pose: falling },
    {
      name,
      caption: words("drawing.film.bites.held.stays", values),
      strike: true,
      pose: { tip, bait: point(6, -belowShotMm - 4), shot: point(2, -3), bows: [1.5, 1.5], fish: level },
    },
  ];
}

interface BiteRoom {
  readonly restX: number;
  readonly surfaceMm: number;
  readonly bedMm: number;
  readonly scale: number;
}

const nowhere = point(0, 0);

/** Float, line, lowest shot, bait and fish at one moment. */
function biting(
  { rig }: SolvedRig,
  depth: SolvedDepth,
  { tip, asideMm = 0, leanDegrees = 0, bait = nowhere, shot = nowhere, bows = [0, 0], fish }: BitePose,
  { restX, surfaceMm, bedMm, scale }: BiteRoom,
): Item[] {
  const floatMm = lengthMm(rig.float);
  const isFlat = tip === undefined;
  const shownMm = isFlat ? floatMm / 2 : (tip ?? -underMm / scale);
  const water = point(restX + asideMm, surfaceMm);
  const top = point(water.xMm, surfaceMm - shownMm * scale);
  const foot = point(water.xMm, top.yMm + floatMm * scale);
  const degrees = isFlat ? flatDegrees : leanDegrees;
  const eye = rotatedPoint(foot, degrees, water);
  const lowest = depth.lineShot[0];
  const lies = lyingShot(depth).length > 0;
  const radiusMm = lowest ? shotRadiusMm(lowest.diameterMm) : 0;
  const baitAt = moved(point(restX + (lies ? belowShotMm : 0), bedMm - baitRadiusMm - 0.3), bait);
  const shotAt = moved(point(restX, bedMm - (lies ? radiusMm + 0.3 : belowShotMm)), shot);
  const bow = ([from, to]: readonly [Point, Point], asideMm: Bow) => bowed(from, to, asideMm);
  return [
    ...(fish ? movingFish(moved(baitAt, fish.off), fishMm, fish.degrees) : []),
    { kind: "path", steps: bow([eye, shotAt], bows[0]), stroke: strandStrokes["main line"] },
    { kind: "path", steps: bow([shotAt, baitAt], bows[1]), stroke: strandStrokes["hook length"] },
    ...movingFloat(rig.float, {
      top,
      scale,
      lengthMm: floatMm,
      ...(degrees !== 0 && { lean: { degrees, about: water } }),
    }),
    ...(tip === null ? [placed(water, parts.ripples.draw({ at: nowhere }))] : []),
    ...(lowest ? [placed(shotAt, [circle(nowhere, radiusMm, { fill: "ink" })])] : []),
    placed(baitAt, [circle(nowhere, baitRadiusMm, { fill: "accent" })]),
  ];
}

const moved = (at: Point, by: Point) => point(at.xMm + by.xMm, at.yMm + by.yMm);
