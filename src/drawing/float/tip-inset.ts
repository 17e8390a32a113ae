import type { Float } from "../../core/float/float.ts";
import { lengthMm } from "../../core/float/float.ts";
import type { Mm } from "../../core/units.ts";
import { type Point, point, polygon, polyline, rectangle, text, thin, thinSoft } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item } from "../model.ts";
import { lineBreakHalfMm } from "../parts/line-break.ts";
import { parts } from "../parts/parts.ts";
import { rotated } from "../transform.ts";
import { markedEdge, tipSides } from "./float-tip.ts";
import { tipRuler } from "./tip-figures.ts";

/** Room for the tip itself beside its scale. */
const tipRoomMm = 10;
/** How much of the inset is water. */
const waterMm = 9;
/** How much of a leaning float is seen under water [mm of paper]. */
const leaningSunkMm = 2.5;
/** Top of a float that is under, below the surface [mm of paper]. */
const underMm = 3;

interface TipInset {
  readonly leftMm: number;
  readonly bottomMm: number;
  readonly textMm: number;
  /** All that it has to show, to one scale. */
  readonly tips: readonly ShownTip[];
}

/** A tip above the water, null where it is under, of a float that leans so far from upright. */
export interface ShownTip {
  readonly tipMm: Mm | null;
  readonly leanDegrees: number;
}

const scaleTextMm = (textMm: number, { measure }: DrawingKit) => measure("00", textMm, "regular") + 2.4;

export const tipInsetMm = (textMm: number, kit: DrawingKit): number => scaleTextMm(textMm, kit) + tipRoomMm;

/**
 * The tip of a float larger than in the picture beside it, with a scale that stands on the water. A
 * float that stands higher than the scale has a break in it, and so has the scale.
 */
export function tipInset(
  float: Float,
  { tipMm, leanDegrees }: ShownTip,
  { leftMm, bottomMm, textMm, tips }: TipInset,
  kit: DrawingKit,
): Item[] {
  const axisX = leftMm + scaleTextMm(textMm, kit);
  const right = leftMm + tipInsetMm(textMm, kit);
  const surface = bottomMm - waterMm;
  const roof = 1.7 * textMm;
  const widest = Math.max(...float.profile.map(({ diameterMm }) => diameterMm));
  const lean = inRadians(leanDegrees);
  const highMm = surface - roof;
  const mostMm = Math.max(20, ...tips.map((one) => one.tipMm ?? 0));
  const upright = Math.min(1.2, highMm / mostMm, (tipRoomMm - 1.2) / widest);
  const mostScale = Math.min(upright, ...tips.map((one) => leaningScale(float, one, upright)));
  const { scale, figures } = tipRuler({ mostMm, mostScale, highMm, apartMm: 1.2 * textMm }, kit);
  const topY = Math.max(roof, tipMm === null ? surface + underMm : surface - tipMm * scale);
  const overMm = (tipMm ?? 0) - highMm / scale;
  // The last digit of a quotient is no tip.
  const cutMm = overMm > 1e-6 ? overMm : 0;
  const sunkMm = leanDegrees === 0 ? bottomMm - 0.6 - surface : leaningSunkMm;
  // One that leans has its ends as far from both sides.
  const aside = Math.sin(lean) * (surface - topY - sunkMm);
  const middle = (axisX + right - aside) / 2;
  const shownMm = Math.min(lengthMm(float) - cutMm, Math.max(underMm, surface - topY + sunkMm) / scale);
  const outline = (partMm: Mm) => tipSides(float, partMm, scale, point(middle, topY));
  const tip = polygon(
    outline(Math.min(float.tipShowingMm, shownMm, cutMm > 0 ? 3 / scale : shownMm)),
    "accent",
    markedEdge,
  );
  const standing = [polygon(outline(shownMm), "paper", thin), tip];
  const breakY = topY + 5;
  const gap = (xMm: number, halfWidthMm: number) =>
    cutMm > 0 ? parts.lineBreak.draw({ at: point(xMm, breakY), halfWidthMm }) : [];
  return [
    rectangle(axisX, surface, right - axisX, bottomMm - surface, { fill: "water" }),
    ...parts.waterSurface.draw({ leftMm: axisX, rightMm: right, yMm: surface }),
    ...rotated(standing, leanDegrees, point(middle, surface)),
    ...gap(middle, 4),
    polyline([point(axisX, surface), point(axisX, roof)], thinSoft),
    ...gap(axisX, 1.6),
    // Above the break nothing is to the scale.
    ...figures.flatMap(({ tipMm: at, told }) => {
      const y = surface - at * scale;
      const isCut = cutMm > 0 && y < breakY + lineBreakHalfMm + 0.35 * textMm;
      return isCut ? [] : figureAt(point(axisX, y), told, textMm);
    }),
    text(
      point(right, 0.8 * textMm),
      kit.words("drawing.film.tip-scale", { unit: kit.figures.ruler.tip.unit }),
      textMm,
      { anchor: "end", ink: "soft" },
    ),
  ];
}

/** A tick of the scale with its figure. */
const figureAt = ({ xMm, yMm }: Point, told: string, textMm: number): Item[] => [
  polyline([point(xMm - 1.2, yMm), point(xMm, yMm)], thinSoft),
  text(point(xMm - 1.7, yMm + 0.35 * textMm), told, textMm, { anchor: "end", ink: "soft" }),
];

const inRadians = (degrees: number) => (degrees * Math.PI) / 180;

/** The scale at which a tip that leans has room for its height, too. */
function leaningScale(float: Float, { tipMm, leanDegrees }: ShownTip, uprightScale: number): number {
  if (leanDegrees === 0) return uprightScale;
  const seenMm = (tipMm ?? 0) + leaningSunkMm / uprightScale;
  const halfMm = Math.max(...tipSides(float, seenMm, 1, point(0, 0)).map(({ xMm }) => xMm));
  const lean = inRadians(leanDegrees);
  return (tipRoomMm - 1) / (2 * halfMm * Math.cos(lean) + seenMm * Math.sin(lean));
}
