import type { TextPlace } from "../markup/boxes.ts";
import type { Rectangle } from "./rectangle.ts";

/** Something that does not fit its box. */
export interface Overflow {
  readonly field: string;
  readonly direction: "across" | "down";
  readonly overMm: number;
  /** Where in its file stands what does not fit, where it is known. */
  readonly at?: TextPlace;
}

/** Rounding of lines to hundredths, and nothing that can be seen. */
const toleranceMm = 0.03;

/**
 * Parts of the em above and below the baseline that must be inside. Descenders may hang into the space that a box keeps
 * below its last line.
 */
const ascentEm = 0.7;
const descentEm = 0.12;

/** A line of text from where it begins on its baseline. */
export interface LineExtent {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly sizeMm: number;
}

/** How far lines of text stick out of their box. */
export function textOverflow(field: string, lines: readonly LineExtent[], box: Rectangle): Overflow[] {
  return lines.flatMap(({ xMm, yMm, widthMm, sizeMm }) => {
    const heightMm = (ascentEm + descentEm) * sizeMm;
    return boxOverflow(field, { xMm, yMm: yMm - ascentEm * sizeMm, widthMm, heightMm }, box);
  });
}

/** How far a box sticks out of the box around it. */
export function boxOverflow(field: string, inner: Rectangle, outer: Rectangle): Overflow[] {
  const across = Math.max(outer.xMm - inner.xMm, inner.xMm + inner.widthMm - (outer.xMm + outer.widthMm));
  const down = Math.max(outer.yMm - inner.yMm, inner.yMm + inner.heightMm - (outer.yMm + outer.heightMm));
  const found: Overflow[] = [];
  if (across > toleranceMm) found.push({ field, direction: "across", overMm: across });
  if (down > toleranceMm) found.push({ field, direction: "down", overMm: down });
  return found;
}

/** The worst of each field and direction, in the order met. */
export function worst(overflows: readonly Overflow[]): Overflow[] {
  const kept = new Map<string, Overflow>();
  for (const overflow of overflows) {
    const key = `${overflow.field} ${overflow.direction} ${overflow.at?.line ?? ""}`;
    if (overflow.overMm > (kept.get(key)?.overMm ?? 0)) kept.set(key, overflow);
  }
  return [...kept.values()];
}
