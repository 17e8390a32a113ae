import { lengthMm } from "../../core/float/float.ts";
import { entry, first, last, rising } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { FlowFigure, HoldBackMax } from "../../model/in-water.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { whyBait } from "../../words/why-bait.ts";
import {
  accent,
  arrow,
  curveTo,
  type Point,
  partWay,
  pathFrom,
  point,
  polyline,
  text,
  thin,
} from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { placeOn } from "../plots/hang-plot.ts";
import { tellHang, tellHold } from "../plots/tell-hang.ts";
import { strandStrokes } from "../strands.ts";
import { verdictMark, verdictMm } from "../verdict.ts";
import { alongBank } from "./current-bank.ts";
import { twoFixings } from "./current-fixed.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { baitAt, movingFloat, rodEnd, shotAt, waterOverBed } from "./moving.ts";

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
  const at = placeOf(hangs, depth, room);
  const { surfaceMm, bedMm } = at;
  const belowMm = bedMm + bedThicknessMm + 1.4 * textMm;
  const bank = alongBank(hangs, { topMm: belowMm, widthMm, textMm }, kit);
  const held = (say: string) =>
    text(point(0.5, bedMm + bedThicknessMm + textMm), say, textMm, { face: "bold" });
  const moments = hangs.map((hang): Moment => {
    const goesUnder = hang.heldBackShare > most + 1e-9;
    return {
      get caption() {
        const told = tellMoment(hang, depth, kit);
        return goesUnder ? `${told} ${underWords(most, kit)}` : told;
      },
      get moving() {
        return [
          ...hangingRig(solved, depth, hang, goesUnder, at, room, kit),
          held(tellHold(hang, kit)),
          ...(goesUnder ? wrongIn(room) : []),
          ...bank.still,
          ...bank.moving(hang),
        ];
      },
    };
  });
  const dives = holds && hangs.find(({ heldBackShare }) => heldBackShare > holds.bottomOnlyShare + 1e-9);
  const below = { topMm: belowMm, widthMm, textMm, divingDegrees };
  const fixings = dives && twoFixings(solved.rig.float, { said: heldTwice(holds, kit), holds }, below, kit);
  if (dives && fixings)
    moments.push({
      caption: whyUnder(holds, kit),
      moving: [
        ...hangingRig(solved, depth, dives, true, at, room, kit),
        ...wrongIn(room),
        held(words("drawing.film.current.foot-alone")),
        ...fixings.items,
      ],
    });
  const middle = Math.round((hangs.length - 1) / 2);
  return {
    widthMm,
    heightMm: belowMm + Math.max(bank.heightMm, fixings?.heightMm ?? 0),
    title: words("drawing.film.current.title", { rig: solved.rig.title }),
    description: words("drawing.film.current.about", { pace: figures.pace(paceMs) }),
    still: [
      ...flowWords(words("drawing.hang.flow", { pace: figures.pace(paceMs) }), textMm),
      ...waterOverBed({ rightMm: widthMm, surfaceMm, footMm: bedMm }),
      depthWords(figures.shortDepth(depth.depthMm), bedMm, room),
    ],
    moments,
    strip: rising([0, middle, hangs.length - 1, moments.length - 1]),
  };
}

/** How the float is held, where the bait then is, and why there. */
function tellMoment(hang: FlowFigure, { depthMm }: SolvedDepth, kit: DrawingKit): string {
  const told = tellHang(hang, depthMm, kit);
  const why = whyBait(hang.leadMm, kit);
  return why === undefined
    ? kit.words("drawing.film.current.moment", { told })
    : kit.words("drawing.film.current.moment-why", { told, why });
}

/** Where surface, bed and float are on the picture, and its scale. */
function placeOf(hangs: readonly FlowFigure[], { depthMm }: SolvedDepth, { widthMm, textMm }: FilmRoom) {
  const [nearMm, farMm] = reachOf(hangs);
  const scale = Math.min((waterShare * widthMm) / depthMm, (widthMm - 8) / Math.max(1, farMm - nearMm));
  const surfaceMm = 1.4 * textMm + aboveMm;
  const originMm = (widthMm - scale * (farMm - nearMm)) / 2 - scale * nearMm;
  return { surfaceMm, bedMm: surfaceMm + scale * depthMm, originMm, scale };
}

/** The mark of a picture that shows what goes wrong, in its corner. */
const wrongIn = ({ widthMm }: FilmRoom): Item[] =>
  verdictMark("wrong", point(widthMm - verdictMm - 0.3, verdictMm + 0.3));

const depthWords = (said: string, bedMm: number, { widthMm, textMm }: FilmRoom): Item =>
  text(point(widthMm - 0.5, bedMm + bedThicknessMm + textMm), said, textMm, { anchor: "end", ink: "soft" });

const underWords = (most: number, { words, figures }: DrawingKit): string =>
  words("drawing.film.current.under", { share: figures.share(most) });

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
