import type { GuideRow } from "../model/guide-row.ts";
import type { TableKit } from "./tables.ts";

/** What a line of the depth guide tells to do: where to start, or how much deeper or shallower that is. */
export function guideAdvice({ advice, moveMm, toMoveMm }: GuideRow, { words, figures }: TableKit): string {
  const ends = [Math.abs(moveMm), Math.abs(toMoveMm)];
  return words(`guide-advice.${advice}`, { move: figures.gapRange(Math.min(...ends), Math.max(...ends)) });
}
