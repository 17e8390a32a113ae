import { last } from "../../core/lists.ts";
import { type Point, point, polyline, thinSoft } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { type ColumnLabel, labelColumn, leaderMm } from "../labels/label-column.ts";
import { layLabel, leading, paintLabel } from "../labels/label-text.ts";
import type { Item } from "../model.ts";
import { bracketDepthMm } from "../parts/bracket.ts";
import type { RigLabel } from "./rig-labels.ts";
import type { PlacedMark } from "./rig-places.ts";
import type { RigPlan } from "./rig-plan.ts";

/** What a label points at on the drawing. */
interface Target extends ColumnLabel {
  readonly lying: boolean;
}

const marginMm = 0.5;
/** The foot of a leader beside the label of what lies on the bed, and what keeps it from being read as a letter there. */
const elbowMm = { foot: 1.2, clear: 0.9 } as const;
/** Between a label and the end of a leader that comes up to it from below, and the least such leader that is more than a speck. */
const upMm = { under: 0.1, least: 0.8 } as const;
/** Room around text that no other mark may enter. */
const clearMm = 0.6;
/** Between the last line of a column and the bed, so that it is not read as standing on it. */
const aboveBedMm = 1.2;

/** Places and paints every label with its leader; undefined where they do not fit. */
export function placeRigLabels(
  plan: RigPlan,
  labels: readonly RigLabel[],
  textMm: number,
  kit: DrawingKit,
): Item[] | undefined {
  const targets = labels.map((label) => target(plan, label));
  const hanging = targets.filter((one) => !one.lying).reverse();
  const lying = targets.filter((one) => one.lying);
  const rows = placeRows(plan, lying, hanging, textMm, kit);
  const column = rows && placeColumn(plan, hanging, rows.topMm, textMm, kit);
  return column && [...column, ...rows.items];
}

function target(plan: RigPlan, label: RigLabel): Target {
  const x = plan.floatAt.xMm;
  const { runs } = label;
  if (label.about === "clearance") {
    const { fromMm, toMm } = plan.clearance!;
    return { runs, at: point(x + plan.lean(0) + 0.8, (fromMm + toMm) / 2), lying: false };
  }
  if (label.about === "draught") {
    const widest = Math.max(...plan.float.profile.map((p) => p.diameterMm)) * plan.floatWidthScale;
    return {
      runs,
      at: point(x + widest / 2 + 0.6, (plan.surfaceMm + plan.floatAt.yMm) / 2),
      lying: false,
    };
  }
  const marks = marksOf(plan, label);
  const lower = marks[0]!;
  const upper = last(marks);
  if (lower.lying) return { runs, at: rimOf(plan, lower), lying: true };
  const right = Math.max(...marks.map((mark) => mark.at.xMm + reachMm(plan, mark)));
  const middle = lower.at.yMm - (lower.kind === "hook" ? plan.hookHeightMm / 2 : 0);
  if (marks.length === 1) return { runs, at: point(right + 0.5, middle), lying: false };
  return {
    runs,
    // One shot or many, a label stands at the lowest of them.
    at: point(right + 0.6 + bracketDepthMm, lower.at.yMm),
    lying: false,
    bracket: { fromMm: upper.at.yMm - upper.radiusMm, toMm: lower.at.yMm + lower.radiusMm },
  };
}

/** Where a leader leaves what lies on the bed: a shot on its right shoulder, clear of the line above, a hook over its bend. */
function rimOf(plan: RigPlan, { kind, at, radiusMm }: PlacedMark): Point {
  return kind === "hook"
    ? point(at.xMm, at.yMm - hookLyingHeightMm(plan))
    : point(at.xMm + Math.SQRT1_2 * radiusMm, at.yMm - Math.SQRT1_2 * radiusMm);
}

function marksOf(plan: RigPlan, label: RigLabel): PlacedMark[] {
  if (label.group) {
    const shots = new Set<unknown>(label.group.shots);
    return plan.marks.filter((mark) => mark.shot && shots.has(mark.shot));
  }
  return plan.marks.filter((mark) => mark.kind === label.about);
}

/** How far a mark reaches to the right of the line. */
function reachMm(plan: RigPlan, mark: PlacedMark): number {
  return mark.kind === "hook" ? 0.55 * plan.hookHeightMm + 0.3 : mark.radiusMm;
}

