import { paired } from "../../core/lists.ts";
import { type Point, point, polyline, thinSoft } from "../items.ts";
import type { Item, MeasureText } from "../model.ts";
import { bracketDepthMm } from "../parts/bracket.ts";
import { parts } from "../parts/parts.ts";
import { placeInOrder } from "./label-placement.ts";
import { layLabel, paintLabel, type Run } from "./label-text.ts";

/** What a label says and where its leader starts; with a bracket where it stands for a stretch. */
export interface ColumnLabel {
  readonly runs: readonly Run[];
  readonly at: Point;
  readonly bracket?: { readonly fromMm: number; readonly toMm: number };
}

interface Column {
  /** Left edge of the text. */
  readonly leftMm: number;
  readonly rightMm: number;
  readonly topMm: number;
  readonly bottomMm: number;
  readonly textMm: number;
}

/** Between labels: so much that lines of one are told from those of the next, or less where there is no room for that [em]. */
const gapEms = [0.5, 0.3, 0.15] as const;

/** Room for the leaders between a picture and its labels. */
export const leaderMm = 4.5;

/**
 * Labels in one column to the right of what they name, from the top down, each with a leader that bends in the room
 * left of the column. Undefined where they do not fit.
 */
export function labelColumn(
  labels: readonly ColumnLabel[],
  { leftMm, rightMm, topMm, bottomMm, textMm }: Column,
  measure: MeasureText,
): Item[] | undefined {
  const roomMm = rightMm - leftMm;
  const laid = labels.map((label) => layLabel(label.runs, roomMm, textMm, measure, "whole"));
  if (laid.some((label) => label.widthMm > roomMm)) return undefined;
  const wanted = paired(labels, laid).map(([label, { heightMm }]) => ({
    atMm: label.at.yMm,
    sizeMm: heightMm,
  }));
  const places = gapEms.reduce<number[] | undefined>(
    (found, gapEm) => found ?? placeInOrder(wanted, topMm, bottomMm, gapEm * textMm),
    undefined,
  );
  if (!places) return undefined;
  const bendMm = leftMm - leaderMm + 0.8;
  return paired(labels, paired(laid, places)).flatMap(([{ at, bracket }, [label, place]]) => {
    const leader = [at, point(Math.max(bendMm, at.xMm), at.yMm), point(leftMm - 0.7, place)];
    return [
      ...(bracket ? parts.bracket.draw({ xMm: at.xMm - bracketDepthMm, ...bracket }) : []),
      polyline(leader, thinSoft),
      ...paintLabel(label, leftMm, place, measure),
    ];
  });
}
