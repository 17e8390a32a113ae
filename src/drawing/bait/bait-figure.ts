import type { BaitLooks, BaitPlace } from "../../model/bait-looks.ts";
import type { Point } from "../items.ts";
import type { Item } from "../model.ts";

/** A bait as marks, and where on it each place is that a label can point at. */
export interface BaitFigure {
  readonly items: readonly Item[];
  readonly places: Readonly<Record<Exclude<BaitPlace, "hook">, Point>>;
  /** What hides the hook where it goes through. */
  readonly flesh: readonly (readonly Point[])[];
}

/** A bait at the bend of a hook: its length, its width, how many. */
export interface BaitAt extends Pick<BaitLooks, "lengthMm" | "widthMm" | "count"> {
  readonly bend: Point;
}
