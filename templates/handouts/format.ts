/** A page of a handout and the type on it. */
export interface HandoutFormat {
  readonly name: "A5" | "half Letter" | "A4" | "Letter";
  readonly widthMm: number;
  readonly heightMm: number;
  readonly sideMm: number;
  /** Above the first line and below the last one; header and footer stand in there. */
  readonly topMm: number;
  readonly bottomMm: number;
  readonly bodyPt: number;
  /** Baseline to baseline, in ems. */
  readonly lineHeight: number;
  /** Between paragraphs; the closer one where it saves a page with little on it. */
  readonly gapsMm: { readonly usual: number; readonly close: number };
  /** Columns side by side on the page, and the room between them. */
  readonly columns: 1 | 2;
  readonly gutterMm: number;
}

/** Width of the page between its margins. */
export function textWidthMm({ widthMm, sideMm }: HandoutFormat): number {
  return widthMm - 2 * sideMm;
}

export function columnWidthMm(format: HandoutFormat): number {
  return (textWidthMm(format) - (format.columns - 1) * format.gutterMm) / format.columns;
}

export function columnHeightMm({ heightMm, topMm, bottomMm }: HandoutFormat): number {
  return heightMm - topMm - bottomMm;
}

/** Headings are larger than the body by these factors. */
export const headingScale = { 1: 1.6, 2: 1.25, 3: 1.1 } as const;
