import { lengthMm } from "../../core/float/float.ts";
import { entry, first, last, rising } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { FlowFigure, HoldBackMax } from "../../model/in-water.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import {
  accent,
  arrow,
  circle,
  curveTo,
  type Point,
  partWay,
  pathFrom,
  point,
  polyline,
  rectangle,
  text,
  thin,
  thinSoft,
} from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { layLabel, paintLabel } from "../labels/label-text.ts";
import type { Item } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { placeOn } from "../plots/hang-plot.ts";
import { tellHang, tellHold } from "../plots/tell-hang.ts";
import { strandStrokes } from "../strands.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { baitAt, movingFloat, placed, rodEnd, shotAt, waterOverBed } from "./moving.ts";

const waterShare = 0.75;
const aboveMm = 9;
const flowMm = 12;
const underMm = 2;
/** How a float that dives is laid over; how far, no sum says. */
const divingDegrees = 35;
/** Places of the line that are drawn: as many at every share. */
const places = 28;

/**
 * A float in the first of a rig's paces, run free, held back more and more, and stopped: the line below it as it hangs,
 * to one scale down and along.
 */
export function currentFilm(solved: SolvedRig, depth: SolvedDepth, room: FilmRoom, kit: DrawingKit): Film {
  const { words, figures } = kit;
  const { widthMm, textMm } = room;
  const hangs = hangsOf(depth);
  const paceMs = first(hangs).paceMs;
  const holds = depth.inWater?.holdBackMax.find((one) => one.paceMs === paceMs);
  const most = holds?.share ?? 1;
  const [nearMm, farMm] = reachOf(hangs);
  const scale = Math.min((waterShare * widthMm) / depth.depthMm, (widthMm - 8) / Math.max(1, farMm - nearMm));
  const surfaceMm = 1.4 * textMm + aboveMm;
  const bedMm = surfaceMm + scale * depth.depthMm;
  const originMm = (widthMm - scale * (farMm - nearMm)) / 2 - scale * nearMm;
  const flow = words("drawing.hang.flow", { pace: figures.pace(paceMs) });
  const feedRoom = { ...wayOf(hangs), topMm: bedMm + bedThicknessMm + 3.1 * textMm, widthMm, textMm };
  const at = { surfaceMm, originMm, scale };
  const held = (say: string) =>
    text(point(0.5, bedMm + bedThicknessMm + textMm), say, textMm, { face: "bold" });
  const moments = hangs.map((hang): Moment => {
    const goesUnder = hang.heldBackShare > most + 1e-9;
    return {
      get caption() {
        const told = words("drawing.film.current.moment", { told: tellHang(hang, depth.depthMm, kit) });
        const share = figures.share(most);
        return goesUnder ? `${told} ${words("drawing.film.current.under", { share })}` : told;
      },
      get moving() {
        return [
          ...hangingRig(solved, depth, hang, goesUnder, at, room, kit),
          held(tellHold(hang, kit)),
          ...feedAndBait(hang, feedRoom, kit),
        ];
      },
    };
  });
  const dives = hangs.find(({ heldBackShare }) => heldBackShare > (holds?.bottomOnlyShare ?? 1) + 1e-9);
  if (dives && holds) {
    const said = [held(words("drawing.film.current.foot-alone")), ...insteadOf(holds, feedRoom, kit)];
    const moving = [...hangingRig(solved, depth, dives, true, at, room, kit), ...said];
    moments.push({ caption: whyUnder(holds, kit), moving });
  }
  const middle = Math.round((hangs.length - 1) / 2);
  return {
    widthMm,
    heightMm: feedRoom.topMm + feedRows * textMm,
    title: words("drawing.film.current.title", { rig: solved.rig.title }),
    description: words("drawing.film.current.about", { pace: figures.pace(paceMs) }),
    still: [
      ...flowWords(flow, textMm),
      ...waterOverBed({ rightMm: widthMm, surfaceMm, footMm: bedMm }),
      text(point(widthMm - 0.5, bedMm + bedThicknessMm + textMm), figures.shortDepth(depth.depthMm), textMm, {
        anchor: "end",
        ink: "soft",
      }),
    ],
    moments,
    strip: rising([0, middle, hangs.length - 1, moments.length - 1]),
  };
}

/** Which way the water goes, and how fast. */
const flowWords = (said: string, textMm: number): Item[] => [
  ...parts.flowArrow.draw({ from: point(0.5, 0.7 * textMm), lengthMm: flowMm }),
  text(point(flowMm + 2.5, 1.05 * textMm), said, textMm),
];

