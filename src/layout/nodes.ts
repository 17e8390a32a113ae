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
  readonly props: BoxProps;
  /** Name of the nearest field around it. */
  readonly field: string;
  /** Place of the nearest words around it that have one. */
  readonly at: TextPlace | undefined;
  readonly runs: readonly TextRun[];
  readonly boxes: readonly BoxNode[];
}

interface Inherited {
  readonly face: Face;
  readonly sizeMm: number;
  readonly ink: Ink;
  readonly field: string;
  readonly at: TextPlace | undefined;
  readonly link: string | undefined;
  readonly spoken: string | undefined;
}

/**
 * A TSX tree as nested boxes.
 *
 * @throws Error where the tree mixes text and boxes in one box, or holds an element that is neither: a fault of a
 * template, found by the tests.
 */
export function boxTree(root: Element): BoxNode {
  const top: Inherited = {
    face: "regular",
    sizeMm: 10 * mmPerPoint,
    ink: "ink",
    field: "page",
    at: undefined,
    link: undefined,
    spoken: undefined,
  };
  const nodes = flatten(root).map((child) => node(child, top));
  if (nodes.length !== 1) throw new Error("a page has one outermost box");
  return nodes[0]!;
}

function node(child: Element | string, around: Inherited): BoxNode {
  if (typeof child === "string") throw new Error(`text outside a box: "${child}"`);
  if (child.type !== "box") throw new Error(`not a box: ${String(child.type)}`);
  const props = child.props as BoxProps;
  const here: Inherited = {
    face: props.style?.face ?? around.face,
    sizeMm: props.style?.sizePt === undefined ? around.sizeMm : props.style.sizePt * mmPerPoint,
    ink: props.ink ?? around.ink,
    field: props.field ?? around.field,
    at: props.at ?? around.at,
    link: around.link,
    spoken: around.spoken,
  };
  const { field, at } = here;
  const children = flatten(props.children);
  const isText = children.some((c) => typeof c === "string" || c.type === "inline");
  if (!isText) return { props, field, at, runs: [], boxes: children.map((c) => node(c, here)) };
  if (children.some((c) => typeof c !== "string" && c.type === "box")) {
    throw new Error(`text and boxes in one box, in field "${field}"`);
  }
  return { props, field, at, runs: runsOf(children, here), boxes: [] };
}

function runsOf(children: readonly (Element | string)[], around: Inherited): TextRun[] {
  return children.flatMap((child) => {
    if (typeof child === "string") return runOf(normalise(child), around);
    const props = child.props as InlineProps;
    return runsOf(flatten(props.children), {
      ...around,
      face: props.face ?? around.face,
      ink: props.ink ?? around.ink,
      link: props.link ?? around.link,
      spoken: props.spoken ?? around.spoken,
    });
  });
}

function runOf(text: string, { face, sizeMm, ink, link, spoken }: Inherited): TextRun {
  const run = { text, face, sizeMm, ink };
  if (link === undefined && spoken === undefined) return run;
  return { ...run, ...(link !== undefined && { link }), ...(spoken !== undefined && { spoken }) };
}

/** Children as elements and strings, components called, neighbouring strings joined, nothings left out. */
function flatten(child: Child): (Element | string)[] {
  const flat: (Element | string)[] = [];
  const visit = (c: Child): void => {
    if (c === null || c === undefined || c === "" || typeof c === "boolean") return;
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
  return flat;
}

function isList(child: Child): child is readonly Child[] {
  return Array.isArray(child);
}

/** Hyphens, and signs that may have another normal form; those of most texts have none. */
const unlikePlain = /[\u0300-\u2011\u2028-\u2031\u2034-\uFEFE\uFF00-\uFFFF\u00AD]/;

/** One code point for each sign, since a font maps a glyph back to only one of them. */
function normalise(text: string): string {
  if (!unlikePlain.test(text)) return text;
  return text
    .normalize("NFC")
    .replace(/\u2126/g, "\u03A9")
    .replace(/[\u2010\u2011]/g, "-")
    .replace(/\u00AD/g, "");
}
