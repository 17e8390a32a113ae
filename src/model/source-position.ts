import type { Nodes } from "mdast";

/** From where to where a node stands in its file. */
type SourcePosition = NonNullable<Nodes["position"]>;

/** @throws RangeError for a node that was not read from a file */
export function positionOf(node: { readonly position?: SourcePosition | undefined }): SourcePosition {
  if (node.position === undefined) throw new RangeError("the node stands in no file");
  return node.position;
}
