import type { LayoutStyle } from "../markup/boxes.ts";

/** Between the sides of a box and what is in it [mm]. */
export interface Padding {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The padding of a style: that of a side before that of all sides. */
export function paddingOf({ padding = 0, ...style }: LayoutStyle): Padding {
  return {
    left: style.paddingLeft ?? padding,
    right: style.paddingRight ?? padding,
    top: style.paddingTop ?? padding,
    bottom: style.paddingBottom ?? padding,
  };
}
