import { entry } from "../../core/lists.ts";
import type { GroupItem, Item } from "../../drawing/model.ts";
import type { Chunk } from "./chunks.ts";
import type { PageRows, TableHead } from "./paginate.ts";

/**
 * The marks of each page's rows in their groups again, with the first row at the top of the column. A group that goes
 * on over pages keeps one name on all of them; a table's repeated head is for the eye alone.
 *
 * @param name tells the column from others of the same document
 */
export function composePages(pages: readonly PageRows[], name: string): Item[][] {
  const broken = brokenGroups(pages, name);
  return pages.map(({ rows, repeatedHead }) => {
    const topMm = (repeatedHead?.heightMm ?? 0) - (rows[0]?.topMm ?? 0);
    const body = rows.flatMap(({ chunks, shiftMm = 0 }) =>
      chunks.map((chunk) => ({ chunk, byMm: topMm + shiftMm })),
    );
    const head = headItems(repeatedHead);
    return [...(head.length > 0 ? [asArtifact(head)] : []), ...regroup(body, 0, broken)];
  });
}

function headItems(head: TableHead | undefined): Item[] {
  if (head === undefined) return [];
  const { chunks, topMm } = head.row;
  return chunks.flatMap((chunk) => moved({ chunk, byMm: -topMm }));
}

/** Names of the groups that stand on more than one page. */
type BrokenGroups = ReadonlyMap<GroupItem, string>;

function brokenGroups(pages: readonly PageRows[], name: string): BrokenGroups {
  const firstPage = new Map<GroupItem, number>();
  const broken = new Map<GroupItem, string>();
  pages.forEach(({ rows }, page) => {
    for (const group of rows.flatMap((row) => row.chunks).flatMap((chunk) => chunk.path)) {
      const first = firstPage.get(group) ?? page;
      firstPage.set(group, first);
      if (first !== page && !broken.has(group)) broken.set(group, `${name}/${broken.size + 1}`);
    }
  });
  return broken;
}

interface Shifted {
  readonly chunk: Chunk;
  readonly byMm: number;
}

/** Neighbours in the same group at this depth become one group. */
function regroup(shifted: readonly Shifted[], depth: number, broken: BrokenGroups): Item[] {
  const items: Item[] = [];
  let at = 0;
  while (at < shifted.length) {
    const group = entry(shifted, at).chunk.path[depth];
    let end = at + 1;
    while (end < shifted.length && group !== undefined && entry(shifted, end).chunk.path[depth] === group)
      end += 1;
    if (group === undefined) {
      items.push(...moved(entry(shifted, at)));
    } else {
      const name = broken.get(group);
      const inside = regroup(shifted.slice(at, end), depth + 1, broken);
      items.push({ ...group, ...(name !== undefined && { element: name }), items: inside });
    }
    at = end;
  }
  return items;
}

function moved({ chunk, byMm }: Shifted): Item[] {
  return chunk.items.map((item): Item => {
    if (item.kind === "text") return { ...item, yMm: item.yMm + byMm };
    return { kind: "group", xMm: 0, yMm: byMm, items: [item] };
  });
}

function asArtifact(items: readonly Item[]): GroupItem {
  return { kind: "group", xMm: 0, yMm: 0, artifact: true, items };
}
