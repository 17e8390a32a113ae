import type { GroupItem, Item } from "../../drawing/model.ts";
import type { Chunk } from "./chunks.ts";
import type { PageRows } from "./paginate.ts";

/** The marks of a page's rows in their groups again, with the first row at the top of the column. */
export function composePage({ rows, repeatedHead }: PageRows): Item[] {
  const topMm = rows[0]?.topMm ?? 0;
  const headMm = repeatedHead ? repeatedHead.bottomMm - repeatedHead.topMm : 0;
  const body = rows.flatMap((row) => row.chunks).map((chunk) => ({ chunk, byMm: headMm - topMm }));
  const head = (repeatedHead?.chunks ?? []).map((chunk) => ({ chunk, byMm: -repeatedHead!.topMm }));
  return regroup([...head, ...body], 0);
}

interface Shifted {
  readonly chunk: Chunk;
  readonly byMm: number;
}

/** Neighbours in the same group at this depth become one group; two pages of a list are two lists to a reader. */
function regroup(shifted: readonly Shifted[], depth: number): Item[] {
  const items: Item[] = [];
  let at = 0;
  while (at < shifted.length) {
    const group = shifted[at]!.chunk.path[depth];
    let end = at + 1;
    while (end < shifted.length && group !== undefined && shifted[end]!.chunk.path[depth] === group) end += 1;
    if (group === undefined) items.push(...moved(shifted[at]!));
    else items.push({ ...group, items: regroup(shifted.slice(at, end), depth + 1) } satisfies GroupItem);
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
