import type { Face, Ink } from "../drawing/model.ts";
import { type BoxProps, type InlineProps, mmPerPoint, type TextPlace } from "../markup/boxes.ts";
import type { Child, Element } from "../markup/jsx-runtime.ts";

/** Words in one face, size and ink. */
export interface TextRun {
  readonly text: string;
  readonly face: Face;
  readonly sizeMm: number;
  readonly ink: Ink;
  readonly link?: string;
  readonly spoken?: string;
}

/** A box with its components called and its inherited type worked out; it holds text or boxes, never both. */
export interface BoxNode {
  readonly key: string;
  readonly props: BoxProps;
  /** Name of the nearest field around it. */
  readonly field: string;
  /** Place of the nearest words around it that have one. */
  readonly at?: TextPlace;
  readonly runs: readonly TextRun[];
  readonly boxes: readonly BoxNode[];
}

interface Inherited {
  readonly face: Face;
  readonly sizeMm: number;
  readonly ink: Ink;
  readonly field: string;
  readonly at?: TextPlace;
  readonly link?: string;
  readonly spoken?: string;
}

/**
 * A TSX tree as nested boxes.
 *
 * @throws Error where the tree mixes text and boxes in one box, or holds an element that is neither: a fault of a
 * template, found by the tests.
 */
export function boxTree(root: Element): BoxNode {
  const top: Inherited = { face: "regular", sizeMm: 10 * mmPerPoint, ink: "ink", field: "page" };
  const nodes = flatten(root).map((child, at) => node(child, String(at), top));
  if (nodes.length !== 1) throw new Error("a page has one outermost box");
  return nodes[0]!;
}

function node(child: Element | string, key: string, around: Inherited): BoxNode {
  if (typeof child === "string") throw new Error(`text outside a box: "${child}"`);
  if (child.type !== "box") throw new Error(`not a box: ${String(child.type)}`);
  const props = child.props as BoxProps;
  const here: Inherited = {
    face: props.style?.face ?? around.face,
    sizeMm: props.style?.sizePt === undefined ? around.sizeMm : props.style.sizePt * mmPerPoint,
    ink: props.ink ?? around.ink,
    field: props.field ?? around.field,
    ...((props.at ?? around.at) && { at: props.at ?? around.at! }),
  };
  const children = flatten(props.children);
  const isText = children.some((c) => typeof c === "string" || c.type === "inline");
  if (isText && children.some((c) => typeof c !== "string" && c.type === "box")) {
    throw new Error(`text and boxes in one box, in field "${here.field}"`);
  }
  return {
    key,
    props,
    field: here.field,
    ...(here.at && { at: here.at }),
    runs: isText ? children.flatMap((c) => runsOf(c, here)) : [],
    boxes: isText ? [] : children.map((c, at) => node(c, `${key}.${at}`, here)),
  };
}

function runsOf(child: Element | string, around: Inherited): TextRun[] {
  if (typeof child === "string") {
    const { field: _, at: __, ...style } = around;
    return [{ text: normalise(child), ...style }];
  }
  const props = child.props as InlineProps;
  const link = props.link ?? around.link;
  const here = {
    ...around,
    face: props.face ?? around.face,
    ink: props.ink ?? around.ink,
    ...(link !== undefined && { link }),
    ...(props.spoken !== undefined && { spoken: props.spoken }),
  };
  return flatten(props.children).flatMap((c) => runsOf(c, here));
}

/** Children as elements and strings, components called, neighbouring strings joined, nothings left out. */
function flatten(child: Child): (Element | string)[] {
  const flat: (Element | string)[] = [];
  const visit = (c: Child): void => {
    if (c === null || c === undefined || typeof c === "boolean") return;
    if (typeof c === "string" || typeof c === "number") {
      const before = flat[flat.length - 1];
      if (typeof before === "string") flat[flat.length - 1] = before + c;
      else flat.push(String(c));
    } else if (isList(c)) {
      for (const each of c) visit(each);
    } else if (typeof c.type === "function") {
      visit((c.type as (props: unknown) => Child)(c.props));
    } else {
      flat.push(c);
    }
  };
  visit(child);
  return flat.filter((c) => c !== "");
}

function isList(child: Child): child is readonly Child[] {
  return Array.isArray(child);
}

/** One code point for each sign, since a font maps a glyph back to only one of them. */
function normalise(text: string): string {
  return text
    .normalize("NFC")
    .replace(/\u2126/g, "\u03A9")
    .replace(/[\u2010\u2011]/g, "-")
    .replace(/\u00AD/g, "");
}
