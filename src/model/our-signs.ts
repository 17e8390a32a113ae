import { fontSigns } from "./font-signs.ts";

const known = new Set(
  fontSigns.flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, i) => first + i)),
);

/** Whether the tool's own fonts have the sign of a code point. */
export const isOurSign = (codePoint: number): boolean => known.has(codePoint);