/** How far upstream of the float any part of the line hangs, and how far downstream [mm]. */
function reachOf(hangs: readonly FlowFigure[]): readonly [Mm, Mm] {
  const xs = hangs.flatMap(({ shape }) => shape.map(({ xMm }) => xMm));
  return [Math.min(0, ...xs), Math.max(0, ...xs)];
}

/** Why a float that is fixed at its foot alone goes under, and how much holding back it stands in either way. */
function whyUnder(holds: HoldBackMax, kit: DrawingKit): string {
  const { words, figures } = kit;
  const why = words("drawing.film.current.why", { bottom: figures.share(holds.bottomOnlyShare) });
  return `${why} ${heldTwice(holds, kit)}`;
}

/** What a float stands that is fixed at both ends. */
function heldTwice({ topAndBottomShare: both }: HoldBackMax, { words, figures }: DrawingKit): string {
  return both < 1
    ? words("drawing.film.current.why-not", { both: figures.share(both) })
    : words("drawing.film.current.why-stopped");
}

/** Where the others have the way of feed and bait: how it is fixed instead. */
function insteadOf(holds: HoldBackMax, { topMm, widthMm, textMm }: FeedRoom, kit: DrawingKit): Item[] {
  const label = layLabel([{ text: heldTwice(holds, kit) }], widthMm - 1, textMm, kit.measure);
  return paintLabel(label, 0.5, topMm - 1.2 * textMm + label.heightMm / 2, kit.measure);
}

/** A mark that is not on the way along the bank touches it from above or from below [mm]. */
const besideWayMm = 1.5;
/** Rows of words below the bed, with the way of the feed above them. */
const feedRows = 6.2;

interface FeedRoom {
  /** Ends of the way along the surface, downstream of the cast. */
  readonly fromMm: Mm;
  readonly toMm: Mm;
  readonly topMm: number;
  readonly widthMm: number;
  readonly textMm: number;
}

/** All places along the surface where feed goes in or meets the bait, and the cast. */
function wayOf(hangs: readonly FlowFigure[]): Pick<FeedRoom, "fromMm" | "toMm"> {
  const places = hangs.flatMap(({ feed }) => [-feed.upstreamOfCastMm, feed.belowCastMm]);
  return { fromMm: Math.min(0, ...places), toMm: Math.max(1, ...places) };
}

/** Along the surface, to a scale of its own: where the feed goes in, where the float does, and where bait and feed meet. */
function feedAndBait(
  { feed }: FlowFigure,
  { fromMm, toMm, topMm, widthMm, textMm }: FeedRoom,
  { words, figures }: DrawingKit,
): Item[] {
  const edgeMm = 2;
  const along = (mm: Mm) => edgeMm + ((widthMm - 2 * edgeMm) * (mm - fromMm)) / (toMm - fromMm);
  const wayY = topMm + 2;
  // To a tenth of a metre: nobody throws feed nearer than that.
  const farTold = (mm: Mm) => figures.shortDepth(100 * Math.round(mm / 100));
  const upstream = feed.upstreamOfCastMm >= 0;
  // Told apart by their shapes as well, as forced colours fill none of the first two, and each on its own side of the
  // line, as feed may go in where the float does.
  const marks = [
    {
      mm: -feed.upstreamOfCastMm,
      besideMm: -besideWayMm,
      draw: [rectangle(-1.1, -1.1, 2.2, 2.2, { fill: "tone", stroke: thin })],
      said: words(upstream ? "drawing.film.current.feed-above" : "drawing.film.current.feed-below", {
        gap: farTold(Math.abs(feed.upstreamOfCastMm)),
      }),
    },
    {
      mm: 0,
      besideMm: besideWayMm,
      draw: [circle(point(0, 0), 1.2, { fill: "paper", stroke: thin })],
      said: words("drawing.film.current.cast"),
    },
    {
      mm: feed.belowCastMm,
      besideMm: 0,
      draw: [circle(point(0, 0), 1.2, { fill: "accent" })],
      said: words("drawing.film.current.meet", {
        gap: farTold(feed.belowCastMm),
        time: figures.time(feed.afterS),
      }),
    },
  ];
  return [
    text(point(0.5, topMm - 0.7 * textMm), words("drawing.film.current.bank"), textMm, { ink: "soft" }),
    polyline([point(along(fromMm), wayY), point(along(toMm), wayY)], thinSoft),
    ...marks.map(({ mm, besideMm, draw }) => placed(point(along(mm), wayY + besideMm), draw)),
    ...marks.flatMap(({ draw, said }, row) => {
      const y = wayY + (2.2 + 1.35 * row) * textMm;
      return [placed(point(edgeMm, y - 0.35 * textMm), draw), text(point(edgeMm + 2.6, y), said, textMm)];
    }),
  ];
}

