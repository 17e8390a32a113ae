import { paired, sum } from "../core/lists.ts";
import { type LayoutStyle, lengthStyles } from "../markup/boxes.ts";
import { flexibleLengths } from "./flexible-lengths.ts";
import type { Fonts } from "./fonts.ts";
import type { BoxNode } from "./nodes.ts";
import { type Padding, paddingOf } from "./padding.ts";
import { Paragraph, type TextStyle } from "./paragraph.ts";

/**
 * Rows and columns of boxes, one line each. Source: CSS Flexible Box Layout Module Level 1, for boxes that shrink to
 * nothing less than what is in them.
 */

/** A box with its own measures worked out. */
interface FlexBox {
  readonly node: BoxNode;
  readonly style: LayoutStyle;
  readonly padding: Padding;
  readonly paragraph: Paragraph | undefined;
  readonly children: readonly FlexBox[];
}

/** A box as large as it is, with the places of those in it. */
export interface SizedBox {
  readonly box: FlexBox;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Height of what is in it, with its padding. */
  readonly leastMm: number;
  /** Of its first line, from its top. */
  readonly baselineMm: number;
  readonly children: readonly { readonly sized: SizedBox; readonly xMm: number; readonly yMm: number }[];
}

/** Every style that a box may have here; what is not in this list is not laid out as if it were not there. */
const known: ReadonlySet<string> = new Set([
  ...lengthStyles,
  "direction",
  "grow",
  "align",
  "justify",
  "textAlign",
  "loneWord",
  "sizePt",
  "lineHeight",
  "face",
]);

/** @throws Error where a style is not known here */
export function flexBox(node: BoxNode, around: TextStyle, fonts: Fonts): FlexBox {
  const style = node.props.style ?? {};
  for (const name in style) {
    if (!known.has(name)) throw new Error(`no style "${name}" is known, in field "${node.field}"`);
  }
  const text = textStyle(style, around);
  return {
    node,
    style,
    padding: paddingOf(style),
    paragraph: node.runs.length > 0 ? new Paragraph(node.runs, text, fonts) : undefined,
    children: node.boxes.map((inner) => flexBox(inner, text, fonts)),
  };
}

/** What its text has of a box, and of those around it. */
function textStyle(style: LayoutStyle, around: TextStyle): TextStyle {
  const { textAlign = around.textAlign, loneWord = around.loneWord, lineHeight = around.lineHeight } = style;
  const isAlike =
    textAlign === around.textAlign && loneWord === around.loneWord && lineHeight === around.lineHeight;
  if (isAlike) return around;
  return lineHeight === undefined ? { textAlign, loneWord } : { textAlign, loneWord, lineHeight };
}

const isRow = ({ style }: FlexBox) => style.direction === "row";

/** What its padding takes of a box from side to side, and from top to bottom [mm]. */
const across = ({ padding }: FlexBox) => padding.left + padding.right;

const down = ({ padding }: FlexBox) => padding.top + padding.bottom;

/** Between the boxes in a box, all of them [mm]. */
const gaps = ({ style, children }: FlexBox) => (style.gap ?? 0) * Math.max(0, children.length - 1);

/** Width of a box with all of its text in one line [mm]. */
function fullWidth(box: FlexBox): number {
  if (box.style.width !== undefined) return Math.max(box.style.width, across(box));
  if (box.paragraph) return across(box) + box.paragraph.in(Number.POSITIVE_INFINITY).widthMm;
  const widths = box.children.map((child) => fullWidth(child) + (child.style.marginLeft ?? 0));
  return across(box) + (isRow(box) ? sum(widths) + gaps(box) : Math.max(0, ...widths));
}

/** Width of a box whose text breaks where there is no more room; what cannot break sticks out [mm]. */
function fittedWidth(box: FlexBox, roomMm: number): number {
  if (box.style.width !== undefined) return fullWidth(box);
  if (isRow(box)) return Math.max(across(box), Math.min(fullWidth(box), roomMm));
  const insideMm = roomMm - across(box);
  if (box.paragraph) return across(box) + box.paragraph.in(insideMm).widthMm;
  const widths = box.children.map((child) => {
    const { marginLeft = 0 } = child.style;
    return marginLeft + fittedWidth(child, insideMm - marginLeft);
  });
  return across(box) + Math.max(0, ...widths);
}

