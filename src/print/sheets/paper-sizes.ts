/** Sizes of paper, upright [mm]. Sources: ISO 216 for the A series; Letter is 8.5 × 11 in (ANSI/ASME Y14.1, size A). */
export const paperSizes = {
  A4: { widthMm: 210, heightMm: 297 },
  A5: { widthMm: 148, heightMm: 210 },
  A6: { widthMm: 105, heightMm: 148 },
  A7: { widthMm: 74, heightMm: 105 },
  Letter: { widthMm: 215.9, heightMm: 279.4 },
  "half Letter": { widthMm: 139.7, heightMm: 215.9 },
  "quarter Letter": { widthMm: 107.95, heightMm: 139.7 },
} as const;

/** What home printers leave white along every edge: a quarter of an inch. */
export const unprintableMm = 6.35;
