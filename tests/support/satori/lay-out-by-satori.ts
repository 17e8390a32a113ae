import { known } from "../../../src/core/lists.ts";
import type { TextItem } from "../../../src/drawing/model.ts";
import type { FileFonts } from "../../../src/layout/font-file.ts";
import { type BoxNode, boxTree } from "../../../src/layout/nodes.ts";
import { type LaidOutPage, type PageSize, pageOf } from "../../../src/layout/page-of.ts";
import type { Element } from "../../../src/markup/jsx-runtime.ts";
import { measureBoxes } from "./measure-boxes.ts";
import { PieceReader } from "./text-lines.ts";

/**
 * Lays a TSX tree of boxes out on a page as satori would: what the own layout is held against.
 *
 * @param tree one outermost box, which fills the page
 * @returns marks in reading order; what does not fit is in `overflows`, with its field and how far it sticks out
 * @throws Error where the fonts lack a sign or a template is at fault
 */
export async function layOutBySatori(tree: Element, size: PageSize, fonts: FileFonts): Promise<LaidOutPage> {
  const root = boxTree(tree);
  const sized: BoxNode = {
    ...root,
    props: { ...root.props, style: { ...root.props.style, width: size.widthMm, height: size.heightMm } },
  };
  const { boxes, pieces } = await measureBoxes(sized, size, fonts);
  const reader = new PieceReader(pieces, fonts.measure);
  const lines = new Map<BoxNode, readonly TextItem[]>();
  const read = (node: BoxNode): void => {
    lines.set(node, reader.lines(node.runs));
    node.boxes.forEach(read);
  };
  read(sized);
  reader.finish();
  const linesOf = (node: BoxNode) => known(lines, node);
  const extentsOf = (node: BoxNode) =>
    linesOf(node).map(({ xMm, yMm, text, sizeMm, face }) => {
      return { xMm, yMm, sizeMm, widthMm: fonts.measure(text.trimEnd(), sizeMm, face) };
    });
  return pageOf(sized, size, { boxOf: (node) => known(boxes, node), linesOf, extentsOf });
}
