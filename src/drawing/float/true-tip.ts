import { type Float, lengthMm } from "../../core/float/float.ts";
import { diameterAtMm } from "../../core/float/profile.ts";
import { first } from "../../core/lists.ts";
import type { Mm } from "../../core/units.ts";
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
const aboveMm = 3;
const tickMm = { one: 1, five: 1.7, ten: 2.4 } as const;
/** Lines of a scale: thin enough to leave white between millimetres. */
const scaleLine = { ink: "ink", widthMm: 0.25 } as const;
const gapMm = 0.8;

/**
 * The tip of a float at its true size, standing in the water as it should, beside a scale in millimetres whose 0 is the
 * surface.
 *
 * @param showingMm tip above the water
 * @param textMm size of the scale's figures
 */
export function drawTrueTip(float: Float, showingMm: Mm, textMm: number): TrueTip {
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
  return {
    widthMm: scaleX + tickMm.ten + 0.4 + 1.2 * textMm,
    heightMm: surfaceMm + belowMm,
    items: [
      polygon(outline(0), "paper", thin),
      polygon(outline(Math.max(top - tipMm, first(heights))), "accent", thin),
      polyline([point(0, surfaceMm), point(scaleX, surfaceMm)], thin),
      ...millimetres(scaleX, surfaceMm, showingMm + aboveMm - thinMm, textMm),
    ],
  };
}

/** A scale that stands on the surface; its figures leave room above the last line. */
function millimetres(x: number, surfaceMm: number, roomMm: number, textMm: number): Item[] {
  const items: Item[] = [
    polyline([point(x, surfaceMm), point(x, surfaceMm - Math.floor(roomMm))], scaleLine),
  ];
  for (let mm = 0; mm <= roomMm; mm += 1) {
    const y = surfaceMm - mm;
    const tick = mm % 10 === 0 ? tickMm.ten : mm % 5 === 0 ? tickMm.five : tickMm.one;
    items.push(polyline([point(x, y), point(x + tick, y)], scaleLine));
    if (mm % 10 === 0 && mm + textMm / 2 <= roomMm + aboveMm)
      items.push(text(point(x + tickMm.ten + 0.4, y + 0.35 * textMm), String(mm), textMm));
  }
  return items;
}
