import type { ShotScale } from "../core/shot.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { tipAtSettingMm } from "../solve/at-setting.ts";
import type { SolvedDepth } from "../solve/solved.ts";

/** What a sheet needs besides the rig. */
export interface SheetKit extends DrawingKit {
  /** Scales that the same load can be told in. */
  readonly scales: readonly ShotScale[];
  /** The reader's own hand-span, thumb to little finger, where it was told [mm]. */
  readonly handSpanMm?: number;
}

/** Tip at the rig's setting, or that the float is under there. */
export function tipShown(depth: SolvedDepth, { words }: SheetKit): string {
  const tipMm = tipAtSettingMm(depth);
  return tipMm === null ? words("table.under") : `${tipMm.toFixed(0)} mm`;
}
