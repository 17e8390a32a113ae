import type { TextItem } from "../drawing/model.ts";
import type { Element } from "../markup/jsx-runtime.ts";
import { flexBox, laidFlex, type SizedBox } from "./flex.ts";
import type { Fonts } from "./fonts.ts";
import { boxTree } from "./nodes.ts";
import { type LaidOutPage, type PageSize, pageOf } from "./page-of.ts";
import type { Rectangle } from "./rectangle.ts";

/**
 * Lays a TSX tree of boxes out on a page as `layOut` does, at once and without its engine: rows and columns of boxes, with
 * all of `LayoutStyle` but a grid's columns.
 *
 * @param tree one outermost box, which fills the page
 * @throws Error where the fonts lack a sign or a style is unknown here: a fault of a template
 */
export function layOutBoxes(tree: Element, size: PageSize, fonts: Fonts): LaidOutPage {
  const root = boxTree(tree);
  const box = flexBox(root, { textAlign: "left" }, fonts);
  const sized = laidFlex(box, size.widthMm, size.heightMm);
  const boxes = new Map<string, Rectangle>();
  const lines = new Map<string, TextItem[]>();
  placed(sized, 0, 0, boxes, lines);
  return pageOf(root, size, boxes, ({ key }) => lines.get(key) ?? [], fonts.measure);
}

function placed(
  { box, widthMm, heightMm, children }: SizedBox,
  xMm: number,
  yMm: number,
  boxes: Map<string, Rectangle>,
  lines: Map<string, TextItem[]>,
): void {
  const { key } = box.node;
  boxes.set(key, { xMm, yMm, widthMm, heightMm });
  const { padding, paragraph } = box;
  const roomMm = Math.max(0, widthMm - padding.left - padding.right);
  if (paragraph) lines.set(key, paragraph.itemsAt(xMm + padding.left, yMm + padding.top, roomMm));
  for (const child of children) placed(child.sized, xMm + child.xMm, yMm + child.yMm, boxes, lines);
}
