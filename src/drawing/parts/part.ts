import type { Item } from "../model.ts";

/** A mark or part that drawings are put together from. */
export interface Part<P> {
  /** Its items, in the coordinates of the drawing. */
  draw(at: P): readonly Item[];
  /** What the gallery shows of it, in a box 20 mm high and 30 mm wide unless it needs more. */
  readonly sample: P;
  readonly sampleWidthMm?: number;
}
