import type { Node, Parent } from "mdast";
import type { BuildVisitor } from "unist-util-visit";

// Walks of trees as unist-util-visit takes them. For a debugger's sake that package names a function anew at each node that it
// comes to, which costs ten times as much as the walk itself, and every text is walked some thirty times.

/** Given back by who is shown a node: go past what is in it. */
export const SKIP = "skip";
/** The walk is over. */
export const EXIT = false;

type Enter = (node: Node, index: number | undefined, parent: Parent | undefined) => unknown;
type Types = string | readonly string[];

/**
 * Shows each node of a tree, or each of some types: a node first and then what is in it. What it is told comes of it, besides the
 * above: a number is the place among its likes at which to go on, and a pair says both.
 */
export function visit<Tree extends Node, Check extends Types>(
  tree: Tree,
  types: Check,
  enter: BuildVisitor<Tree, Check>,
): void;
export function visit<Tree extends Node>(tree: Tree, enter: BuildVisitor<Tree>): void;
export function visit(tree: Node, asked: unknown, enter?: unknown): void {
  if (typeof asked === "function") walk(tree, undefined, undefined, () => true, asked as Enter);
  else walk(tree, undefined, undefined, isOneOf(asked as Types), enter as Enter);
}

const isOneOf = (types: Types) =>
  typeof types === "string" ? ({ type }: Node) => type === types : ({ type }: Node) => types.includes(type);

/** @returns where to go on among its likes, where that is not the next of them */
function walk(
  node: Node,
  index: number | undefined,
  parent: Parent | undefined,
  isAsked: (node: Node) => boolean,
  enter: Enter,
): number | typeof EXIT | undefined {
  const answer = isAsked(node) ? enter(node, index, parent) : undefined;
  const [action, next] = Array.isArray(answer) ? answer : [answer, answer];
  if (action === EXIT) return EXIT;
  if (action !== SKIP && "children" in node) {
    const { children } = node as Parent;
    for (let at = 0; at < children.length; ) {
      const child = children[at];
      const came = child && walk(child, at, node as Parent, isAsked, enter);
      if (came === EXIT) return EXIT;
      at = came ?? at + 1;
    }
  }
  return typeof next === "number" ? next : undefined;
}
