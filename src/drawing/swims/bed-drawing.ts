import { first, last } from "../../core/lists.ts";
import { type Bed, bedDepth, bedOf, gapsOf, ledgesOf } from "../../core/swim/bed.ts";
import {
  bold,
  circle,
  type Point,
  point,
  polygon,
  polyline,
  rectangle,
  text,
  thin,
  thinSoft,
} from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, Stroke } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { hookEye } from "../parts/hook.ts";
import { parts } from "../parts/parts.ts";
import { ticks } from "../plots/axis.ts";
import { ground } from "../scenes/ground.ts";
import { strandStrokes } from "../strands.ts";
import { type CutSwim, describeBed } from "./bed-text.ts";
import { underBed } from "./under-bed.ts";

/** Least room for the water itself [mm]. */
const leastMm = 20;
const unknownBed: Stroke = { ...bold, ink: "soft", dashMm: [1.6, 1.2] };
/** Places along the bed for each millimetre of the drawing. */
const finestMm = 0.7;

/**
 * The bed along one line of soundings, from the bank out: depths and distances each to a scale of their own, which stand
 * at the edges. Soundings are dots, and where none is near the bed is dashed.
 *
 * @throws NoRoomError where the box is too small
 */
export function drawBed(cut: CutSwim, box: Box, kit: DrawingKit, { textMm }: { textMm: number }): Drawing {
  const { words, figures, measure } = kit;
  const { swim, line } = cut;
  const bed = bedOf(line.soundings);
  const [fromMm, toMm] = [first(bed.soundings).fromBankMm, last(bed.soundings).fromBankMm];
  const deepestMm = Math.max(...bed.soundings.map(({ depthMm }) => depthMm), 1);
  const depthTicks = ticks(deepestMm / 1000, box.heightMm / 2, 1.6 * textMm).map((metres) => metres * 1000);
  const left = Math.max(...depthTicks.map((mm) => measure(figures.shortDepth(mm), textMm, "regular"))) + 2.5;
  const top = 2.6 * textMm;
  const under = 3.4 * textMm;
  const foot = box.heightMm - 3.6 * textMm - under;
  const right = box.widthMm - textMm;
  if (foot - top < leastMm || right - left < leastMm)
    throw new NoRoomError("a cut through a swim", box, { folder: "swims", id: swim.id });
  const across = (mm: number) => left + ((right - left) * mm) / toMm;
  const down = (mm: number) => top + ((foot - top) * mm) / deepestMm;
  const at = (mm: number) => point(across(mm), down(bedDepth(bed, mm)?.depthMm ?? 0));
  const stepMm = finestMm * (toMm / (right - left));
  const times = figures.number((down(1) - down(0)) / (across(1) - across(0)), 1);
  const datum = words("drawing.bed.datum", { date: figures.date(swim.sounded) });
  const farTicks = ticks(toMm / 1000, right - left, measure("00 m", textMm, "regular") + 3);
  return {
    ...box,
    title: words("drawing.bed.title", { swim: swim.title, line: line.title }),
    description: describeBed(cut, bed, kit),
    items: [
      ...waterIn(point(left, top), bedPoints(at, fromMm, toMm, stepMm), textMm),
      ...parts.waterSurface.draw({ leftMm: left, rightMm: box.widthMm, yMm: top }),
      ...depthTicks.map((mm) =>
        text(point(left - 1.5, down(mm) + 0.35 * textMm), figures.shortDepth(mm), textMm, { anchor: "end" }),
      ),
      ...depthTicks.map((mm) => polyline([point(left - 1, down(mm)), point(left, down(mm))], thinSoft)),
      polyline([point(left, top), point(left, foot)], thinSoft),
      ...bedItems(bed, at, [fromMm, toMm], stepMm),
      ...bed.soundings.map(({ fromBankMm }) => circle(at(fromBankMm), 0.7, { fill: "paper", stroke: thin })),
      ...underBed(line, ledgesOf(bed), { at, textMm, kit, rightMm: box.widthMm, footMm: foot }),
      ...cut.spots.flatMap(([number, spot]) => spotItems(number, at(spot.fromBankMm), top, textMm)),
      ...farTicks.flatMap((metres) =>
        farTick(
          metres,
          point(across(1000 * metres), foot + under),
          textMm,
          figures.shortDepth(1000 * metres),
        ),
      ),
      ...[words("drawing.bed.scale", { times }), datum].map((said, i) =>
        text(point((left + right) / 2, foot + under + (2.2 + 1.1 * i) * textMm), said, textMm, {
          anchor: "middle",
          ink: "soft",
        }),
      ),
    ],
  };
}

