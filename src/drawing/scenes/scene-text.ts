import type { Box } from "../kit.ts";

/** 7.5 pt: no words on paper are smaller. */
const leastMm = 2.65;

/** Text grows with the picture, from the least that a card may carry to what a phone needs at 80 mm. */
export function sceneTextMm({ widthMm }: Box): number {
  return Math.min(3.6, Math.max(leastMm, 0.0438 * widthMm));
}