/**
 * A box laid out in a width, and in a height where that is given; else it is as high as what is in it, and no lower than
 * its `minHeight`.
 */
export function laidFlex(box: FlexBox, widthMm: number, heightMm?: number): SizedBox {
  const { minHeight = 0 } = box.style;
  const laid = laidIn(box, Math.max(widthMm, across(box)), heightMm);
  if (heightMm !== undefined || laid.heightMm >= minHeight) return laid;
  return laidIn(box, laid.widthMm, minHeight);
}

function laidIn(box: FlexBox, widthMm: number, heightMm?: number): SizedBox {
  if (box.paragraph) return laidText(box, box.paragraph, widthMm, heightMm);
  return isRow(box) ? laidRow(box, widthMm, heightMm) : laidColumn(box, widthMm, heightMm);
}

function laidText(box: FlexBox, paragraph: Paragraph, widthMm: number, heightMm?: number): SizedBox {
  const leastMm = paragraph.in(widthMm - across(box)).heightMm + down(box);
  return {
    box,
    widthMm,
    heightMm: heightMm ?? leastMm,
    leastMm,
    baselineMm: box.padding.top + paragraph.baselineMm,
    children: [],
  };
}

/** The height that a box is given by its style, if any. */
function setHeight(box: FlexBox): number | undefined {
  const { height, minHeight = 0 } = box.style;
  return height === undefined ? undefined : Math.max(height, minHeight, down(box));
}

/** A box that has been laid out as high as another says, which is mostly as high as it is. */
function ofHeight(sized: SizedBox, heightMm: number): SizedBox {
  return sized.heightMm === heightMm ? sized : laidFlex(sized.box, sized.widthMm, heightMm);
}

function laidColumn(box: FlexBox, widthMm: number, heightMm?: number): SizedBox {
  const { padding, style, children } = box;
  const roomMm = widthMm - across(box);
  const widths = children.map((child) => widthInColumn(child, roomMm - (child.style.marginLeft ?? 0), style));
  const around = children.map((child) => (child.style.marginTop ?? 0) + (child.style.marginBottom ?? 0));
  const own = paired(children, widths).map(([child, width]) => laidFlex(child, width, setHeight(child)));
  const items = own.map(({ box: child, heightMm: leastMm }) => {
    const { grow } = child.style;
    return { grow, startMm: grow === undefined ? leastMm : down(child), leastMm };
  });
  const restMm = sum(around) + gaps(box);
  const leasts = items.map(({ leastMm }) => leastMm);
  const insideMm = (heightMm ?? 0) - down(box) - restMm;
  const heights = heightMm === undefined ? leasts : flexibleLengths(items, insideMm);
  const usedMm = sum(heights) + restMm;
  const freeMm = heightMm === undefined ? 0 : heightMm - down(box) - usedMm;
  const { fromMm, betweenMm } = shared(style.justify, freeMm, children.length);
  let yMm = padding.top + fromMm;
  const laid = own.map((one, i) => {
    const sized = ofHeight(one, heights[i] ?? one.heightMm);
    const { marginLeft = 0, marginTop = 0 } = one.box.style;
    const spareMm = roomMm - marginLeft - sized.widthMm;
    const at = { sized, xMm: padding.left + marginLeft + offset(style.align, spareMm), yMm: yMm + marginTop };
    yMm += (heights[i] ?? 0) + (around[i] ?? 0) + (style.gap ?? 0) + betweenMm;
    return at;
  });
  return sizedBox(box, { widthMm, heightMm, leastMm: sum(leasts) + restMm + down(box) }, laid);
}