/** Labels beside the hanging rig, in one column from below the surface down to where those of what lies on the bed begin. */
function placeColumn(
  plan: RigPlan,
  targets: readonly Target[],
  bottomMm: number,
  textMm: number,
  { measure }: DrawingKit,
): Item[] | undefined {
  const column = {
    leftMm: columnLeftMm(plan, targets),
    rightMm: plan.box.widthMm - marginMm,
    topMm: plan.surfaceMm + clearMm,
    bottomMm,
    textMm,
  };
  return labelColumn(targets, column, measure);
}

/** How high a hook stands that lies on the bed. */
const hookLyingHeightMm = (plan: RigPlan): number => 0.55 * plan.hookHeightMm + 0.4;

/** How high the parts that lie on the bed stand. */
function lyingHeightMm(plan: RigPlan): number {
  const lying = plan.marks.filter((mark) => mark.lying);
  return Math.max(hookLyingHeightMm(plan) + 0.4, ...lying.map((mark) => 2 * mark.radiusMm));
}

interface Rows {
  readonly items: Item[];
  /** Above this other labels may stand. */
  readonly topMm: number;
}

/**
 * Labels of what lies on the bed, in rows above it, as a leader down into the bed reads as if its shot were buried: the one
 * furthest right in the lowest row, so that no leader runs through another label. All keep clear of what hangs.
 */
function placeRows(
  plan: RigPlan,
  targets: readonly Target[],
  hanging: readonly Target[],
  textMm: number,
  { measure }: DrawingKit,
): Rows | undefined {
  const items: Item[] = [];
  const right = plan.box.widthMm - marginMm;
  const isLying = plan.marks.some((mark) => mark.lying);
  let bottom = plan.bedMm - (isLying ? clearMm + lyingHeightMm(plan) : aboveBedMm);
  const sorted = [...targets].sort((a, b) => b.at.xMm - a.at.xMm);
  for (const [i, { at, runs }] of sorted.entries()) {
    const besideLine = footLeftMm(plan, hanging, bottom - 2 * leading * textMm);
    const footX = Math.max(at.xMm + elbowMm.foot, besideLine);
    const beside = footX + elbowMm.clear;
    const whole = layLabel(runs, plan.box.widthMm, textMm, measure, "whole");
    // One that would be broken there stands in one line above its leader, where it keeps clear of the line and of the others'.
    const above = right - whole.widthMm;
    const besideNext = footLeftMm(plan, hanging, bottom - 4 * leading * textMm);
    const leaders = sorted
      .slice(i + 1)
      .map((one) => Math.max(one.at.xMm + elbowMm.foot, besideNext) + elbowMm.clear);
    const isAbove = above < beside && above > Math.max(besideLine, ...leaders, marginMm);
    const left = isAbove ? above : Math.max(beside, ...leaders);
    const label = isAbove ? whole : layLabel(runs, right - left, textMm, measure, "whole");
    if (label.widthMm > right - left + 0.01) return undefined;
    const lastRow = bottom - (textMm * leading) / 2;
    const bend = point(footX, Math.max(at.yMm - (footX - at.xMm), lastRow));
    const upTo = point(at.xMm, bottom + upMm.under);
    const leader = isAbove ? [at, upTo] : [at, bend, point(footX, lastRow)];
    if (!isAbove || at.yMm - upTo.yMm >= upMm.least) items.push(polyline(leader, thinSoft));
    items.push(...paintLabel(label, left, bottom - label.heightMm / 2, measure));
    bottom -= label.heightMm;
  }
  return { items, topMm: sorted.length > 0 ? bottom - clearMm : bottom };
}

/** Right of what, below a height, the foot of a leader must stand: of all that hangs there, and of leaders from there up to the column. */
function footLeftMm(plan: RigPlan, targets: readonly Target[], belowMm: number): number {
  const isToldThere = targets.some(({ at, bracket }) => (bracket?.toMm ?? at.yMm) > belowMm);
  if (isToldThere) return columnLeftMm(plan, targets) - elbowMm.clear;
  const marks = plan.marks.filter(({ lying, at }) => !lying && at.yMm > belowMm);
  return Math.max(plan.floatAt.xMm, ...marks.map((mark) => besideMm(plan, mark))) + clearMm;
}

/** Left edge of the labels of what hangs. */
function columnLeftMm(plan: RigPlan, targets: readonly Target[]): number {
  const reaches = plan.marks.filter(({ lying }) => !lying).map((mark) => besideMm(plan, mark));
  return Math.max(...targets.map(({ at }) => at.xMm), ...reaches) + leaderMm;
}

/** Right of a mark that hangs, with the line there. */
const besideMm = (plan: RigPlan, mark: PlacedMark): number =>
  mark.at.xMm + Math.max(0.5, reachMm(plan, mark));
