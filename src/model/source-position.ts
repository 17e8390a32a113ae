import type { Nodes } from "mdast";

/** From where to where a node stands in its file. */
type SourcePosition = NonNullable<Nodes["position"]>;

/** @throws RangeError for a node that was not read from a file */
export function positionOf(node: { readonly position?: SourcePosition | undefined }): SourcePosition {
  if (node.position === undefined) throw new RangeError("the node stands in no file");
  return node.position;
}

/**
 * Where a sign of a text stands, whose first line begins at a place and whose further ones begin in a column.
 *
 * @param at how many signs stand before it
 */
export function placeAfter(
  text: string,
  at: number,
  start: { readonly line: number; readonly column: number },
  left = 1,
): { readonly line: number; readonly column: number } {
  const before = text.slice(0, at).split("\n");
  const { length } = before.at(-1) ?? "";
  const line = start.line + before.length - 1;
  return { line, column: (before.length === 1 ? start.column : left) + length };
}
