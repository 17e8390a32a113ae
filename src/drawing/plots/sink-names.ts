import { neighbours } from "../../core/lists.ts";
import { type Point, point, polyline, thinSoft } from "../items.ts";
import { type LabelText, layLabel, paintLabel, type Run } from "../labels/label-text.ts";
import type { Item, MeasureText, Stroke } from "../model.ts";

/** A curve that goes down from left to right, what stands beside it, and where on it a leader may end; anywhere without. */
interface NamedCurve {
  readonly places: readonly Point[];
  readonly say: readonly Run[];
  readonly beads?: readonly Point[];
}

interface Box {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly topMm: number;
  readonly footMm: number;
}

/** Names beside their curves, and the room that they keep free of other lines. */
interface CurveNames {
  readonly items: readonly Item[];
  readonly boxes: readonly Box[];
}

/** Between a name and the nearest place of a curve, round a name, and from it to its leader. */
const asideMm = 1.6;
const freeMm = 0.6;
const leaderFreeMm = 0.5;
/** Heights at which a name may stand, as shares of the water from the surface down. */
const upper = [0.12, 0.16, 0.2, 0.25, 0.3, 0.35, 0.4];
const lower = [0.9, 0.87, 0.84, 0.8, 0.76, 0.72, 0.68, 0.64, 0.6, 0.55, 0.5];

/** How far along a curve is at a height; its end below that. */
function acrossMm(places: readonly Point[], yMm: number): number {
  const piece = neighbours(places).find(([, b]) => b.yMm >= yMm);
  if (!piece) return Math.max(...places.map(({ xMm }) => xMm));
  const [a, b] = piece;
  const share = b.yMm === a.yMm ? 1 : Math.max(0, (yMm - a.yMm) / (b.yMm - a.yMm));
  return a.xMm + share * (b.xMm - a.xMm);
}

/**
 * The name of each curve: of the one that is further down at a time in the empty corner below the curves, of the other in
 * the one above them, each with a leader to its own curve.
 *
 * @param water the panel between surface and bed
 */
export function curveNames(
  curves: readonly NamedCurve[],
  water: Box,
  textMm: number,
  measure: MeasureText,
): CurveNames {
  const middleMm = (water.topMm + water.footMm) / 2;
  const [over, under] = curves.toSorted(
    (a, b) => acrossMm(b.places, middleMm) - acrossMm(a.places, middleMm),
  );
  const laid = [
    ...(over ? [nameBeside(over, curves, "upper", water, textMm, measure)] : []),
    ...(under ? [nameBeside(under, curves, "lower", water, textMm, measure)] : []),
  ];
  return { items: laid.flatMap(({ items }) => items), boxes: laid.map(({ box }) => box) };
}

function nameBeside(
  { places, say, beads }: NamedCurve,
  curves: readonly NamedCurve[],
  corner: "upper" | "lower",
  water: Box,
  textMm: number,
  measure: MeasureText,
): { items: readonly Item[]; box: Box } {
  const heightMm = water.footMm - water.topMm;
  const isUpper = corner === "upper";
  const roomAt = (label: LabelText, middleMm: number) => {
    const ends = [middleMm - label.heightMm / 2, middleMm + label.heightMm / 2];
    const across = curves.flatMap((curve) => ends.map((yMm) => acrossMm(curve.places, yMm)));
    return isUpper
      ? { leftMm: Math.max(...across) + asideMm, rightMm: water.rightMm }
      : { leftMm: water.leftMm + freeMm, rightMm: Math.min(...across) - asideMm };
  };
  // In as few lines as there is room for.
  const widest = layLabel(say, 0, textMm, measure, "whole").widthMm;
  const widths = [0.6, 0.45, 0.3].map((share) => share * (water.rightMm - water.leftMm));
  const tries = [...widths, widest + 0.01].flatMap((widthMm) => {
    const label = layLabel(say, widthMm, textMm, measure, "whole");
    return (isUpper ? upper : lower).map((share) => ({
      label,
      middleMm: Math.min(
        Math.max(water.topMm + share * heightMm, water.topMm + label.heightMm / 2 + 1.5),
        water.footMm - label.heightMm / 2 - 1,
      ),
    }));
  });
  const fits = ({ label, middleMm }: (typeof tries)[number]) => {
    const { leftMm, rightMm } = roomAt(label, middleMm);
    return rightMm - leftMm >= label.widthMm;
  };
  const { label, middleMm } = tries.find(fits) ?? tries.at(-1)!;
  const room = roomAt(label, middleMm);
  const leftMm = isUpper ? room.leftMm : room.rightMm - label.widthMm;
  const rightMm = leftMm + label.widthMm;
  const byHeight = (a: Point, b: Point) => Math.abs(a.yMm - middleMm) - Math.abs(b.yMm - middleMm);
  const to = beads?.toSorted(byHeight)[0] ?? point(acrossMm(places, middleMm), middleMm);
  const from = point(isUpper ? leftMm - leaderFreeMm : rightMm + leaderFreeMm, middleMm);
  return {
    items: [polyline([from, to], thinSoft), ...paintLabel(label, leftMm, middleMm, measure)],
    box: {
      leftMm: leftMm - freeMm,
      rightMm: rightMm + freeMm,
      topMm: middleMm - label.heightMm / 2 - freeMm / 2,
      footMm: middleMm + label.heightMm / 2 + freeMm / 2,
    },
  };
}

/** Straight lines of a grid, level or upright, left off where names stand. */
export function gridClearOf(
  boxes: readonly Box[],
  lines: readonly (readonly [Point, Point])[],
  stroke: Stroke,
): Item[] {
  return lines.flatMap(([a, b]) => {
    const isLevel = a.yMm === b.yMm;
    const covered = boxes
      .filter(({ leftMm, rightMm, topMm, footMm }) =>
        isLevel ? a.yMm > topMm && a.yMm < footMm : a.xMm > leftMm && a.xMm < rightMm,
      )
      .map(({ leftMm, rightMm, topMm, footMm }) => (isLevel ? [leftMm, rightMm] : [topMm, footMm]))
      .toSorted(([p = 0], [q = 0]) => p - q);
    const [from, to] = isLevel ? [a.xMm, b.xMm] : [a.yMm, b.yMm];
    const stops = [from, ...covered.flat(), to];
    return stops.flatMap((start, i) => {
      const end = stops[i + 1] ?? start;
      if (i % 2 === 1 || end - start < 0.5) return [];
      const at = (mm: number) => (isLevel ? point(mm, a.yMm) : point(a.xMm, mm));
      return [polyline([at(start), at(end)], stroke)];
    });
  });
}
