import { type Float, lengthMm } from "../../core/float/float.ts";
import type { FlowHang } from "../../core/flow/hang.ts";
import type { HangPoint } from "../../core/flow/line-balance.ts";
import { entry, first, last, sum } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { floatLook } from "../float/float-parts.ts";
import { seenTip } from "../float/seen-tip.ts";
import { boldMm, type Point, point, polyline, rectangle, text, thin, thinSoft } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import { layLabel, paintLabel, together } from "../labels/label-text.ts";
import type { Drawing, Item, Stroke } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { hookAlong } from "../parts/hook.ts";
import { parts } from "../parts/parts.ts";
import { leastShotRadiusMm } from "../parts/shot.ts";
import { depthAxisMm, depthTicks } from "./axis.ts";
import { drawKey } from "./curve-key.ts";
import { hookMm, type NamePlace, namesOf } from "./hang-names.ts";
import { tellHang } from "./tell-hang.ts";

/** What hangs in the current, and how deep the water is. */
interface HangPlotRig {
  readonly id: string;
  readonly title: string;
  readonly depthMm: number;
  readonly draughtMm: number;
  readonly float: Float;
  /** From the hook up, without those that lock the float. */
  readonly shotFromHookMm: readonly number[];
}

/** A rig at one depth as the plot needs it. */
export function hangPlotRig({ rig }: SolvedRig, { depthMm, draughtMm, lineShot }: SolvedDepth): HangPlotRig {
  const shotFromHookMm = lineShot.map(({ fromHookMm }) => fromHookMm);
  return { id: rig.id, title: rig.title, depthMm, draughtMm, float: rig.float, shotFromHookMm };
}

/** Run free, held back by half, stopped: told apart at a glance. */
const sharesShown = [0, 0.5, 1];

/** How a rig hangs in one of its paces, for the shares held back that are shown. */
export function hangsAt({ inWater }: SolvedDepth, paceMs: number): readonly FlowHang[] {
  const shown = ({ heldBackShare }: FlowHang) => sharesShown.includes(heldBackShare);
  return inWater?.flow.filter((hang) => hang.paceMs === paceMs && shown(hang)) ?? [];
}

interface HangPlotOptions {
  readonly textMm: number;
}

/** Least height of the water in a panel. */
const leastPlotMm = 25;
const flowMm = 14;
/** Above the water: room for the float's tip. */
const tipMm = 4;
/** Width of the float's body. */
const bodyMm = 1.7;
/** More lines than this cross each other in one panel. */
const linesInPanel = 2;
/** Beside the lines of a panel, on either side. */
const sideMm = 2.5;
/** What the bar of the scale may stand for, and the most of the width that it takes. */
const barsMm = [1000, 500, 200, 100];
const barShare = 0.25;
/** From the bed of one panel to the tip of the next. */
const belowBedMm = bedThicknessMm + 2;

/** One look for each hold-back, told apart by their dashes. */
const strokes: readonly Stroke[] = [
  { ink: "ink", widthMm: boldMm },
  { ink: "ink", widthMm: boldMm, dashMm: [2.2, 1.2] },
  { ink: "ink", widthMm: boldMm, dashMm: [0.7, 1], cap: "butt" },
];

const strokeOf = (place: number) => entry(strokes, place % strokes.length);

/** Place on the line at a distance from the hook, between the points that are known. */
export function placeOn(shape: readonly HangPoint[], fromHookMm: number): Point | undefined {
  const i = shape.findIndex((one) => one.fromHookMm >= fromHookMm);
  if (i < 0) return undefined;
  const [a, b] = [entry(shape, Math.max(0, i - 1)), entry(shape, i)];
  const share = (fromHookMm - a.fromHookMm) / (b.fromHookMm - a.fromHookMm || 1);
  return point(a.xMm + share * (b.xMm - a.xMm), a.depthMm + share * (b.depthMm - a.depthMm));
}

/** Lines that are drawn below one float, and how far they reach upstream and downstream of it. */
interface Panel {
  readonly hangs: readonly { readonly hang: FlowHang; readonly stroke: Stroke }[];
  readonly leftmostMm: Mm;
  readonly rightmostMm: Mm;
}

