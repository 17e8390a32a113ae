import { entry } from "../../core/lists.ts";
import type { GroupItem } from "../../drawing/model.ts";
import type { Row } from "./chunks.ts";
import { withTextBeforePicture } from "./fill-page.ts";
import { mayCut } from "./may-cut.ts";

/** The rows of a page; a table that goes on from the page before has its head repeated above them. */
export interface PageRows {
  readonly rows: readonly Row[];
  readonly repeatedHead?: TableHead;
}

export interface TableHead {
  readonly row: Row;
  /** From its top to the top of the row below it. */
  readonly heightMm: number;
}

/**
 * Cuts a column into pages: headings keep with what follows, at least two lines of a paragraph and two rows of a table
 * stand on either side of a cut, tables repeat their head. Where a picture that does not fit would leave much of a page
 * empty, text that follows it goes before it. A row taller than a page gets one of its own and is the caller's to report.
 */
export function paginate(column: readonly Row[], pageHeightMm: number): PageRows[] {
  const pages: PageRows[] = [];
  const heads = tableHeads(column);
  let rows = column;
  let start = 0;
  while (start < rows.length) {
    const head = continuedHead(rows, start, heads);
    const roomMm = pageHeightMm - (head?.heightMm ?? 0);
    const full = firstBeyond(rows, start, roomMm);
    const cut = goodCut(rows, start, full);
    const filled = withTextBeforePicture(rows, start, cut, roomMm);
    if (filled) {
      rows = filled;
      continue;
    }
    pages.push({ rows: rows.slice(start, cut), ...(head && { repeatedHead: head }) });
    start = cut;
  }
  return pages;
}

type TableHeads = ReadonlyMap<GroupItem, TableHead>;

function tableHeads(rows: readonly Row[]): TableHeads {
  const heads = new Map<GroupItem, TableHead>();
  rows.forEach((row, i) => {
    if (!row.table || heads.has(row.table)) return;
    heads.set(row.table, { row, heightMm: (rows[i + 1]?.topMm ?? row.bottomMm) - row.topMm });
  });
  return heads;
}

function continuedHead(rows: readonly Row[], start: number, heads: TableHeads): TableHead | undefined {
  const { table } = entry(rows, start);
  const head = table && heads.get(table);
  return head?.row === rows[start] ? undefined : head;
}

function firstBeyond(rows: readonly Row[], start: number, roomMm: number): number {
  let end = start + 1;
  while (end < rows.length && entry(rows, end).bottomMm - entry(rows, start).topMm <= roomMm) end += 1;
  return end;
}

/** The last place up to `full` where a page may end; `full` itself where there is none. */
function goodCut(rows: readonly Row[], start: number, full: number): number {
  for (let cut = full; cut > start; cut--) {
    if (cut === rows.length || mayCut(rows, cut)) return cut;
  }
  return full;
}
