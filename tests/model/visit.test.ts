import fc from "fast-check";
import type { Node, Parent } from "mdast";
import { visit as reference } from "unist-util-visit";
import { expect, it } from "vitest";
import { EXIT, SKIP, visit } from "../../src/model/visit.ts";

/** A node that says what comes of being shown. */
interface Told extends Partial<Parent> {
  type: string;
  answer: unknown;
}

const answers = [
  undefined,
  undefined,
  undefined,
  SKIP,
  EXIT,
  true,
  0,
  1,
  [SKIP, 3],
  [SKIP],
  [true, 2],
  [EXIT, 1],
];

const { tree } = fc.letrec<{ tree: Told }>((tie) => ({
  tree: fc.record(
    {
      type: fc.constantFrom("a", "b", "c"),
      answer: fc.constantFrom(...answers),
      children: fc.array(tie("tree"), { maxLength: 4 }),
    },
    { requiredKeys: ["type", "answer"] },
  ) as fc.Arbitrary<Told>,
}));

type Walk = (tree: Node, ...how: unknown[]) => void;

/** Types and places of the nodes that are shown, at most so many: what sends a walk back may do so for ever. */
function shown(walk: Walk, root: Told, types?: string | string[]) {
  const seen: unknown[] = [];
  const enter = (node: Told, index: number | undefined, parent: Told | undefined) => {
    seen.push([node.type, index, parent?.type]);
    if (seen.length > 60) return EXIT;
    // A place before the own one, or the own one, is gone to once alone.
    return seen.length > 30 ? undefined : node.answer;
  };
  if (types === undefined) walk(root, enter);
  else walk(root, types, enter);
  return seen;
}

it("shows the same nodes as unist-util-visit, in its order, whatever comes of each", () => {
  fc.assert(
    fc.property(tree, fc.constantFrom(undefined, "a", ["a", "c"]), (root, types) => {
      expect(shown(visit as Walk, root, types)).toEqual(shown(reference as Walk, root, types));
    }),
    { numRuns: 300, seed: 19 },
  );
});

it("shows what was put in the place of a node on the way", () => {
  const root = { type: "root", children: [{ type: "old" }, { type: "last" }] };
  const seen: string[] = [];
  visit(root as Node, (node, index, parent) => {
    seen.push(node.type);
    if (node.type !== "old" || index === undefined) return;
    (parent as unknown as { children: unknown[] }).children.splice(
      index,
      1,
      { type: "new" },
      { type: "newer" },
    );
    return index;
  });
  expect(seen).toEqual(["root", "old", "new", "newer", "last"]);
});
