import type { GroupItem } from "../../drawing/model.ts";
import type { Row } from "./chunks.ts";

/** The rows of a page; a table that goes on from the page before has its head repeated above them. */
export interface PageRows {
  readonly rows: readonly Row[];
  readonly repeatedHead?: Row;
}

/** Lines of a paragraph that stay together at the foot or the head of a page (common practice, no source). */
const leastLines = 2;

/**
 * Cuts a column into pages: headings keep with what follows, at least two lines of a paragraph stand on either side of
 * a cut, tables repeat their head. A row taller than a page gets one of its own and is the caller's to report.
 */
export function paginate(rows: readonly Row[], pageHeightMm: number): PageRows[] {
  const pages: PageRows[] = [];
  const heads = tableHeads(rows);
  let start = 0;
  while (start < rows.length) {
    const head = continuedHead(rows, start, heads);
    const roomMm = pageHeightMm - (head ? head.bottomMm - head.topMm : 0);
    const full = firstBeyond(rows, start, roomMm);
    const cut = goodCut(rows, start, full, heads);
    pages.push({ rows: rows.slice(start, cut), ...(head && { repeatedHead: head }) });
    start = cut;
  }
  return pages;
}

function tableHeads(rows: readonly Row[]): Map<GroupItem, Row> {
  const heads = new Map<GroupItem, Row>();
  for (const row of rows) if (row.table && !heads.has(row.table)) heads.set(row.table, row);
  return heads;
}

function continuedHead(
  rows: readonly Row[],
  start: number,
  heads: ReadonlyMap<GroupItem, Row>,
): Row | undefined {
  const { table } = rows[start]!;
  return table && heads.get(table) !== rows[start] ? heads.get(table) : undefined;
}

function firstBeyond(rows: readonly Row[], start: number, roomMm: number): number {
  let end = start + 1;
  while (end < rows.length && rows[end]!.bottomMm - rows[start]!.topMm <= roomMm) end += 1;
  return end;
}

/** The last place up to `full` where a page may end; `full` itself where there is none. */
function goodCut(
  rows: readonly Row[],
  start: number,
  full: number,
  heads: ReadonlyMap<GroupItem, Row>,
): number {
  for (let cut = full; cut > start; cut--) {
    if (cut === rows.length || mayCut(rows, cut, heads)) return cut;
  }
  return full;
}

function mayCut(rows: readonly Row[], cut: number, heads: ReadonlyMap<GroupItem, Row>): boolean {
  const above = rows[cut - 1]!;
  const below = rows[cut]!;
  if (above.heading) return false;
  if (above.table) return heads.get(above.table) !== above;
  if (above.block === undefined || above.block !== below.block) return true;
  return linesOfBlock(rows, cut - 1, -1) >= leastLines && linesOfBlock(rows, cut, 1) >= leastLines;
}

function linesOfBlock(rows: readonly Row[], from: number, step: 1 | -1): number {
  const { block } = rows[from]!;
  let count = 0;
  for (let at = from; rows[at]?.block === block && rows[at] !== undefined; at += step) count += 1;
  return count;
}
