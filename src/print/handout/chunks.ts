import type { GroupItem, Item, TextItem } from "../../drawing/model.ts";
import type { FileFonts } from "../../layout/font-file.ts";
import { extentOf } from "../extent.ts";

/** What stays together of a laid-out column: a line of text, a row of a table, a heading, a picture with its caption. */
export interface Chunk {
  readonly topMm: number;
  readonly bottomMm: number;
  /** The groups around it, outermost first. */
  readonly path: readonly GroupItem[];
  readonly items: readonly Item[];
}

/** Groups that are not broken across pages; what readers skip is not either. */
const whole = new Set(["H1", "H2", "H3", "TR", "TOCI", "Figure", "Sect"]);

/** Parts of the em that a line of text takes up and down from its baseline. */
const lineAboveEm = 0.95;
const lineBelowEm = 0.3;

/** The pieces of a column, in reading order. */
export function chunksOf(items: readonly Item[], fonts: FileFonts): Chunk[] {
  const chunks: Chunk[] = [];
  const visit = (inside: readonly Item[], path: readonly GroupItem[]): void => {
    for (const item of inside) {
      if (item.kind === "text") {
        const last = chunks[chunks.length - 1];
        if (last && samePath(last.path, path) && baselineOf(last) === item.yMm) {
          chunks[chunks.length - 1] = { ...last, items: [...last.items, item] };
        } else {
          chunks.push(lineChunk(item, path));
        }
      } else if (item.kind === "group" && !whole.has(item.role ?? "") && !item.artifact) {
        visit(item.items, [...path, item]);
      } else {
        const extent = extentOf([item], fonts);
        if (extent) chunks.push({ topMm: extent.top, bottomMm: extent.bottom, path, items: [item] });
      }
    }
  };
  visit(items, []);
  return chunks;
}

function lineChunk(line: TextItem, path: readonly GroupItem[]): Chunk {
  return {
    topMm: line.yMm - lineAboveEm * line.sizeMm,
    bottomMm: line.yMm + lineBelowEm * line.sizeMm,
    path,
    items: [line],
  };
}

function baselineOf({ items }: Chunk): number | undefined {
  const [first] = items;
  return first?.kind === "text" ? first.yMm : undefined;
}

function samePath(a: readonly GroupItem[], b: readonly GroupItem[]): boolean {
  return a.length === b.length && a.every((group, i) => group === b[i]);
}

/** Chunks side by side: a page is only ever cut between two rows. */
export interface Row {
  readonly topMm: number;
  readonly bottomMm: number;
  readonly chunks: readonly Chunk[];
  /** The paragraph, list item or table that it belongs to. */
  readonly block: GroupItem | undefined;
  /** A heading: never the last on a page. */
  readonly heading: boolean;
  /** A picture with its caption, or several abreast. */
  readonly picture: boolean;
  /** A section of words that stays whole: the foot of a text. */
  readonly section: boolean;
  readonly table?: GroupItem;
  /** How far below its place in the column it goes, where it has changed places with a picture [mm]. */
  readonly shiftMm?: number;
}

/** Letters of neighbouring lines may reach into each other by this much [mm]. */
const overlapMm = 0.5;

export function rowsOf(chunks: readonly Chunk[]): Row[] {
  const rows: Row[] = [];
  for (const chunk of chunks) {
    const last = rows[rows.length - 1];
    if (last && chunk.topMm < last.bottomMm - overlapMm) {
      rows[rows.length - 1] = {
        ...last,
        topMm: Math.min(last.topMm, chunk.topMm),
        bottomMm: Math.max(last.bottomMm, chunk.bottomMm),
        chunks: [...last.chunks, chunk],
        block: chunk.path[chunk.path.length - 1] ?? last.block,
      };
    } else {
      rows.push(rowOf(chunk));
    }
  }
  return rows;
}

function rowOf(chunk: Chunk): Row {
  const { topMm, bottomMm, path, items } = chunk;
  const [first] = items;
  const role = first?.kind === "group" ? (first.role ?? "") : "";
  const picture = first?.kind === "group" && isPicture(first);
  const table = role === "TR" ? path[path.length - 1] : undefined;
  return {
    topMm,
    bottomMm,
    chunks: [chunk],
    block: path[path.length - 1],
    heading: /^H[1-3]$/.test(role),
    picture,
    section: role === "Sect" && !picture,
    ...(table && { table }),
  };
}

function isPicture({ role, items }: GroupItem): boolean {
  return (
    role === "Figure" || (role === "Sect" && items.some((item) => item.kind === "group" && isPicture(item)))
  );
}
