import { entry } from "../../core/lists.ts";
import type { GroupItem } from "../../drawing/model.ts";
import type { Row } from "./chunks.ts";

/** Lines of a paragraph, or rows of a table, that stay together at either side of a cut (common practice, no source). */
const leastLines = 2;
/** Items of a list that stay together at either side of a cut. */
const leastItems = 2;

/** Whether a page may end above the row at `cut`. */
export function mayCut(rows: readonly Row[], cut: number): boolean {
  const above = entry(rows, cut - 1);
  const below = entry(rows, cut);
  // The foot of a text takes its last lines along.
  if (below.section && !above.picture) return false;
  if (above.heading || leadsOn(above, below) || leavesOneItem(rows, cut)) return false;
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

/** A sentence that ends in a colon stays with what it leads up to. */
function leadsOn(above: Row, below: Row): boolean {
  return above.block !== below.block && lastWords(above).endsWith(":");
}

function lastWords({ chunks }: Row): string {
  const item = chunks.at(-1)?.items.at(-1);
  return item?.kind === "text" ? item.text.trimEnd() : "";
}

/** Whether a cut between two items of a list would leave a single one on either side. */
function leavesOneItem(rows: readonly Row[], cut: number): boolean {
  const [above, below] = [entry(rows, cut - 1), entry(rows, cut)];
  const list = listOf(below);
  if (list === undefined || listOf(above) !== list || itemOf(above) === itemOf(below)) return false;
  const items = (from: number, step: 1 | -1) => {
    const seen = new Set<GroupItem>();
    for (let at = from; ; at += step) {
      const row = rows[at];
      const item = row && listOf(row) === list ? itemOf(row) : undefined;
      if (item === undefined) return seen.size;
      seen.add(item);
    }
  };
  return items(cut - 1, -1) < leastItems || items(cut, 1) < leastItems;
}

/** The outermost list around a row, and the item of it that the row belongs to. */
function listOf({ chunks }: Row): GroupItem | undefined {
  return chunks[0]?.path.find(({ role }) => role === "L");
}

function itemOf({ chunks }: Row): GroupItem | undefined {
  return chunks[0]?.path.find(({ role }) => role === "LI");
}
