import type { Box } from "../kit.ts";

/** Text grows with the picture, from the least that a card may carry. */
export function sceneTextMm({ widthMm }: Box): number {
  return Math.min(3.6, Math.max(2.4, 2.4 + (widthMm - 80) / 60));
}
