import type { ReadPage, ReadPdf, TreeNode } from "../../print/read-pdf.ts";

interface Sheet {
  readonly front: ReadPage;
  readonly back: ReadPage;
}

type Side = "left" | "right";

/**
 * The pages of a booklet that was printed on sheets to fold, as its reader leafs through it: each section's sheets lie
 * inside one another, so that the right halves of the fronts and the left halves of the backs come one after the other
 * on the way in, and the other halves on the way out.
 */
export function leafedThrough(folded: ReadPdf): ReadPdf {
  const sheets = Array.from({ length: folded.pages.length / 2 }, (_, i) => ({
    front: folded.pages[2 * i]!,
    back: folded.pages[2 * i + 1]!,
  }));
  const pages = sectionsOf(sheets).flatMap((section) => [
    ...section.flatMap(({ front, back }) => [half(front, "right"), half(back, "left")]),
    ...section.toReversed().flatMap(({ front, back }) => [half(back, "right"), half(front, "left")]),
  ]);
  return { ...folded, pages };
}

/** Sheets that lie inside one another: a section begins where a sheet has a number at its fold. */
function sectionsOf(sheets: readonly Sheet[]): readonly Sheet[][] {
  const sections: Sheet[][] = [];
  for (const sheet of sheets) {
    const foldPt = sheet.front.box[2]! / 2;
    const isFirst = sheet.front.pieces.some(
      ({ text, x }) => /^\d+$/.test(text) && x > foldPt && x - foldPt < 10,
    );
    if (isFirst || sections.length === 0) sections.push([sheet]);
    else sections.at(-1)!.push(sheet);
  }
  return sections;
}

function half(page: ReadPage, side: Side): ReadPage {
  const foldPt = page.box[2]! / 2;
  return { ...page, tree: page.tree && onSide(page.tree, side, foldPt) };
}

/** What of a tree stands on one side of the fold; what has no words stands where the words before it do. */
function onSide(node: TreeNode, side: Side, foldPt: number): TreeNode {
  const sideOf = ({ left }: TreeNode): Side | undefined =>
    left === undefined ? undefined : left < foldPt ? "left" : "right";
  let before: Side = "left";
  const children = node.children.flatMap((child): TreeNode[] => {
    const rest = onSide(child, side, foldPt);
    if (child.children.length > 0 && child.text === "") return rest.children.length > 0 ? [rest] : [];
    before = sideOf(child) ?? before;
    return before === side ? [child] : [];
  });
  if (node.children.length === 0 || node.text !== "") return node;
  return { ...node, children, words: children.map(({ words }) => words).join(" ") };
}