/** In a column that does not stretch its boxes, one is as wide as its text, as far as there is room. */
function widthInColumn(child: FlexBox, roomMm: number, { align = "stretch" }: LayoutStyle): number {
  if (child.style.width !== undefined) return child.style.width;
  if (align === "stretch") return roomMm;
  return fittedWidth(child, roomMm);
}

function laidRow(box: FlexBox, widthMm: number, heightMm?: number): SizedBox {
  const { padding, style, children } = box;
  const { align = "stretch", gap = 0 } = style;
  const before = children.map((child) => child.style.marginLeft ?? 0);
  const items = children.map((child) => {
    const { grow } = child.style;
    const startMm = grow === undefined ? fullWidth(child) : across(child);
    return { grow, startMm, leastMm: startMm };
  });
  const restMm = sum(before) + gaps(box);
  const widths = flexibleLengths(items, widthMm - across(box) - restMm);
  const own = paired(children, widths).map(([child, width]) => laidFlex(child, width, setHeight(child)));
  const ownMm = rowHeightMm(own, align);
  const lineMm = heightMm === undefined ? ownMm : heightMm - down(box);
  const baselineMm = Math.max(0, ...own.map((one) => baselineOf(one)));
  const freeMm = widthMm - across(box) - restMm - sum(widths);
  const { fromMm, betweenMm } = shared(style.justify, freeMm, children.length);
  let xMm = padding.left + fromMm;
  const laid = own.map((one, i) => {
    const { marginTop = 0, marginBottom = 0, height, minHeight = 0 } = one.box.style;
    const stretched = align === "stretch" && height === undefined;
    const roomMm = lineMm - marginTop - marginBottom;
    const sized = stretched ? ofHeight(one, Math.max(roomMm, minHeight)) : one;
    const belowMm =
      align === "baseline" ? baselineMm - baselineOf(one) : offset(align, roomMm - sized.heightMm);
    const at = { sized, xMm: xMm + (before[i] ?? 0), yMm: padding.top + marginTop + belowMm };
    xMm += (before[i] ?? 0) + (widths[i] ?? 0) + gap + betweenMm;
    return at;
  });
  return sizedBox(box, { widthMm, heightMm, leastMm: ownMm + down(box) }, laid);
}

/** From the top of a box's margin to its baseline. */
const baselineOf = ({ baselineMm, box }: SizedBox) => baselineMm + (box.style.marginTop ?? 0);

/** Height of a row that has none of its own, without its padding [mm]. */
function rowHeightMm(boxes: readonly SizedBox[], align: NonNullable<LayoutStyle["align"]>): number {
  const heights = boxes.map(
    ({ heightMm, box: { style } }) => heightMm + (style.marginTop ?? 0) + (style.marginBottom ?? 0),
  );
  if (align !== "baseline") return Math.max(0, ...heights);
  const above = boxes.map(baselineOf);
  return Math.max(0, ...above) + Math.max(0, ...paired(heights, above).map(([height, one]) => height - one));
}

/** How far a box is moved in what is left beside it. */
function offset(align: LayoutStyle["align"], spareMm: number): number {
  return align === "center" ? spareMm / 2 : align === "end" ? spareMm : 0;
}

/** What is left along a row or column, before its first box and between any two. */
function shared(justify: LayoutStyle["justify"], freeMm: number, count: number) {
  if (justify !== "between") return { fromMm: offset(justify, freeMm), betweenMm: 0 };
  return { fromMm: 0, betweenMm: count < 2 ? 0 : Math.max(0, freeMm) / (count - 1) };
}

/** The baseline of a box is that of its first one, or its lower edge where it has none. */
function sizedBox(
  box: FlexBox,
  { widthMm, leastMm, heightMm = leastMm }: Measures,
  children: SizedBox["children"],
): SizedBox {
  const [inner] = children;
  const baselineMm = inner === undefined ? heightMm : inner.yMm + inner.sized.baselineMm;
  return { box, widthMm, heightMm, leastMm, baselineMm, children };
}

interface Measures {
  readonly widthMm: number;
  readonly leastMm: number;
  /** None: as high as what is in it. */
  readonly heightMm: number | undefined;
}
