import { entry, first, last, paired, rising } from "../../core/lists.ts";
import type { Landing } from "../../core/sink/sink-of-rig.ts";
import type { Mm, S } from "../../core/units.ts";
import type { Arrangement } from "../../model/in-water.ts";
import { allShot, type SolvedDepth, type SolvedRig } from "../../model/solved.ts";
import { keyOf } from "../../words/words.ts";
import { circle, curveTo, type Point, pathFrom, point, polyline, text, thin, thinMm } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item, Stroke, TextItem } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { strandStrokes } from "../strands.ts";
import { type Film, type FilmRoom, filmLengthS, type Moment, momentAt } from "./film.ts";
import { laidDown, lineAt } from "./line-at.ts";
import { baitAt, placed } from "./moving.ts";
import { floatBody, floatTip, marksOn, smallShotMm } from "./sinking-lens.ts";
import {
  endS,
  hangsClear,
  mostApartS,
  type SinkingSide,
  soonerOf,
  soonestEndS,
  tell,
  tellClock,
  timesOf,
} from "./sinking-told.ts";
import { type Column, sinkingWater, tipMm } from "./sinking-water.ts";

/** How shot hang and a rig lands. */
interface Way {
  readonly arrangement?: Arrangement;
  readonly landing: Landing;
}

/** A bait that is there so much sooner is seen to be; of less only the end is shown [s]. */
const seenSoonerS = 2;
/** Shot that run into one another keep an edge between them. */
const touchMm = 0.3;
const shotEdge: Stroke = { ...thin, ink: "paper" };
/** The way of a bait so far: dots, as no line of the rig has. */
const way: Stroke = { ink: "faint", widthMm: 0.6, dashMm: [0.01, 1.3], cap: "round" };
const wayPlaces = 10;
/** Line that lies in a heap is drawn in loops of so much of it [mm of paper]. */
const loopMm = 6;

/**
 * The same shot sinking in two ways beside each other, from landing until both baits are all but down: as the rig has
 * them and in the other pattern, or where there is none, laid out straight and in a heap.
 */
export function sinkingFilm(solved: SolvedRig, depth: SolvedDepth, room: FilmRoom, kit: DrawingKit): Film {
  return filmOfSides(sidesOf(depth, kit), solved, depth, room, kit);
}

/** Two ways to sink beside each other. */
export function filmOfSides(
  sides: readonly SinkingSide[],
  solved: SolvedRig,
  depth: SolvedDepth,
  room: FilmRoom,
  kit: DrawingKit,
): Film {
  const { words, figures } = kit;
  const layout = sinkingWater(sides, depth, room, kit);
  const ends = sides.map(({ sink }) => endS(sink));
  const lastS = Math.max(...ends);
  const moments = timesOf(sides).map(
    (timeS): Moment => ({
      timeS,
      get caption() {
        return tell(sides, timeS, depth, kit);
      },
      get moving() {
        return paired(sides, layout.columns)
          .flatMap(([side, column]) => [
            ...rigAt(side, timeS, solved, column),
            ...downLabel(side, timeS, depth, column, room, kit),
          ])
          .concat(timeS < lastS ? [] : layout.result);
      },
      get onPaper() {
        const said = words("drawing.film.sinking.after", { time: tellClock(sides, timeS, kit) });
        return paired(sides, layout.columns).flatMap(([{ sink }, column]) =>
          timeS < endS(sink) ? [belowBed(said, depth, column, room)] : [],
        );
      },
    }),
  );
  const lengthS = filmLengthS({ moments });
  // Where one is there hardly sooner, its moment would be the picture of the end once more.
  const stops = (soonerOf(sides)?.gainS ?? 0) < seenSoonerS ? [lengthS] : ends;
  const chosen = [0.12 * lengthS, mostApartS(sides), ...stops].map((timeS) => momentAt(moments, timeS));
  const [one, other] = sides.map(({ name }) => name);
  return {
    widthMm: room.widthMm,
    heightMm: layout.heightMm,
    title: words("drawing.film.sinking.title", { rig: solved.rig.title }),
    description: words("drawing.film.sinking.about", {
      depth: figures.shortDepth(depth.depthMm),
      one: one ?? "",
      other: other ?? "",
    }),
    still: layout.still,
    moments,
    wholeFromS: soonestEndS(sides),
    strip: rising(chosen),
  };
}

function sidesOf({ inWater, ...depth }: SolvedDepth, { words }: DrawingKit): readonly SinkingSide[] {
  if (!inWater) return [];
  const { sink, sister, lift } = inWater;
  const shot = allShot(depth);
  const pattern = (arrangement: Arrangement) => words(`drawing.film.way.${keyOf(arrangement)}`);
  const own = lift.find((one) => one.own)?.arrangement;
  if (!sister || !own)
    return sink.map((one) => ({ name: words(`drawing.film.way.${one.landing}`), sink: one, shot }));
  const sisterShot = [...sister.shot, ...depth.lockShot];
  const sides = [
    { hung: own, sink: first(sink), shot },
    { hung: sister.arrangement, sink: first(sister.sink), shot: sisterShot },
  ];
  // On the same sides with every rig, the more gathered at the right.
  return sides
    .toSorted((a, b) => gathered.indexOf(a.hung) - gathered.indexOf(b.hung))
    .map(({ hung, ...side }) => ({ name: pattern(hung), ...side }));
}

