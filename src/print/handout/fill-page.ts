import { entry } from "../../core/lists.ts";
import type { Row } from "./chunks.ts";
import { mayCut } from "./may-cut.ts";

/** A page with more than this share of its room empty looks unfinished. Our own choice. */
const emptyShare = 1 / 3;

/**
 * The rows with text that follows a picture put before it, where the picture begins the next page and leaves much of this
 * one empty. Headings, tables, other pictures and the foot stay behind it, and so does text that leads up to another picture.
 *
 * @param start first row of the page
 * @param cut first row of the next
 * @returns none where nothing can be put there
 */
export function withTextBeforePicture(
  rows: readonly Row[],
  start: number,
  cut: number,
  roomMm: number,
): readonly Row[] | undefined {
  const picture = rows[cut];
  const [first, last] = [entry(rows, start), entry(rows, cut - 1)];
  const leftMm = roomMm - (last.bottomMm - first.topMm);
  if (!picture?.picture || last.heading || leftMm <= emptyShare * roomMm) return undefined;
  const from = cut + 1;
  const to = endOfFit(rows, from, leftMm - ((rows[from]?.topMm ?? 0) - picture.bottomMm));
  if (to <= from) return undefined;
  const upMm = entry(rows, from).topMm - picture.topMm;
  const movedMm = (rows[to]?.topMm ?? 0) - entry(rows, from).topMm;
  return [
    ...rows.slice(0, cut),
    ...rows.slice(from, to).map((row) => lower(row, -upMm)),
    picture,
    ...rows.slice(to).map((row) => lower(row, -movedMm)),
  ];
}

/** Where the text ends that fits into a height and may be cut there. */
function endOfFit(rows: readonly Row[], from: number, heightMm: number): number {
  let end = from;
  while (end < rows.length && isText(entry(rows, end))) end += 1;
  if (rows[end]?.picture) return from;
  while (end > from) {
    const fits = entry(rows, end - 1).bottomMm - entry(rows, from).topMm <= heightMm;
    if (fits && (end === rows.length || rows[end]?.section || mayCut(rows, end))) break;
    end -= 1;
  }
  return end;
}

const isText = ({ heading, picture, section, table }: Row) => !heading && !picture && !section && !table;

function lower(row: Row, byMm: number): Row {
  const { topMm, bottomMm, shiftMm = 0 } = row;
  return { ...row, topMm: topMm + byMm, bottomMm: bottomMm + byMm, shiftMm: shiftMm + byMm };
}
