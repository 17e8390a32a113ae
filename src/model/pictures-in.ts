import type { Root } from "mdast";
import type { PictureReference } from "./pictures.ts";
import { visit } from "./visit.ts";

const known = new WeakMap<Root, readonly PictureReference[]>();

/** The pictures of a text, in its order; one that stays as it is from one reading to the next is looked through once. */
export function picturesIn(live: Root): readonly PictureReference[] {
  const before = known.get(live);
  if (before) return before;
  const found: PictureReference[] = [];
  visit(live, "picture", ({ reference }) => void found.push(reference));
  known.set(live, found);
  return found;
}
