import type { ShotScale } from "../core/tackle/shot.ts";
import type { DrawingKit } from "../drawing/kit.ts";

/** What a sheet needs besides the rig. */
export interface SheetKit extends DrawingKit {
  /** Scales that the same load can be told in. */
  readonly scales: readonly ShotScale[];
  /** The reader's own hand-span, thumb to little finger, where it was told [mm]. */
  readonly handSpanMm?: number;
}
