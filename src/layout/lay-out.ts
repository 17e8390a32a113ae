import { known } from "../core/lists.ts";
import type { TextItem } from "../drawing/model.ts";
import type { Element } from "../markup/jsx-runtime.ts";
import { flexBox, laidFlex, type SizedBox } from "./flex.ts";
import type { Fonts } from "./fonts.ts";
import { type BoxNode, boxTree } from "./nodes.ts";
import type { LineExtent } from "./overflow.ts";
import { type LaidOutPage, type PageSize, pageOf } from "./page-of.ts";
import type { Rectangle } from "./rectangle.ts";

/**
 * Lays a TSX tree of boxes out on a page: rows and columns of boxes, and text broken into lines.
 *
 * @param tree one outermost box, which fills the page
 * @throws Error where the fonts lack a sign or a style is unknown here: a fault of a template
 */
export function layOut(tree: Element, size: PageSize, fonts: Fonts): LaidOutPage {
  const root = boxTree(tree);
  const sized = laidFlex(
    flexBox(root, { textAlign: "left", loneWord: "left" }, fonts),
    size.widthMm,
    size.heightMm,
  );
  const boxes = new Map<BoxNode, PlacedBox>();
  place(sized, 0, 0, boxes);
  const boxOf = (node: BoxNode) => known(boxes, node);
  const page = pageOf(root, size, {
    boxOf,
    linesOf: (node) => linesOf(boxOf(node)),
    extentsOf: (node) => extentsOf(node, boxOf(node)),
  });
  return Object.assign(page, { spareMm: sized.heightMm - sized.leastMm });
}

interface PlacedBox extends Rectangle {
  readonly sized: SizedBox;
}

function place(sized: SizedBox, xMm: number, yMm: number, boxes: Map<BoxNode, PlacedBox>): void {
  const { widthMm, heightMm } = sized;
  boxes.set(sized.box.node, { xMm, yMm, widthMm, heightMm, sized });
  for (const child of sized.children) place(child.sized, xMm + child.xMm, yMm + child.yMm, boxes);
}

/** Where the text of a box begins, and how wide a room it has. */
function textRoom({ xMm, yMm, widthMm, sized: { box } }: PlacedBox) {
  const { left, right, top } = box.padding;
  return { leftMm: xMm + left, topMm: yMm + top, roomMm: widthMm - left - right };
}

function linesOf(placed: PlacedBox): readonly TextItem[] {
  const { leftMm, topMm, roomMm } = textRoom(placed);
  return placed.sized.box.paragraph?.itemsAt(leftMm, topMm, roomMm) ?? [];
}

function extentsOf({ runs: [run] }: BoxNode, placed: PlacedBox): readonly LineExtent[] {
  const { paragraph } = placed.sized.box;
  if (paragraph === undefined || run === undefined) return [];
  const { leftMm, topMm, roomMm } = textRoom(placed);
  return paragraph.linesIn(roomMm).map(({ xMm, yMm, widthMm }) => {
    return { xMm: leftMm + xMm, yMm: topMm + yMm, widthMm, sizeMm: run.sizeMm };
  });
}
