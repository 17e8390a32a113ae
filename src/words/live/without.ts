import type { Nodes, Parent, Root } from "mdast";

/** What is said in one go: with a piece of it gone, the rest makes no sense. */
const wholes: readonly Nodes["type"][] = ["paragraph", "heading", "tableRow"];

/** A text without some of its nodes, and without the sentences around them and the lists that they leave empty. */
export function without(root: Root, gone: ReadonlySet<Nodes>): Root {
  return gone.size === 0 ? root : (pruned(root, gone) as Root);
}

function pruned(node: Parent & Nodes, gone: ReadonlySet<Nodes>): Nodes {
  const children = (node.children as Nodes[]).flatMap((child): Nodes[] => {
    if (gone.has(child)) return [];
    if (!("children" in child)) return [child];
    if (wholes.includes(child.type)) return holds(child, gone) ? [] : [child];
    const rest = pruned(child, gone);
    return "children" in rest && rest.children.length === 0 && child.children.length > 0 ? [] : [rest];
  });
  return { ...node, children } as Nodes;
}

function holds(node: Nodes, gone: ReadonlySet<Nodes>): boolean {
  return gone.has(node) || ("children" in node && node.children.some((child) => holds(child, gone)));
}
