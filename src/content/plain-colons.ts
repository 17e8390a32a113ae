import type { Parent, Root, Text } from "mdast";
import type { TextDirective } from "mdast-util-directive";
import { positionOf } from "../model/source-position.ts";
import { SKIP, visit } from "../model/visit.ts";
import { inlineNames } from "../words/live/live-figures.ts";

/**
 * A time (`9:30`), a mix (`1:4`) or a word behind a colon is read as a directive without brackets; where none is called
 * so it is text, and stands in the guide as it was typed.
 *
 * @param text what the tree was parsed from
 */
export function withPlainColons(root: Root, text: string): Root {
  const changed = new Set<Parent>();
  visit(root, "textDirective", (node, index, parent) => {
    if (!parent || index === undefined || isMeant(node)) return;
    const position = positionOf(node);
    const value = text.slice(position.start.offset, position.end.offset);
    parent.children[index] = { type: "text", value, position };
    changed.add(parent);
    return SKIP;
  });
  for (const parent of changed) parent.children = joined(parent.children);
  return root;
}

/** Whether an author wanted a figure here: it has brackets, or the name of one. */
function isMeant(node: TextDirective): boolean {
  const { name } = node;
  const { start, end } = positionOf(node);
  const isBare = start.line === end.line && end.column - start.column === name.length + 1;
  return inlineNames.includes(name) || !(isBare || /^\d/.test(name));
}

/** Texts beside each other as one, for those who look for words. */
function joined<Child extends { type: string }>(children: readonly Child[]): Child[] {
  const whole: Child[] = [];
  for (const child of children) {
    const before = whole.at(-1);
    if (!before || !isText(before) || !isText(child)) {
      whole.push(child);
      continue;
    }
    const position = { start: positionOf(before).start, end: positionOf(child).end };
    whole[whole.length - 1] = { ...before, value: before.value + child.value, position };
  }
  return whole;
}

const isText = (node: { type: string }): node is Text => node.type === "text";
