import type { FlowHang } from "../../core/flow/hang.ts";
import type { HangPoint } from "../../core/flow/line-balance.ts";
import { entry, first } from "../../core/lists.ts";
import type { SolvedDepth, SolvedRig } from "../../model/solved.ts";
import { boldMm, circle, type Point, point, polyline, text } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import type { Drawing, Item, Stroke } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { parts } from "../parts/parts.ts";
import { leastShotRadiusMm } from "../parts/shot.ts";
import { drawKey } from "./curve-key.ts";

/** What hangs in the current, and how deep the water is. */
interface HangPlotRig {
  readonly id: string;
  readonly title: string;
  readonly depthMm: number;
  readonly draughtMm: number;
  /** From the hook up, without those that lock the float. */
  readonly shotFromHookMm: readonly number[];
}

/** A rig at one depth as the plot needs it. */
export function hangPlotRig({ rig }: SolvedRig, { depthMm, draughtMm, lineShot }: SolvedDepth): HangPlotRig {
  const shotFromHookMm = lineShot.map(({ fromHookMm }) => fromHookMm);
  return { id: rig.id, title: rig.title, depthMm, draughtMm, shotFromHookMm };
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

const leastPlotMm = 25;
const flowMm = 14;
const hookRadiusMm = 0.9;
/** Above the water: room for the float's tip. */
const tipMm = 4;

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

/**
 * The line below a float in running water, for up to three shares held back, to one scale down and along; the water
 * runs to the right.
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
  const { words, figures } = kit;
  const told = hangs.map((hang) => tellHang(hang, kit));
  const entries = told.map((label, i) => ({ stroke: strokeOf(i), label }));
  const keyOf = (topMm: number) => drawKey(entries, { leftMm: 0, topMm, widthMm: box.widthMm }, textMm, kit);

  const top = 1.4 * textMm + 1 + tipMm;
  const deepest = box.heightMm - keyOf(0).heightMm - bedThicknessMm - 2;
  const xs = hangs.flatMap((hang) => hang.shape.map((one) => one.xMm));
  const [leftmost, rightmost] = [Math.min(0, ...xs), Math.max(0, ...xs)];
  const side = hookRadiusMm + 1;
  const acrossMm = rightmost - leftmost || 1;
  const scale = Math.min((deepest - top) / rig.depthMm, (box.widthMm - 2 * side) / acrossMm);
  if (scale * rig.depthMm < leastPlotMm)
    throw new NoRoomError("a rig in the current", box, { folder: "rigs", id: rig.id });
  const originX = (box.widthMm - scale * acrossMm) / 2 - scale * leftmost;
  const foot = top + scale * rig.depthMm;
  const at = (place: Point) => point(originX + scale * place.xMm, top + scale * place.yMm);
  const spot = (one: HangPoint) => at(point(one.xMm, one.depthMm));

  const pace = figures.pace(hangs[0]?.paceMs ?? 0);
  const flow = words("drawing.hang.flow", { pace });
  const items: Item[] = [
    ...parts.flowArrow.draw({ from: point(0.5, 0.7 * textMm), lengthMm: flowMm }),
    text(point(flowMm + 2.5, 1.05 * textMm), flow, textMm),
    ...parts.waterSurface.draw({ leftMm: 0, rightMm: box.widthMm, yMm: top }),
    ...parts.bed.draw({ leftMm: 0, rightMm: box.widthMm, yMm: foot }),
    polyline([point(originX, top - tipMm), at(point(0, rig.draughtMm))], { ink: "ink", widthMm: 1.6 }),
    ...hangs.flatMap((hang, i): Item[] => [
      polyline(hang.shape.map(spot), strokeOf(i)),
      ...rig.shotFromHookMm.flatMap((fromHook) => {
        const place = placeOn(hang.shape, fromHook);
        return place ? parts.shot.draw({ at: at(place), radiusMm: 1.4 * leastShotRadiusMm }) : [];
      }),
      circle(spot(first(hang.shape)), hookRadiusMm, {
        fill: "paper",
        stroke: { ink: "ink", widthMm: boldMm },
      }),
    ]),
    ...keyOf(foot + bedThicknessMm + 1.5).items,
  ];
  return {
    widthMm: box.widthMm,
    heightMm: foot + bedThicknessMm + 1.5 + keyOf(0).heightMm,
    title: words("drawing.hang.title", { rig: rig.title }),
    description: words("drawing.hang.description", { pace, hangs: told.join("; ") }),
    items,
  };
}

/** How the float is held and where the bait then is. */
export function tellHang(hang: FlowHang, { words, figures }: DrawingKit): string {
  const held =
    hang.heldBackShare === 0
      ? words("drawing.hang.free")
      : hang.heldBackShare === 1
        ? words("drawing.hang.stopped")
        : words("drawing.hang.held", { share: figures.share(hang.heldBackShare) });
  // To the centimetre, as it is printed, so that words and figures agree.
  const lead = Math.round(hang.leadMm / 10);
  const where = lead === 0 ? "level" : lead > 0 ? "leads" : "trails";
  const height = Math.round(hang.offBedMm / 10);
  const values = { held, gap: figures.shortGap(10 * Math.abs(lead)) };
  const bait = words(`drawing.hang.${where}`, values);
  return height === 0
    ? words("drawing.hang.on-bed", { bait })
    : words("drawing.hang.up", { bait, height: figures.shortGap(10 * height) });
}
