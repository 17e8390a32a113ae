import type { GroupItem, Item, PathItem, TextItem } from "../drawing/model.ts";
import type { LayoutStyle, Paint, Rule } from "../markup/boxes.ts";
import type { BoxNode } from "./nodes.ts";
import { boxOverflow, type LineExtent, type Overflow, textOverflow, worst } from "./overflow.ts";
import { paddingOf } from "./padding.ts";
import type { Rectangle } from "./rectangle.ts";

export interface PageSize {
  readonly widthMm: number;
  /** None: as long as what is on it. */
  readonly heightMm?: number;
}

/** A page as marks in millimetres, x to the right and y down from the top left corner. */
export interface LaidOutPage {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Pictures are drawn when these are asked for first. */
  readonly items: readonly Item[];
  /** What did not fit; empty on a page that may be printed. */
  readonly overflows: readonly Overflow[];
  /** Height that is left of a page of a given height; less than 0 where some is lacking. Known as it is laid out. */
  readonly spareMm?: number;
  /** Stands for all that its marks are made from, where that is known. */
  readonly from?: string;
}

/** Boxes as an engine has laid them out. */
interface LaidOutBoxes {
  boxOf(node: BoxNode): Rectangle;
  linesOf(node: BoxNode): readonly TextItem[];
  extentsOf(node: BoxNode): readonly LineExtent[];
}

/** The marks of boxes that have been laid out, in reading order; they are made once somebody asks for them. */
export function pageOf(
  root: BoxNode,
  size: PageSize,
  { boxOf, linesOf, extentsOf }: LaidOutBoxes,
): LaidOutPage {
  const overflows: Overflow[] = [];
  const note = (node: BoxNode, around: Rectangle): void => {
    const box = boxOf(node);
    const inside = withoutPadding(box, node.props.style ?? {});
    for (const one of [
      ...boxOverflow(node.field, box, around),
      ...textOverflow(node.field, extentsOf(node), inside),
    ])
      overflows.push(node.at ? { ...one, at: node.at } : one);
    for (const inner of node.boxes) note(inner, inside);
  };
  const marks = (node: BoxNode): Item[] => {
    const box = boxOf(node);
    return grouped(node, [
      ...painted(node.props.paint ?? {}, box),
      ...drawn(node, box),
      ...linesOf(node),
      ...node.boxes.flatMap(marks),
    ]);
  };
  const heightMm = size.heightMm ?? boxOf(root).heightMm;
  note(root, { xMm: 0, yMm: 0, widthMm: size.widthMm, heightMm });
  return pageWith(size.widthMm, heightMm, worst(overflows), () => marks(root));
}

/** Boxes are forgotten once their marks are made. */
function pageWith(
  widthMm: number,
  heightMm: number,
  overflows: readonly Overflow[],
  marks: () => readonly Item[],
): LaidOutPage {
  let rest: (() => readonly Item[]) | undefined = marks;
  let made: readonly Item[] = [];
  return {
    widthMm,
    heightMm,
    overflows,
    get items() {
      if (rest) made = rest();
      rest = undefined;
      return made;
    },
  };
}

function withoutPadding(box: Rectangle, style: LayoutStyle): Rectangle {
  const { left, right, top, bottom } = paddingOf(style);
  return {
    xMm: box.xMm + left,
    yMm: box.yMm + top,
    widthMm: box.widthMm - left - right,
    heightMm: box.heightMm - top - bottom,
  };
}

function grouped({ props: { tag: role, alt, artifact, span } }: BoxNode, items: Item[]): Item[] {
  if (role === undefined && !artifact) return items;
  const group: GroupItem = {
    kind: "group",
    xMm: 0,
    yMm: 0,
    ...(role && { role }),
    ...(alt !== undefined && { alt }),
    ...(artifact && { artifact }),
    ...(span !== undefined && { span }),
    items,
  };
  return [group];
}

function drawn(node: BoxNode, box: Rectangle): Item[] {
  if (!node.props.draw) return [];
  const items = node.props.draw(box.widthMm, box.heightMm);
  return [{ kind: "group", xMm: box.xMm, yMm: box.yMm, items }];
}

function painted(paint: Paint, box: Rectangle): Item[] {
  const { xMm: x, yMm: y, widthMm: w, heightMm: h } = box;
  const items: Item[] = [];
  if (paint.fill) items.push({ ...rectangle(box), fill: paint.fill });
  if (paint.ruleAbove) items.push(across(x, x + w, y, paint.ruleAbove));
  if (paint.ruleBelow) items.push(across(x, x + w, y + h, paint.ruleBelow));
  if (paint.frame) items.push({ ...rectangle(box), stroke: paint.frame });
  return items;
}

function across(fromXMm: number, toXMm: number, yMm: number, stroke: Rule): PathItem {
  return {
    kind: "path",
    steps: [
      ["M", fromXMm, yMm],
      ["L", toXMm, yMm],
    ],
    stroke,
  };
}

function rectangle({ xMm: x, yMm: y, widthMm: w, heightMm: h }: Rectangle): PathItem {
  return {
    kind: "path",
    steps: [["M", x, y], ["L", x + w, y], ["L", x + w, y + h], ["L", x, y + h], ["Z"]],
  };
}
