import type { Box } from "../kit.ts";

/** Text grows with the picture, from the least that a card may carry to what a phone needs at 80 mm. */
export function sceneTextMm({ widthMm }: Box): number {
  return Math.min(3.6, Math.max(2.4, 0.0438 * widthMm));
}
