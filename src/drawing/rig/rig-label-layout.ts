import { last } from "../../core/lists.ts";
import { point, polyline, thinSoft } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { type ColumnLabel, labelColumn, leaderMm } from "../labels/label-column.ts";
import { layLabel, leading, paintLabel } from "../labels/label-text.ts";
import type { Item } from "../model.ts";
import { bedThicknessMm } from "../parts/bed.ts";
import { bracketDepthMm } from "../parts/bracket.ts";
import type { RigLabel } from "./rig-labels.ts";
import type { PlacedMark } from "./rig-places.ts";
import type { RigPlan } from "./rig-plan.ts";

/** What a label points at on the drawing. */
interface Target extends ColumnLabel {
  readonly lying: boolean;
}

const marginMm = 0.5;
/** The foot of a leader that comes down to a row below the bed, and what keeps it from being read as a letter there. */
const elbowMm = { foot: 1.2, clear: 0.9 } as const;
/** Between the bed's hatching and the first row below it. */
export const rowGapMm = 0.5;
/** How far into a row a leader comes down that ends above its label. */
const belowMm = 0.1;
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
  const column = placeColumn(plan, hanging, textMm, kit);
  const rows = placeRows(plan, lying, textMm, plan.box.heightMm - plan.footMm, kit);
  return column && rows && [...column, ...rows];
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
  if (lower.lying) return { runs, at: lower.at, lying: true };
  const right = Math.max(...marks.map((mark) => mark.at.xMm + reachMm(plan, mark)));
  const middle = (lower.at.yMm + upper.at.yMm) / 2 - (lower.kind === "hook" ? plan.hookHeightMm / 2 : 0);
  if (marks.length === 1) return { runs, at: point(right + 0.5, middle), lying: false };
  // The distance of shot pinched on together is that of the lowest.
  const told = label.group?.kind === "together" ? lower.at.yMm : middle;
  return {
    runs,
    at: point(right + 0.6 + bracketDepthMm, told),
    lying: false,
    bracket: { fromMm: upper.at.yMm - upper.radiusMm, toMm: lower.at.yMm + lower.radiusMm },
  };
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

/** Labels beside the hanging rig, in one column below the surface, from the top down. */
function placeColumn(
  plan: RigPlan,
  targets: readonly Target[],
  textMm: number,
  { measure }: DrawingKit,
): Item[] | undefined {
  const lying = plan.marks.some((mark) => mark.lying);
  const reaches = plan.marks
    .filter((mark) => !mark.lying)
    .map((mark) => mark.at.xMm + Math.max(0.5, reachMm(plan, mark)));
  const column = {
    leftMm: Math.max(...targets.map((one) => one.at.xMm), ...reaches) + leaderMm,
    rightMm: plan.box.widthMm - marginMm,
    topMm: plan.surfaceMm + clearMm,
    bottomMm: plan.bedMm - (lying ? clearMm + lyingHeightMm(plan) : aboveBedMm),
    textMm,
  };
  return labelColumn(targets, column, measure);
}

/** How high the parts that lie on the bed stand. */
function lyingHeightMm(plan: RigPlan): number {
  const lying = plan.marks.filter((mark) => mark.lying);
  return Math.max(0.55 * plan.hookHeightMm + 0.8, ...lying.map((mark) => 2 * mark.radiusMm));
}

/**
 * Labels of what lies on the bed, in rows below it: the one furthest right in the top row, so that no leader runs
 * through another label.
 */
function placeRows(
  plan: RigPlan,
  targets: readonly Target[],
  textMm: number,
  bottomMm: number,
  { measure }: DrawingKit,
): Item[] | undefined {
  const items: Item[] = [];
  const right = plan.box.widthMm - marginMm;
  let top = plan.bedMm + bedThicknessMm + rowGapMm;
  const sorted = [...targets].sort((a, b) => b.at.xMm - a.at.xMm);
  for (const [i, one] of sorted.entries()) {
    const x = one.at.xMm;
    const beside = x + elbowMm.foot + elbowMm.clear;
    const whole = layLabel(one.runs, plan.box.widthMm, textMm, measure, "whole");
    // One that would be broken there stands in one line below its leader, where it keeps clear of the others'.
    const below = right - whole.widthMm;
    const isBelow =
      below < beside &&
      below > Math.max(...sorted.slice(i + 1).map(({ at }) => at.xMm + elbowMm.clear), marginMm);
    const left = isBelow ? below : beside;
    const label = isBelow ? whole : layLabel(one.runs, right - left, textMm, measure, "whole");
    if (label.widthMm > right - left + 0.01) return undefined;
    const middle = top + label.heightMm / 2;
    const first = top + (textMm * leading) / 2;
    const down = point(x, one.at.yMm + 0.4);
    const leader = isBelow
      ? [down, point(x, top + belowMm)]
      : [down, point(x, first), point(x + elbowMm.foot, first)];
    items.push(polyline(leader, thinSoft), ...paintLabel(label, left, middle, measure));
    top += label.heightMm;
  }
  return top <= bottomMm + 0.01 ? items : undefined;
}
