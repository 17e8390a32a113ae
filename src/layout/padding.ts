import type { LayoutStyle } from "../markup/boxes.ts";

/** Between the sides of a box and what is in it [mm]. */
export interface Padding {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The padding of a style: that of a side before that of all sides. */
export function paddingOf(style: LayoutStyle): Padding {
  const { padding = 0, paddingLeft = padding, paddingRight = padding } = style;
  const { paddingTop = padding, paddingBottom = padding } = style;
  return { left: paddingLeft, right: paddingRight, top: paddingTop, bottom: paddingBottom };
}