/** The shares of the first pace, from run free to stopped. */
function hangsOf({ inWater }: SolvedDepth): readonly FlowFigure[] {
  const flow = inWater?.flow ?? [];
  return flow
    .filter(({ paceMs }) => paceMs === first(flow).paceMs)
    .sort((a, b) => a.heldBackShare - b.heldBackShare);
}

/** How far the rod's end reaches into the picture, and how high it is over the water. */
const rod = { xMm: 7, upMm: 4 } as const;

/** The rod's end and the line from it to the float: slack on the water where it runs free, tighter the more it is held back. */
function lineToRod(
  float: Point,
  held: number,
  surfaceMm: number,
  { widthMm, textMm }: FilmRoom,
  { words, measure }: DrawingKit,
): Item[] {
  const end = point(Math.min(rod.xMm, Math.max(1, float.xMm - 6)), surfaceMm - rod.upMm);
  const bend = (share: number) => {
    const { xMm, yMm } = partWay(end, float, share);
    const slackMm = surfaceMm - 0.3;
    return point(xMm, held < 1 ? Math.max(yMm, slackMm + (yMm - slackMm) * held) : yMm);
  };
  const arrowMm = 3 + 11 * held;
  const arrowY = surfaceMm - 6;
  const said = words("drawing.film.current.held");
  const hasRoom = float.xMm + 1.5 + measure(said, textMm, "regular") < widthMm;
  return [
    rodEnd(end),
    ...(held > 0 && hasRoom ? [text(point(float.xMm + 1.5, arrowY + 0.35 * textMm), said, textMm)] : []),
    pathFrom(end, [curveTo(bend(1 / 3), bend(2 / 3), float)], thin),
    ...(held > 0 ? arrow(point(float.xMm, arrowY), point(float.xMm - arrowMm, arrowY), accent, 2.6) : []),
  ];
}

interface InCurrent {
  readonly surfaceMm: number;
  readonly originMm: number;
  readonly scale: number;
}

function hangingRig(
  { rig }: SolvedRig,
  depth: SolvedDepth,
  hang: FlowFigure,
  goesUnder: boolean,
  { surfaceMm, originMm, scale }: InCurrent,
  room: FilmRoom,
  kit: DrawingKit,
): Item[] {
  const { shape } = hang;
  const at = ({ xMm, yMm }: Point) => point(originMm + scale * xMm, surfaceMm + scale * yMm);
  const lineMm = last(shape).fromHookMm;
  const placeAt = (fromHookMm: Mm) =>
    at(placeOn(shape, Math.min(fromHookMm, lineMm)) ?? point(0, entry(shape, shape.length - 1).depthMm));
  const run = (fromMm: Mm, toMm: Mm, count: number) =>
    Array.from({ length: count }, (_, i) => placeAt(fromMm + ((toMm - fromMm) * i) / (count - 1)));
  const floatMm = lengthMm(rig.float);
  const top = goesUnder
    ? point(originMm, surfaceMm + underMm)
    : point(originMm, surfaceMm + scale * depth.draughtMm - scale * floatMm);
  const held = goesUnder ? 1 : hang.heldBackShare;
  const atFloat = goesUnder ? placeAt(lineMm) : point(originMm, surfaceMm - 0.8);
  return [
    ...lineToRod(atFloat, held, surfaceMm, room, kit),
    polyline(run(rig.hookLengthMm, lineMm, places), strandStrokes["main line"]),
    polyline(run(0, rig.hookLengthMm, 6), strandStrokes["hook length"]),
    ...movingFloat(rig.float, {
      top,
      scale,
      lengthMm: floatMm,
      // Held at its foot and pushed at its body, it is laid over as it goes.
      ...(goesUnder && {
        lean: { degrees: divingDegrees, about: point(originMm, surfaceMm + scale * depth.draughtMm) },
      }),
    }),
    ...depth.lineShot.map(({ fromHookMm, diameterMm }) => shotAt(placeAt(fromHookMm), diameterMm)),
    baitAt(placeAt(0)),
  ];
}
