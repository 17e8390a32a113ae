export const printableKinds = [
  "card",
  "sheet",
  "larger-card",
  "handout",
  "plan",
  "swim",
  "session",
  "booklet",
] as const;

/** A picture of a page, as large as a list of such files shows it. */
export interface SmallPage {
  /** Path below the output folder. */
  readonly path: string;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A file to print and what a reader must know before printing it. */
export interface Printable {
  /** Path below the output folder, such as `cards/stick.pdf`. */
  readonly path: string;
  readonly title: string;
  readonly kind: (typeof printableKinds)[number];
  /** Rig that the file is about. */
  readonly rigId?: string;
  readonly sizeBytes: number;
  /** A small picture of its first page; none where nobody made one. */
  readonly smallPage?: SmallPage;
  /** The start of its SHA-256, for phones that keep it. */
  readonly hash: string;
}
