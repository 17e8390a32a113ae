import { first, last } from "../../core/lists.ts";
import { type Bed, bedDepth, bedOf, gapsOf } from "../../core/swim/bed.ts";
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
import { namedUnderBed, underBed, underBedMm } from "./under-bed.ts";

/** Least room for the water itself [mm]. */
const leastMm = 20;
/** Width of the land at the left, and how high it stands above the water. */
const bankMm = 7;
const bankHighMm = 2;
/** Between the last sounding and the scale of depths: half of what may stand on the bed there. */
const besideAxisMm = 2.5;
const unknownBed: Stroke = { ...bold, ink: "soft", dashMm: [1.6, 1.2] };
/** Places along the bed for each millimetre of the drawing. */
const finestMm = 0.7;

/**
 * The bed along one line of soundings, from the bank out: depths and distances each to a scale of their own, which stand
 * at the edges; the bank is at the left. Soundings are dots, and where none is near the bed is dashed.
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
  const axisMm = Math.max(...depthTicks.map((mm) => measure(figures.shortDepth(mm), textMm, "regular"))) + 2;
  const [left, right] = [bankMm, box.widthMm - axisMm - besideAxisMm];
  const axisX = right + besideAxisMm;
  const across = (mm: number) => left + ((right - left) * mm) / toMm;
  const named = namedUnderBed(line, bed, { across, widthMm: box.widthMm, textMm, kit });
  const top = 2.6 * textMm;
  const under = underBedMm(named, textMm) + 1.6;
  const told = footWords(cut, kit);
  const foot = box.heightMm - (2.7 + 1.1 * told.length) * textMm - under;
  if (foot - top < leastMm || right - left < leastMm)
    throw new NoRoomError("a cut through a swim", box, { folder: "swims", id: swim.id });
  const down = (mm: number) => top + ((foot - top) * mm) / deepestMm;
  const at = (mm: number) => point(across(mm), down(bedDepth(bed, mm)?.depthMm ?? 0));
  const stepMm = finestMm * (toMm / (right - left));
  const times = figures.number((down(1) - down(0)) / (across(1) - across(0)), 1);
  // Their 0 is the bank.
  const farTicks = ticks(toMm / 1000, right - left, measure("00 m", textMm, "regular") + 3).slice(1);
  return {
    ...box,
    title: words("drawing.bed.title", { swim: swim.title, line: line.title }),
    description: describeBed(cut, bed, kit),
    items: [
      ...waterIn(point(left, top), bedPoints(at, fromMm, toMm, stepMm), textMm),
      ...parts.waterSurface.draw({ leftMm: left, rightMm: right, yMm: top }),
      ...bankItems(point(left, top), at(fromMm), words("drawing.bed.bank"), textMm),
      ...depthTicks.map((mm) =>
        text(point(axisX + 1.5, down(mm) + 0.35 * textMm), figures.shortDepth(mm), textMm),
      ),
      ...depthTicks.map((mm) => polyline([point(axisX, down(mm)), point(axisX + 1, down(mm))], thinSoft)),
      polyline([point(axisX, top), point(axisX, foot)], thinSoft),
      ...bedItems(bed, at, [fromMm, toMm], stepMm),
      ...bed.soundings.map(({ fromBankMm }) => circle(at(fromBankMm), 0.7, { fill: "paper", stroke: thin })),
      ...underBed(named, at, foot, textMm),
      ...cut.spots.flatMap(([number, spot]) => spotItems(number, at(spot.fromBankMm), top, textMm)),
      polyline([point(left, foot + under), point(right, foot + under)], thinSoft),
      ...farTicks.flatMap((metres) =>
        farTick(point(across(1000 * metres), foot + under), textMm, figures.shortDepth(1000 * metres)),
      ),
      ...[words("drawing.bed.scale", { times }), ...told].map((said, i) =>
        text(point((left + right) / 2, foot + under + (2.4 + 1.1 * i) * textMm), said, textMm, {
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

/** Land at the left, down to where the bed begins. */
function bankItems(corner: Point, sounded: Point, name: string, textMm: number): Item[] {
  const top = corner.yMm - bankHighMm;
  const foot = sounded.xMm === corner.xMm ? [sounded] : [point(corner.xMm, corner.yMm + bankHighMm)];
  return [
    ...ground([point(0, top), point(corner.xMm - 1.5, top), corner, ...foot]),
    text(point(0, top - 0.5 * textMm), name, textMm, { ink: "soft" }),
  ];
}

/** What the figures of the picture are. */
function footWords({ swim, line, spots }: CutSwim, { words, figures }: DrawingKit): string[] {
  const isUnknown = first(bedOf(line.soundings).soundings).fromBankMm > 0;
  const signs = [
    ...(spots.length > 0 ? [words("drawing.bed.numbers")] : []),
    ...(isUnknown ? [words("drawing.bed.unknown")] : []),
  ];
  return [
    words("drawing.bed.datum", { date: figures.date(swim.sounded) }),
    ...(signs.length > 0 ? [signs.join("; ")] : []),
  ];
}

/** A tick of the scale along the line from the bank, with its figure below. */
function farTick({ xMm, yMm }: Point, textMm: number, said: string): Item[] {
  return [
    polyline([point(xMm, yMm - 1), point(xMm, yMm)], thinSoft),
    text(point(xMm, yMm + 1.1 * textMm), said, textMm, { anchor: "middle" }),
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
