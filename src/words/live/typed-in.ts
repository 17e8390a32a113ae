import type { Nodes, Root } from "mdast";

export const childrenOf = (node: Nodes): readonly Nodes[] => ("children" in node ? node.children : []);

export const isDirective = (node: Nodes) => /^(?:text|leaf|container)Directive$/.test(node.type);

/** What is typed in a text that is to become something else: nodes with a directive in them, and whether it has images. */
interface Typed {
  readonly around: ReadonlySet<Nodes>;
  readonly images: boolean;
}

/** Texts that stay as they are from one reading to the next are looked through once. */
const typed = new WeakMap<Root, Typed>();

export function typedIn(root: Root): Typed {
  const known = typed.get(root);
  if (known) return known;
  const around = new Set<Nodes>();
  let images = false;
  const hasDirective = (node: Nodes): boolean => {
    images ||= node.type === "image" || node.type === "imageReference";
    // Each child is looked at, whatever the others have.
    if (childrenOf(node).filter(hasDirective).length > 0) around.add(node);
    return around.has(node) || isDirective(node);
  };
  hasDirective(root);
  const found = { around, images };
  typed.set(root, found);
  return found;
}