function panelsOf(hangs: readonly FlowHang[]): Panel[] {
  const drawn = hangs.map((hang, i) => ({ hang, stroke: strokeOf(i) }));
  const count = Math.ceil(drawn.length / linesInPanel);
  return Array.from({ length: count }, (_, i) => {
    const some = drawn.slice(i * linesInPanel, (i + 1) * linesInPanel);
    const xs = some.flatMap(({ hang }) => hang.shape.map((one) => one.xMm));
    return { hangs: some, leftmostMm: Math.min(0, ...xs), rightmostMm: Math.max(0, ...xs) };
  });
}

/** How panels stand: side by side, or one below the other, and the scale that they all have. */
interface Arrangement {
  readonly scale: number;
  readonly isSideBySide: boolean;
}

/** What gives the larger scale. */
function arranged(panels: readonly Panel[], depthMm: Mm, room: Box): Arrangement {
  const across = panels.map(({ leftmostMm, rightmostMm }) => rightmostMm - leftmostMm || 1);
  const scaleIn = (columns: number, acrossMm: Mm) => {
    const rows = panels.length / columns;
    const down = (room.heightMm / rows - tipMm - belowBedMm) / depthMm;
    return Math.min(down, (room.widthMm - columns * 2 * sideMm) / acrossMm);
  };
  const beside = scaleIn(panels.length, sum(across));
  const below = scaleIn(1, Math.max(...across));
  return { scale: Math.max(beside, below), isSideBySide: beside >= below };
}

/**
 * The line below a float in running water, for some shares held back, to one scale down and along, at most two lines
 * below one float; the water runs to the right.
 *
 * @throws NoRoomError where the box is too small
 */
export function drawHangPlot(
  rig: HangPlotRig,
  hangs: readonly FlowHang[],
  box: Box,
  kit: DrawingKit,
  { textMm }: HangPlotOptions,
): Drawing {
  const { words, figures, measure } = kit;
  const told = hangs.map((hang) => tellHang(hang, rig.depthMm, kit));
  const entries = hangs.map((hang, i) => ({
    stroke: strokeOf(i),
    label: tellHang(hang, rig.depthMm, kit, together),
  }));
  const keyOf = (topMm: number) => drawKey(entries, { leftMm: 0, topMm, widthMm: box.widthMm }, textMm, kit);
  const note = layLabel([{ text: words("drawing.hang.scale"), ink: "soft" }], box.widthMm, textMm, measure);
  const left = depthAxisMm(rig.depthMm, textMm, kit);
  const pace = figures.pace(hangs[0]?.paceMs ?? 0);
  const flow = words("drawing.hang.flow", { pace });
  const flowEndMm = flowMm + 2.5 + measure(flow, textMm, "regular");
  const isBarBeside =
    flowEndMm + barShare * box.widthMm + measure("0.5 m ", textMm, "regular") + 3 < box.widthMm;
  const barY = (isBarBeside ? 0.7 : 2) * textMm;
  const head = barY + 0.7 * textMm + 1;
  const foot = keyOf(0).heightMm + note.heightMm;
  const panels = panelsOf(hangs);
  const room = { widthMm: box.widthMm - left, heightMm: box.heightMm - head - foot };
  const { scale, isSideBySide } = arranged(panels, rig.depthMm, room);
  if (scale * rig.depthMm < leastPlotMm)
    throw new NoRoomError("a rig in the current", box, { folder: "rigs", id: rig.id });

  const rowMm = tipMm + scale * rig.depthMm + belowBedMm;
  const items: Item[] = [];
  let originX = left;
  for (const [i, panel] of panels.entries()) {
    const surfaceMm = head + tipMm + (isSideBySide ? 0 : i * rowMm);
    originX = (isSideBySide ? originX : left) + sideMm - scale * panel.leftmostMm;
    if (i === 0 || !isSideBySide)
      items.push(...waterAndDepths(rig.depthMm, { surfaceMm, scale, left, box, textMm }, kit));
    const place = { top: point(originX, surfaceMm), scale, leftMm: left, rightMm: box.widthMm, textMm };
    items.push(...hanging(rig, panel, place, kit));
    originX += scale * panel.rightmostMm + sideMm;
  }
  const keyTop = head + (isSideBySide ? 1 : panels.length) * rowMm;
  items.push(
    ...parts.flowArrow.draw({ from: point(0.5, 0.7 * textMm), lengthMm: flowMm }),
    text(point(flowMm + 2.5, 1.05 * textMm), flow, textMm),
    ...metreBar(scale, point(box.widthMm - 0.5, barY), textMm, kit),
    ...keyOf(keyTop).items,
    ...paintLabel(note, 0, keyTop + keyOf(0).heightMm + note.heightMm / 2, measure),
  );
  return {
    widthMm: box.widthMm,
    heightMm: keyTop + foot,
    title: words("drawing.hang.title", { rig: rig.title }),
    description: words("drawing.hang.description", { pace, hangs: told.join("; ") }),
    items,
  };
}

