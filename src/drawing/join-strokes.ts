import type { Drawing, Item, PathItem } from "./model.ts";

/**
 * The same drawing with neighbouring unfilled paths of one stroke joined into one path. It looks the same and takes
 * far less room on a page: the hatching of a bed is one path and not thirty.
 */
export function joinStrokes(drawing: Drawing): Drawing {
  return { ...drawing, items: joined(drawing.items) };
}

function joined(items: readonly Item[]): Item[] {
  const result: Item[] = [];
  for (const item of items) {
    const before = result.at(-1);
    if (item.kind === "group") result.push({ ...item, items: joined(item.items) });
    else if (item.kind === "path" && before?.kind === "path" && sameStroke(before, item)) {
      result[result.length - 1] = { ...before, steps: [...before.steps, ...item.steps] };
    } else result.push(item);
  }
  return result;
}

function sameStroke(a: PathItem, b: PathItem): boolean {
  if (a.fill || b.fill || !a.stroke || !b.stroke) return false;
  return JSON.stringify(a.stroke) === JSON.stringify(b.stroke);
}