const gathered: readonly Arrangement[] = ["strung out", "spread bulk", "bulk"];

/** What two ways are called: by how their shot hang, and by how they land where that is what differs or both do. */
export function namesOfWays(
  [one, other]: readonly [Way, Way],
  { words }: Pick<DrawingKit, "words">,
): readonly [string, string] {
  const hangsAlike = one.arrangement === other.arrangement;
  const landsAlike = one.landing === other.landing;
  const name = ({ arrangement, landing }: Way) => {
    const hung = arrangement && words(`drawing.film.way.${keyOf(arrangement)}`);
    const lands = words(`drawing.film.way.${landing}`);
    if (!hung || (hangsAlike && !landsAlike)) return lands;
    return landsAlike && landing === "straight" ? hung : words("drawing.film.way.both", { hung, lands });
  };
  return [name(one), name(other)];
}

/** The rig of one side at a time: float, line, shot and bait where the sums have them. */
function rigAt({ sink, shot }: SinkingSide, timeS: S, { rig }: SolvedRig, column: Column): Item[] {
  const { scale, surfaceMm, originMm } = column;
  const line = lineAt(sink.line, timeS);
  const at = ({ xMm, yMm }: Point) => point(originMm + scale * xMm, surfaceMm + scale * yMm);
  const path = line.map(({ place }) => at(place));
  const shotMm = shot.map(({ fromHookMm }) => fromHookMm);
  /** The line between two of its places; what is slack of it in a heap lies in loops. */
  const run = (from: number, to: number, stroke: Stroke) =>
    sink.landing === "heap"
      ? pathFrom(
          entry(path, from),
          laidDown(line.slice(from, to), loopMm / scale, shotMm).map(([a, b, end]) =>
            curveTo(at(a), at(b), at(end)),
          ),
          stroke,
        )
      : polyline(path.slice(from, to), stroke);
  const on = (fromHookMm: Mm) =>
    at((line.find((one) => one.fromHookMm <= fromHookMm + 1e-6) ?? last(line)).place);
  const loop = line.findIndex(({ fromHookMm }) => fromHookMm <= rig.hookLengthMm + 1e-6);
  const eye = line.findIndex(({ fromHookMm }) => fromHookMm < first(line).fromHookMm);
  const [top, foot] = [entry(path, 0), entry(path, Math.max(0, eye))];
  const marks = marksOn(shot, sink.line);
  /** Shot that touch are one lump; those that only look so are parted by an edge. */
  const isParted = (fromHookMm: Mm) =>
    marks.every(
      (one) => one.fromHookMm === fromHookMm || scale * Math.abs(one.fromHookMm - fromHookMm) > touchMm,
    );
  return [
    polyline(
      baitWay(sink, timeS).map((place) => at(place)),
      way,
    ),
    run(0, loop + 1, strandStrokes["main line"]),
    run(loop, line.length, strandStrokes["hook length"]),
    polyline([top, foot], floatBody),
    polyline([top, beyond(foot, top)], floatTip),
    ...marks.map(({ fromHookMm, diameterMm }) =>
      placed(on(fromHookMm), [
        isParted(fromHookMm)
          ? circle(point(0, 0), smallShotMm(diameterMm) + thinMm / 2, { fill: "ink", stroke: shotEdge })
          : circle(point(0, 0), smallShotMm(diameterMm), { fill: "ink" }),
      ]),
    ),
    baitAt(last(path)),
  ];
}

/** The way of the bait so far, from its landing: in as many places at any time, so that a film can move it. */
function baitWay({ line }: SinkingSide["sink"], timeS: S): Point[] {
  return Array.from({ length: wayPlaces }, (_, i) => last(lineAt(line, (timeS * i) / (wayPlaces - 1))).place);
}

/** Where the float's tip ends, its foot being known and where it meets the surface; upright where both are one. */
function beyond(foot: Point, surface: Point): Point {
  const [dx, dy] = [surface.xMm - foot.xMm, surface.yMm - foot.yMm];
  const length = Math.hypot(dx, dy);
  if (length < 1e-6) return point(surface.xMm - tipMm, surface.yMm);
  return point(surface.xMm + (tipMm * dx) / length, surface.yMm + (tipMm * dy) / length);
}

/** Below a bait that is where it ends, when it got there. */
function downLabel(
  { sink }: SinkingSide,
  timeS: S,
  depth: SolvedDepth,
  column: Column,
  room: FilmRoom,
  { words, figures }: DrawingKit,
): Item[] {
  if (timeS < endS(sink)) return [];
  const said = words(
    hangsClear(depth) ? "drawing.film.sinking.hangs-after" : "drawing.film.sinking.down-after",
    { time: figures.time(endS(sink)) },
  );
  return [belowBed(said, depth, column, room, "bold")];
}

/** Words in the middle below the bed of a side. */
function belowBed(
  said: string,
  { depthMm }: SolvedDepth,
  { leftMm, widthMm, surfaceMm, scale }: Column,
  { textMm }: FilmRoom,
  face: TextItem["face"] = "regular",
): Item {
  const yMm = surfaceMm + scale * depthMm + bedThicknessMm + textMm;
  return text(point(leftMm + widthMm / 2, yMm), said, textMm, { anchor: "middle", face });
}
