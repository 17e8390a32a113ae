import type { Face, Ink, Item, Role } from "../drawing/model.ts";
import { type Child, type Element, jsx } from "./jsx-runtime.ts";

/** A printer's point [mm]. Source: the DTP point, 1/72 inch. */
export const mmPerPoint = 25.4 / 72;

/** Keeps signs of a text on one line and is not seen. */
export const joiner = "\uFEFF";

/**
 * How a box lays out what is in it: flexbox by its CSS names, lengths in millimetres. There is nothing to
 * paint with here on purpose: paint is data on the box, so that screen, preview and print get the same marks.
 */
export interface LayoutStyle {
  readonly direction?: "row" | "column";
  readonly gap?: number;
  readonly padding?: number;
  readonly paddingTop?: number;
  readonly paddingBottom?: number;
  readonly paddingLeft?: number;
  readonly paddingRight?: number;
  readonly marginTop?: number;
  readonly marginBottom?: number;
  readonly marginLeft?: number;
  readonly width?: number;
  readonly height?: number;
  readonly minHeight?: number;
  readonly grow?: number;
  readonly align?: "start" | "center" | "end" | "stretch" | "baseline";
  readonly justify?: "start" | "center" | "end" | "between";
  readonly textAlign?: "left" | "center" | "right";
  /** Whether a word may stand alone in the last line of a text; where it may not, the one before joins it. */
  readonly loneWord?: "left" | "joined";
  readonly sizePt?: number;
  /** Distance between baselines as a multiple of the size of the type. */
  readonly lineHeight?: number;
  readonly face?: Face;
}

/** The styles that are lengths [mm]. */
export const lengthStyles = [
  "gap",
  "padding",
  "paddingTop",
  "paddingBottom",
  "paddingLeft",
  "paddingRight",
  "marginTop",
  "marginBottom",
  "marginLeft",
  "width",
  "height",
  "minHeight",
] as const satisfies readonly (keyof LayoutStyle)[];

export interface Rule {
  readonly widthMm: number;
  readonly ink: Ink;
}

export interface Paint {
  readonly fill?: Ink;
  readonly ruleAbove?: Rule;
  readonly ruleBelow?: Rule;
  readonly frame?: Rule;
}

/** Marks for a box of this size, with the top left corner at 0, 0. */
export type Draw = (widthMm: number, heightMm: number) => readonly Item[];

export interface BoxProps {
  readonly style?: LayoutStyle;
  readonly paint?: Paint;
  /** Ink of the text in the box. */
  readonly ink?: Ink;
  /** What the box is to a reader, as the PDF tags it; none means part of what is around it. */
  readonly tag?: Role;
  readonly alt?: string;
  /** Columns that a cell of a table takes up. */
  readonly span?: number;
  /** Decoration that readers skip, such as a page number. */
  readonly artifact?: boolean;
  readonly draw?: Draw;
  /** Name of what stands here, for messages about text that does not fit. */
  readonly field?: string;
  /** Where in its file stands what is set here, for the same messages. */
  readonly at?: TextPlace | undefined;
  readonly children?: Child;
}

/** Line and column of a file, from 1. */
export interface TextPlace {
  readonly line: number;
  readonly column: number;
}

/** A box of a page: either text, with `Inline` for words in another face, or boxes. */
export function Box(props: BoxProps): Element {
  return jsx("box", props as Element["props"]);
}

export interface InlineProps {
  readonly face?: Face;
  readonly ink?: Ink;
  /** Where the words lead, by a name that the document's own list of links has. */
  readonly link?: string;
  /** What is read out in place of the words. */
  readonly spoken?: string;
  readonly children?: Child;
}

/** Words in another face or ink within a line. */
export function Inline(props: InlineProps): Element {
  return jsx("inline", props as Element["props"]);
}
