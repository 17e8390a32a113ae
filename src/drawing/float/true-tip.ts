import { type Float, lengthMm } from "../../core/float/float.ts";
import { diameterAtMm } from "../../core/float/profile.ts";
import { first } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
import type { TipScale } from "../../words/unit-systems.ts";
import { type Point, point, polygon, polyline, text, thin, thinMm } from "../items.ts";
import type { Item } from "../model.ts";
import { floatLook } from "./float-parts.ts";

interface TrueTip {
  readonly widthMm: Mm;
  readonly heightMm: Mm;
  readonly items: readonly Item[];
}

/** How much of the float is drawn below the water [mm]. */
const belowMm = 2.5;
/** How far the scale goes on above the tip [mm]. */
const aboveMm = 2.4;
const ticksMm = { one: 1, five: 1.7, ten: 2.4 } as const;
/** Lines of a scale: thin enough to leave white between millimetres. */
const scaleLine = { ink: "ink", widthMm: 0.25 } as const;
const gapMm = 0.8;

/**
 * The tip of a float at its true size, standing in the water as it should, beside a scale whose 0 is the surface.
 *
 * @param showingMm tip above the water
 * @param textMm size of the scale's figures
 * @param scale its ticks
 */
export function drawTrueTip(float: Float, showingMm: Mm, textMm: number, scale: TipScale): TrueTip {
  const { profile, tipMm } = floatLook(float);
  const top = lengthMm(float);
  const surfaceMm = showingMm + aboveMm;
  const heights = [top - showingMm - belowMm, ...profile.map(({ atMm }) => atMm), top - tipMm, top]
    .filter((atMm) => atMm >= top - showingMm - belowMm)
    .sort((a, b) => a - b);
  const halfOf = (atMm: number) => diameterAtMm(profile, atMm) / 2;
  const half = Math.max(...heights.map(halfOf));
  const wide = 2 * half + 2;
  const outline = (fromMm: number): Point[] => {
    const some = heights.filter((atMm) => atMm >= fromMm);
    const side = (sign: 1 | -1) =>
      some.map((atMm) => point(wide / 2 + sign * halfOf(atMm), surfaceMm - (atMm - (top - showingMm))));
    return [...side(-1), ...side(1).reverse()];
  };
  const scaleX = wide + gapMm;
  const endX = scaleX + ticksMm.ten + 0.4 + (scale.ticksAUnit === 1 ? 1.2 : 1.45) * textMm;
  return {
    widthMm: endX,
    heightMm: surfaceMm + Math.max(belowMm, unitBelowMm(textMm)),
    items: [
      polygon(outline(0), "paper", thin),
      polygon(outline(Math.max(top - tipMm, first(heights))), "accent", thin),
      polyline([point(0, surfaceMm), point(scaleX, surfaceMm)], thin),
      ...scaleAt(point(scaleX, surfaceMm), showingMm, textMm, scale),
      text(point(endX, surfaceMm + unitBelowMm(textMm)), scale.unit, textMm, { anchor: "end" }),
    ],
  };
}

/** From the surface to the baseline of the scale's unit, which stands below its 0 [mm]. */
const unitBelowMm = (textMm: Mm): Mm => 1.1 * textMm;

/**
 * Between the figure of the tip and another, at the least [mm]: as much whatever the size of the type, so that a larger card has
 * no fewer figures. Digits of 20 pt, 0.7 of their size high, have room in it.
 */
const figuresApartMm = 5;

/** Of a tick: less than that over one counts as on it. */
const onTick = 0.01;

/** A scale that stands on the surface, with a figure at the tip as it is told, which all but 0 keep off; they leave room above the last line. */
function scaleAt(
  { xMm: x, yMm: surfaceMm }: Point,
  showingMm: Mm,
  textMm: number,
  { tickMm, ticksAFigure, ticksAUnit }: TipScale,
): Item[] {
  const roomMm = showingMm + aboveMm - thinMm;
  const ticks = Math.floor(roomMm / tickMm);
  const told = Math.ceil(showingMm / tickMm - onTick);
  const hasFigure = (tick: number) =>
    tick === told ||
    tick === 0 ||
    (tick % ticksAFigure === 0 &&
      Math.abs(told - tick) * tickMm >= figuresApartMm &&
      tick * tickMm + textMm / 2 <= roomMm + aboveMm);
  const items: Item[] = [polyline([point(x, surfaceMm), point(x, surfaceMm - ticks * tickMm)], scaleLine)];
  for (let tick = 0; tick <= ticks; tick += 1) {
    const mm = tick * tickMm;
    const y = surfaceMm - mm;
    const length = tick % 10 === 0 ? ticksMm.ten : tick % 5 === 0 ? ticksMm.five : ticksMm.one;
    items.push(polyline([point(x, y), point(x + length, y)], scaleLine));
    if (hasFigure(tick))
      items.push(text(point(x + ticksMm.ten + 0.4, y + 0.35 * textMm), String(tick / ticksAUnit), textMm));
  }
  return items;
}