/**
 * The water between a corner at the bank and the bed. Where that begins away from the bank, nobody knows how deep it is before:
 * the bed is dashed there, with a question mark in the water where there is room.
 */
function waterIn(corner: Point, bed: readonly Point[], textMm: number): Item[] {
  const [sounded, end] = [first(bed), last(bed)];
  const foot = point(corner.xMm, sounded.yMm);
  const water = polygon([corner, foot, ...bed, point(end.xMm, corner.yMm)], "water");
  const [widthMm, deepMm] = [sounded.xMm - corner.xMm, sounded.yMm - corner.yMm];
  if (widthMm <= 0) return [water];
  const middle = point(corner.xMm + widthMm / 2, corner.yMm + deepMm / 2 + 0.35 * textMm);
  const hasRoom = Math.min(widthMm, deepMm) > 1.5 * textMm;
  return [
    water,
    polyline([foot, sounded], unknownBed),
    ...(hasRoom ? [text(middle, "?", textMm, { face: "bold", anchor: "middle" })] : []),
  ];
}

/** A tick of the scale along the bank's line, with its figure below. */
function farTick(metres: number, { xMm, yMm }: Point, textMm: number, said: string): Item[] {
  return [
    polyline([point(xMm, yMm - 1), point(xMm, yMm)], thinSoft),
    text(point(xMm, yMm + 1.1 * textMm), said, textMm, { anchor: metres === 0 ? "start" : "middle" }),
  ];
}

/** Places along the bed, no further apart than is drawn. */
function bedPoints(at: (fromBankMm: number) => Point, fromMm: number, toMm: number, stepMm: number): Point[] {
  const count = Math.max(1, Math.ceil((toMm - fromMm) / stepMm));
  return Array.from({ length: count + 1 }, (_, i) => at(fromMm + ((toMm - fromMm) * i) / count));
}

/** The bed as ground, and in dashes where no sounding is near. */
function bedItems(
  bed: Bed,
  at: (fromBankMm: number) => Point,
  [fromMm, toMm]: readonly [number, number],
  stepMm: number,
): Item[] {
  const along = (from: number, to: number) => bedPoints(at, from, to, stepMm);
  const items: Item[] = [];
  let start = fromMm;
  for (const gap of [...gapsOf(bed), { fromMm: toMm, toMm }]) {
    if (gap.fromMm > start) items.push(...ground(along(start, gap.fromMm)));
    if (gap.toMm > gap.fromMm) items.push(polyline(along(gap.fromMm, gap.toMm), unknownBed));
    start = gap.toMm;
  }
  return items;
}

/** Half the width of a float at a spot, its length and how much of that is its tip. */
const spotFloatMm = { half: 0.7, length: 5, tip: 1.8 } as const;

/** Where a spot is: its number above the water, and a float there whose hook is at the bed. */
function spotItems(number: number, bed: Point, surfaceMm: number, textMm: number): Item[] {
  const { half, length, tip } = spotFloatMm;
  const [x, topMm] = [bed.xMm, surfaceMm - tip];
  const hook = { bend: point(x, bed.yMm - 0.5), heightMm: 2.2 };
  return [
    polyline([point(x, topMm + length), hookEye(hook)], strandStrokes["main line"]),
    ...parts.hook.draw(hook),
    rectangle(x - half, topMm, 2 * half, length, { fill: "paper", stroke: thin }),
    rectangle(x - half, topMm, 2 * half, tip, { fill: "accent", stroke: thin }),
    text(point(x, topMm - 0.4 * textMm), String(number), 1.1 * textMm, { face: "bold", anchor: "middle" }),
  ];
}