interface PlotWater {
  readonly surfaceMm: number;
  readonly scale: number;
  readonly left: number;
  readonly box: Box;
  readonly textMm: number;
}

/** Water from surface to bed, with its depths at the left. */
function waterAndDepths(
  depthMm: Mm,
  { surfaceMm, scale, left, box, textMm }: PlotWater,
  { figures }: DrawingKit,
): Item[] {
  const across = { leftMm: left, rightMm: box.widthMm };
  return [
    rectangle(left, surfaceMm, box.widthMm - left, scale * depthMm, { fill: "water" }),
    ...parts.waterSurface.draw({ ...across, yMm: surfaceMm }),
    ...parts.bed.draw({ ...across, yMm: surfaceMm + scale * depthMm }),
    ...depthTicks(depthMm).flatMap((one) => {
      const y = surfaceMm + scale * one;
      return [
        polyline([point(left - 1, y), point(left, y)], thinSoft),
        text(point(left - 1.6, y + 0.35 * textMm), figures.shortDepth(one), textMm, { anchor: "end" }),
      ];
    }),
  ];
}

/** A metre along and down, or the largest part of one that has room. */
function metreBar(scale: number, { xMm, yMm }: Point, textMm: number, { figures }: DrawingKit): Item[] {
  const shownMm = barsMm.find((mm) => scale * mm <= barShare * xMm) ?? last(barsMm);
  const x = xMm - scale * shownMm;
  const end = (at: number) => polyline([point(at, yMm - 1), point(at, yMm + 1)], thin);
  return [
    polyline([point(x, yMm), point(xMm, yMm)], thin),
    end(x),
    end(xMm),
    text(point(x - 1.2, yMm + 0.35 * textMm), figures.shortDepth(shownMm), textMm, { anchor: "end" }),
  ];
}

/** A float with the lines of a panel below it, named at their baits: its foot where it is, wider, and its tip larger. */
function hanging(
  { float, depthMm, draughtMm, shotFromHookMm }: HangPlotRig,
  { hangs }: Panel,
  place: Omit<NamePlace, "bedMm">,
  kit: DrawingKit,
): Item[] {
  const { top, scale } = place;
  const at = (place: Point) => point(top.xMm + scale * place.xMm, top.yMm + scale * place.yMm);
  const spot = (one: HangPoint) => at(point(one.xMm, one.depthMm));
  const widest = Math.max(...float.profile.map((p) => p.diameterMm));
  return [
    ...hangs.flatMap(({ hang, stroke }): Item[] => [
      polyline(hang.shape.map(spot), stroke),
      ...shotFromHookMm.flatMap((fromHook) => {
        const place = placeOn(hang.shape, fromHook);
        return place ? parts.shot.draw({ at: at(place), radiusMm: 1.4 * leastShotRadiusMm }) : [];
      }),
      ...hookAlong({ bend: spot(first(hang.shape)), heightMm: hookMm }, spot(entry(hang.shape, 1))),
    ]),
    ...parts.floatBody.draw({
      ...floatLook(seenTip(float, (tipMm - 0.5) / scale, lengthMm(float) - draughtMm)),
      at: at(point(0, draughtMm)),
      lengthScale: scale,
      widthScale: bodyMm / widest,
    }),
    ...namesOf(
      hangs.map(({ hang }) => hang),
      { ...place, bedMm: top.yMm + scale * depthMm },
      kit,
    ),
  ];
}
