import { lengthMm } from "../../core/float/float.ts";
import { entry, first, last, rising } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { FlowFigure } from "../../model/in-water.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { circle, type Point, point, polyline, rectangle, text } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { placeOn, tellHang } from "../plots/hang-plot.ts";
import { strandStrokes } from "../strands.ts";
import type { Film, FilmRoom, Moment } from "./film.ts";
import { movingFloat, placed, shotRadiusMm } from "./moving.ts";

const waterShare = 0.75;
const aboveMm = 5;
const flowMm = 12;
const underMm = 2;
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
  const most = depth.inWater?.holdBackMax.find((one) => one.paceMs === paceMs)?.share ?? 1;
  const xs = hangs.flatMap(({ shape }) => shape.map(({ xMm }) => xMm));
  const [nearMm, farMm] = [Math.min(0, ...xs), Math.max(0, ...xs)];
  const scale = Math.min((waterShare * widthMm) / depth.depthMm, (widthMm - 8) / Math.max(1, farMm - nearMm));
  const surfaceMm = 1.4 * textMm + aboveMm;
  const bedMm = surfaceMm + scale * depth.depthMm;
  const originMm = (widthMm - scale * (farMm - nearMm)) / 2 - scale * nearMm;
  const flow = words("drawing.hang.flow", { pace: figures.pace(paceMs) });
  const moments = hangs.map((hang): Moment => {
    const goesUnder = hang.heldBackShare > most + 1e-9;
    const told = words("drawing.film.current.moment", { told: tellHang(hang, kit) });
    return {
      caption: goesUnder
        ? `${told} ${words("drawing.film.current.under", { share: figures.share(most) })}`
        : told,
      moving: hangingRig(solved, depth, hang, goesUnder, { surfaceMm, originMm, scale }),
    };
  });
  const middle = Math.round((hangs.length - 1) / 2);
  return {
    widthMm,
    heightMm: bedMm + bedThicknessMm + 1.4 * textMm,
    title: words("drawing.film.current.title", { rig: solved.rig.title }),
    description: words("drawing.film.current.about", { pace: figures.pace(paceMs) }),
    still: [
      ...parts.flowArrow.draw({ from: point(0.5, 0.7 * textMm), lengthMm: flowMm }),
      text(point(flowMm + 2.5, 1.05 * textMm), flow, textMm),
      rectangle(0, surfaceMm, widthMm, bedMm - surfaceMm, { fill: "water" }),
      ...parts.waterSurface.draw({ leftMm: 0, rightMm: widthMm, yMm: surfaceMm }),
      ...parts.bed.draw({ leftMm: 0, rightMm: widthMm, yMm: bedMm }),
      text(point(widthMm - 0.5, bedMm + bedThicknessMm + textMm), figures.shortDepth(depth.depthMm), textMm, {
        anchor: "end",
        ink: "soft",
      }),
    ],
    moments,
    strip: rising([0, middle, hangs.length - 1]),
  };
}

/** The shares of the first pace, from run free to stopped. */
function hangsOf({ inWater }: SolvedDepth): readonly FlowFigure[] {
  const flow = inWater?.flow ?? [];
  return flow
    .filter(({ paceMs }) => paceMs === first(flow).paceMs)
    .sort((a, b) => a.heldBackShare - b.heldBackShare);
}

interface InCurrent {
  readonly surfaceMm: number;
  readonly originMm: number;
  readonly scale: number;
}

function hangingRig(
  { rig }: SolvedRig,
  depth: SolvedDepth,
  { shape }: FlowFigure,
  goesUnder: boolean,
  { surfaceMm, originMm, scale }: InCurrent,
): Item[] {
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
  return [
    polyline(run(rig.hookLengthMm, lineMm, places), strandStrokes["main line"]),
    polyline(run(0, rig.hookLengthMm, 6), strandStrokes["hook length"]),
    ...movingFloat(rig.float, { top, scale, lengthMm: floatMm }),
    ...depth.lineShot.map(({ fromHookMm, diameterMm }) =>
      placed(placeAt(fromHookMm), [circle(point(0, 0), shotRadiusMm(diameterMm), { fill: "ink" })]),
    ),
    placed(placeAt(0), [circle(point(0, 0), 1, { fill: "accent" })]),
  ];
}
