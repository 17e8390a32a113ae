/**
 * A drawing as plain data in millimetres, x to the right and y down from the top left corner. Three painters turn it
 * into SVG with text, SVG with outlines and PDF; nothing else knows how a picture is made.
 */

import type { RasterImage } from "../model/own-image.ts";

/** Inks by meaning; `palette.ts` gives each its colour on screen and its grey in print. */
export type Ink = "ink" | "soft" | "faint" | "tone" | "paper" | "accent" | "water";

/** Faces of the one family that every page and card uses. */
export type Face = "regular" | "bold" | "italic";

export interface Stroke {
  readonly ink: Ink;
  readonly widthMm: number;
  /** Dash and gap lengths in millimetres, in turn. */
  readonly dashMm?: readonly number[];
  readonly cap?: "butt" | "round";
}

/** Outline commands with absolute coordinates: move, line, cubic curve, close. */
export type PathStep =
  | readonly ["M", number, number]
  | readonly ["L", number, number]
  | readonly ["C", number, number, number, number, number, number]
  | readonly ["Z"];

export interface PathItem {
  readonly kind: "path";
  readonly steps: readonly PathStep[];
  readonly fill?: Ink;
  readonly stroke?: Stroke;
}

export interface CircleItem {
  readonly kind: "circle";
  readonly cxMm: number;
  readonly cyMm: number;
  readonly radiusMm: number;
  readonly fill?: Ink;
  readonly stroke?: Stroke;
}

/** One line of text; `yMm` is its baseline, `sizeMm` its em. */
export interface TextItem {
  readonly kind: "text";
  readonly xMm: number;
  readonly yMm: number;
  readonly text: string;
  readonly sizeMm: number;
  readonly face: Face;
  readonly ink: Ink;
  readonly anchor: "start" | "middle" | "end";
  /** Where the words lead, by its name in the list of links of the document that they stand in. */
  readonly link?: string;
  /** What is read out in place of the text, where that is a sign. */
  readonly spoken?: string;
}

/** A photo, or a drawing of somebody else's, in a box that has its shape. */
export interface ImageItem {
  readonly kind: "image";
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly image: RasterImage;
}

/** Parts of a picture or page that belong together, moved as one. */
export interface GroupItem {
  readonly kind: "group";
  readonly xMm: number;
  readonly yMm: number;
  /** What the group is to a reader, for the tags of the PDF; none means part of what is around it. */
  readonly role?: Role;
  /** Text in place of a picture, for `role: "Figure"`. */
  readonly alt?: string;
  /** Columns that a table's cell takes up, where it is more than one. */
  readonly span?: number;
  /** Groups of one name are one element to a reader, such as a paragraph that goes on over the page. */
  readonly element?: string;
  /** Decoration: skipped by screen readers and by tags. */
  readonly artifact?: boolean;
  readonly items: readonly Item[];
}

/** Structure types of ISO 32000-1, section 14.8.4, that are used here. */
export type Role =
  | "Sect"
  | "H1"
  | "H2"
  | "H3"
  | "P"
  | "BlockQuote"
  | "Link"
  | "TOC"
  | "TOCI"
  | "L"
  | "LI"
  | "Lbl"
  | "LBody"
  | "Figure"
  | "Caption"
  | "Table"
  | "TR"
  | "TH"
  | "TD";

export type Item = PathItem | CircleItem | TextItem | ImageItem | GroupItem;

/** A finished picture: its size, what it shows in words, and its marks. */
export interface Drawing {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly title: string;
  /** The picture told to somebody who cannot see it, from the same figures. */
  readonly description: string;
  readonly items: readonly Item[];
}

/** Width of a line of text [mm]; given to drawings so that they run with any source of font metrics. */
export type MeasureText = (text: string, sizeMm: number, face: Face) => number;
