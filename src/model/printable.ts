export const printableKinds = ["card", "sheet", "larger-card", "handout", "booklet"] as const;

/** A file to print and what a reader must know before printing it. */
export interface Printable {
  /** Path below the output folder, such as `cards/stick.pdf`. */
  readonly path: string;
  readonly title: string;
  readonly kind: (typeof printableKinds)[number];
  /** Rig that the file is about. */
  readonly rigId?: string;
  readonly sizeBytes: number;
  /** The start of its SHA-256, for phones that keep it. */
  readonly hash: string;
}
