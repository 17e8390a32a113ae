import type { OutputFile } from "../markup/output.ts";
import type { Printable } from "../model/printable.ts";

/** A file of the press; one to print has what the site's list of such files says of it. */
export interface PrintedFile extends OutputFile {
  readonly printable?: Omit<Printable, "path" | "sizeBytes" | "hash">;
}

/** One to print, and the side of it that lists show. */
export interface PaintedFile extends PrintedFile {
  readonly shows?: Shown;
}

/** A side of a document as a small picture. */
export interface Shown {
  readonly svg: string;
  /** Size and hash of the picture, where they are known without it. */
  readonly known?: OutputFile["known"];
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Makes some of what is printed. */
export type PrintPiece = () => AsyncIterable<PaintedFile> | Iterable<PaintedFile>;
