import { entry } from "../../core/lists.ts";
import type { Row } from "./chunks.ts";

/** Lines of a paragraph, or rows of a table, that stay together at either side of a cut (common practice, no source). */
const leastLines = 2;

/** Whether a page may end above the row at `cut`. */
export function mayCut(rows: readonly Row[], cut: number): boolean {
  const above = entry(rows, cut - 1);
  const below = entry(rows, cut);
  if (above.heading) return false;
  if (above.block === undefined || above.block !== below.block) return true;
  const headLines = above.table ? 1 : 0;
  const linesAbove = linesOfBlock(rows, cut - 1, -1) - headLines;
  return linesAbove >= leastLines && linesOfBlock(rows, cut, 1) >= leastLines;
}

function linesOfBlock(rows: readonly Row[], from: number, step: 1 | -1): number {
  const { block } = entry(rows, from);
  let count = 0;
  for (let at = from; rows[at]?.block === block && rows[at] !== undefined; at += step) count += 1;
  return count;
}
