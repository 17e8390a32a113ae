import type { Stroke } from "./model.ts";

/**
 * How the two lines of a rig look. The pattern, not the thickness or a colour, tells them apart, so that it survives a
 * black-and-white copy: the main line is unbroken, the hook length is dashed.
 */
export const strandStrokes: Readonly<Record<"main line" | "hook length", Stroke>> = {
  "main line": { ink: "ink", widthMm: 0.5 },
  "hook length": { ink: "ink", widthMm: 0.5, dashMm: [1.6, 0.8] },
};
