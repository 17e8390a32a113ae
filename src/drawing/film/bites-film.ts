import { lengthMm } from "../../core/float/float.ts";
import { toldTipMm } from "../../core/float/tip.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { lyingShot } from "../float/lift-bite.ts";
import { arrow, circle, type Point, point, polyline, text, thin, thinSoft } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item, Stroke } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { strandStrokes } from "../strands.ts";
import { rotatedPoint } from "../transform.ts";
import { type Bow, bowed, movingFish } from "./bite-parts.ts";
import { type BitePose, belowShotMm, bitesOf } from "./bites.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { baitAt, baitRadiusMm, movingFloat, placed, rodEnd, shotRadiusMm, waterOverBed } from "./moving.ts";
import { besidePanelMm, flatDegrees, mostOf, tipPanel } from "./tip-panel.ts";

const aboveMm = 30;
/** The line below the float is drawn this long, whatever it is. */
const lineMm = 22;
const underMm = 2.5;
const fishMm = 17;
/** A float that goes further aside than this has left its place (left below 0). */
const seenAsideMm = -2;
const stood: Stroke = { ...thinSoft, dashMm: [1.2, 0.8] };

/**
 * The bites that the rig's float shows, one after the other: it goes under, it lifts, it moves away, and a bait is held on its
 * way down; with the pull or the weight that the sums have for each, and when to strike.
 */
export function bitesFilm(solved: SolvedRig, depth: SolvedDepth, room: FilmRoom, kit: DrawingKit): Film {
  const { words } = kit;
  const { float } = solved.rig;
  const { widthMm, textMm } = room;
  const bites = bitesOf(solved, depth, kit);
  const tips = bites.map(({ pose }) => pose.tip);
  const pictureMm = besidePanelMm(room);
  const surfaceMm = aboveMm + 1.4 * textMm;
  const floatMm = lengthMm(float);
  const scale = Math.min(0.5, aboveMm / Math.max(1, mostOf(tips)), 26 / floatMm);
  const bedMm = surfaceMm + (floatMm - depth.tipAsSetMm) * scale + lineMm;
  const panel = tipPanel(float, tips, room, { surfaceMm, aboveMm }, kit);
  const unbitten = { tipMm: toldTipMm(depth.tipAsSetMm), said: words("drawing.film.bites.unbitten") };
  const where = { restX: (lyingShot(depth).length > 0 ? 0.4 : 0.5) * pictureMm, surfaceMm, bedMm, scale };
  const wanted = ({ tipMm, said }: NonNullable<BitePose["wanted"]>) => panel.wanted(tipMm, said);
  const moments = bites.map(
    ({ name, caption, strike, pose }): Moment => ({
      caption,
      get moving() {
        return [
          text(
            point(0, textMm),
            words(strike ? "drawing.film.bites.sign.strike" : "drawing.film.bites.sign.wait", { name }),
            textMm,
            { face: "bold", ...(strike && { ink: "accent" }) },
          ),
          ...(strike
            ? arrow(point(4, surfaceMm - 5), point(4, surfaceMm - 19), { ink: "accent", widthMm: 1.2 }, 3.6)
            : []),
          ...biting(solved, depth, pose, where),
          ...panel.moving(pose.tip, flatDegrees, pose.leanDegrees),
          ...wanted(pose.wanted ?? unbitten),
        ];
      },
    }),
  );
  const strikes = bites.flatMap(({ strike }, i) => (strike ? [i] : []));
  return {
    widthMm,
    heightMm: bedMm + bedThicknessMm + 1.5 * textMm,
    title: words("drawing.film.bites.title", { rig: solved.rig.title }),
    description: [words("drawing.film.bites.about"), words("drawing.film.bites.dashes")].join(" "),
    still: [
      ...waterOverBed({ rightMm: pictureMm, surfaceMm, footMm: bedMm }),
      rodEnd(point(rod.xMm, surfaceMm - rod.upMm)),
      text(point(0, bedMm + bedThicknessMm + textMm), words("drawing.film.settling.shortened"), textMm, {
        ink: "soft",
      }),
      ...panel.still,
    ],
    moments,
    strip: [0, ...strikes],
  };
}

/** Where the rod's end is, which is held low over the water. */
const rod = { xMm: 8, upMm: 2.6 } as const;

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
  {
    tip,
    asideMm: goesMm = 0,
    leanDegrees = 0,
    bait = nowhere,
    shot = nowhere,
    bows = [0, 0],
    fish,
  }: BitePose,
  { restX, surfaceMm, bedMm, scale }: BiteRoom,
): Item[] {
  const floatMm = lengthMm(rig.float);
  const isFlat = tip === undefined;
  const shownMm = isFlat ? floatMm / 2 : (tip ?? -underMm / scale);
  const water = point(restX + goesMm, surfaceMm);
  const top = point(water.xMm, surfaceMm - shownMm * scale);
  const foot = point(water.xMm, top.yMm + floatMm * scale);
  const degrees = isFlat ? flatDegrees : leanDegrees;
  const eye = rotatedPoint(foot, degrees, water);
  const lowest = depth.lineShot[0];
  const lies = lyingShot(depth).length > 0;
  const radiusMm = lowest ? shotRadiusMm(lowest.diameterMm) : 0;
  const onBed = moved(point(restX + (lies ? belowShotMm : 0), bedMm - baitRadiusMm - 0.3), bait);
  const shotAt = moved(point(restX, bedMm - (lies ? radiusMm + 0.3 : belowShotMm)), shot);
  // Under water to a float that is fixed at its foot, over it to one held at its top.
  const held =
    rig.float.attachment === "top and bottom"
      ? rotatedPoint(point(top.xMm, top.yMm + rig.float.tipShowingMm * scale + 1), degrees, water)
      : eye;
  const bow = ([from, to]: readonly [Point, Point], asideMm: Bow) => bowed(from, to, asideMm);
  return [
    ...(goesMm < seenAsideMm ? wayAside(point(restX, surfaceMm), goesMm, depth, scale) : []),
    polyline([point(rod.xMm, surfaceMm - rod.upMm), held], thin),
    { kind: "path", steps: bow([eye, shotAt], bows[0]), stroke: strandStrokes["main line"] },
    { kind: "path", steps: bow([shotAt, onBed], bows[1]), stroke: strandStrokes["hook length"] },
    // Over the line that goes into its mouth.
    ...(fish ? movingFish(moved(onBed, fish.off), fishMm, fish.degrees) : []),
    ...movingFloat(rig.float, {
      top,
      scale,
      lengthMm: floatMm,
      ...(degrees !== 0 && { lean: { degrees, about: water } }),
    }),
    ...(tip === null ? [placed(water, parts.ripples.draw({ at: nowhere }))] : []),
    ...(lowest ? [placed(shotAt, [circle(nowhere, radiusMm, { fill: "ink" })])] : []),
    baitAt(onBed),
  ];
}

/** From where a float stood, the way that it goes aside: over the tips of both. */
function wayAside({ xMm, yMm }: Point, goesMm: number, depth: SolvedDepth, scale: number): Item[] {
  const topY = yMm - depth.tipAsSetMm * scale;
  const arrowY = topY - 4;
  return [
    polyline([point(xMm, topY - 1), point(xMm, yMm + depth.draughtMm * scale)], stood),
    ...arrow(point(xMm, arrowY), point(xMm + goesMm - 2, arrowY), { ink: "ink", widthMm: 0.9 }, 2.8),
  ];
}

const moved = (at: Point, by: Point) => point(at.xMm + by.xMm, at.yMm + by.yMm);
