import { type Float, lengthMm } from "../../core/float/float.ts";
import { toldTipMm } from "../../core/float/tip.ts";
import type { Mm } from "../../core/units.ts";
import { markedEdge, tipSides } from "../float/float-tip.ts";
import { tipRuler } from "../float/tip-figures.ts";
import { bold, point, polygon, polyline, rectangle, text, thin } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { layLabel, paintLabel } from "../labels/label-text.ts";
import type { Item, Stroke } from "../model.ts";
import { parts } from "../parts/parts.ts";
import { rotated } from "../transform.ts";
import type { FilmRoom } from "./film.ts";

/** The water of the picture that a panel stands beside. */
interface PictureWater {
  readonly surfaceMm: number;
  /** Room above the water. */
  readonly aboveMm: number;
}

const panelMm = 30;
const apartMm = 2;
/** Width that a panel leaves for the picture at its left. */
export const besidePanelMm = ({ widthMm }: FilmRoom): number => widthMm - panelMm - apartMm;

/** How far over a float lies that lies flat. */
export const flatDegrees = 84;
/** How much of the panel is water. */
const panelWaterMm = 7;
/** Top of a float that is under, below the surface [mm of paper]. */
const underMm = 3;
const scaleLine = thin;
/** Less tip than this is as good as none [mm]. */
export const levelMm = 2.5;
/** Where a tip should stand; as much of it beside what is said of it. */
const wantedLine: Stroke = { ...bold, ink: "accent", dashMm: [1.2, 0.8] };
const sampleMm = 4;
/** From the middle of the widest tip to such a line. */
const besideTipMm = 6;
/** Clear of a float that leans and reaches below the panel. */
const underPanelGapMm = 1.2;

/** Which tip of a float a panel shows: null where it is under, none where the float lies flat. */
export type ShownTip = Mm | null | undefined;

/** A tip as it is told, and so as it is drawn at every moment that tells it. */
export function toldTip(tip: ShownTip): ShownTip {
  return typeof tip === "number" ? toldTipMm(tip) : tip;
}

/** The most that a float shows of those [mm]. */
export const mostOf = (tips: readonly ShownTip[]): Mm => Math.max(...tips.map((tip) => tip ?? 0));

/** The last figure keeps its upper half below what the scale is called. */
const panelRuler = (mostMm: Mm, aboveMm: Mm, textMm: Mm, kit: DrawingKit) =>
  tipRuler(
    { mostMm: Math.max(20, mostMm), mostScale: 1.5, highMm: aboveMm - textMm / 2, apartMm: 1.3 * textMm },
    kit,
  );

/**
 * The tip of a float, larger than in the picture beside it, on a scale that stands on the water.
 *
 * @param tips all that it is to show
 * @param room of picture and panel together
 */
export function tipPanel(
  float: Float,
  tips: readonly ShownTip[],
  { widthMm, textMm }: FilmRoom,
  { surfaceMm, aboveMm }: PictureWater,
  kit: DrawingKit,
) {
  const { scale, figures } = panelRuler(mostOf(tips), aboveMm, textMm, kit);
  const axisX =
    widthMm - panelMm + Math.max(...figures.map(({ told }) => kit.measure(told, textMm, "regular"))) + 2.5;
  const middle = (axisX + widthMm) / 2;
  const scaleName = kit.words("drawing.film.tip-scale", { unit: kit.figures.ruler.tip.unit });
  const still: Item[] = [
    rectangle(axisX, surfaceMm, widthMm - axisX, panelWaterMm, { fill: "water" }),
    ...parts.waterSurface.draw({ leftMm: axisX, rightMm: widthMm, yMm: surfaceMm }),
    polyline([point(axisX, surfaceMm), point(axisX, surfaceMm - aboveMm)], scaleLine),
    ...figures.flatMap(({ tipMm, told }) => {
      const y = surfaceMm - tipMm * scale;
      return [
        polyline([point(axisX - 1.4, y), point(axisX, y)], scaleLine),
        text(point(axisX - 2, y + 0.35 * textMm), told, textMm, { anchor: "end", ink: "soft" }),
      ];
    }),
    text(point(axisX + 1, surfaceMm - aboveMm - 0.4 * textMm), scaleName, textMm, { ink: "soft" }),
  ];
  const word = (state: "under" | "level") =>
    text(point(middle, surfaceMm - 1.5), kit.words(`drawing.film.${state}`), textMm, {
      anchor: "middle",
      face: "bold",
      ink: "accent",
    });
  const top = lengthMm(float);
  /** The tip; how far over one lies that lies, and how one that stands leans. */
  const moving = (tipMm: ShownTip, degrees = flatDegrees, leanDegrees = 0): Item[] => {
    if (tipMm === undefined) return lying(float, degrees, scale, { axisX, widthMm, surfaceMm });
    const topY = tipMm === null ? surfaceMm + underMm : surfaceMm - tipMm * scale;
    const shownMm = Math.min(top, (surfaceMm + panelWaterMm - 0.6 - topY) / scale);
    const marked = Math.min(float.tipShowingMm, shownMm);
    const outline = (lengthMm: Mm) => tipSides(float, lengthMm, scale, point(middle, topY));
    const standing: Item[] = [
      polygon(outline(shownMm), "paper", thin),
      polygon(outline(marked), "accent", markedEdge),
      // How far under it is, this scale does not say; and of a tip that is level with the water nothing is seen.
      ...(tipMm === null ? [word("under")] : tipMm < levelMm ? [word("level")] : []),
    ];
    return leanDegrees === 0 ? standing : rotated(standing, leanDegrees, point(middle, surfaceMm));
  };
  /** What a tip that stands is held against; beside one that leans or is under it would name what is not there. */
  const wanted = (tipMm: Mm, said: string): Item[] =>
    wantedMark(said, { yMm: surfaceMm - tipMm * scale, middle, axisX, surfaceMm }, { widthMm, textMm }, kit);
  return { still, moving, wanted };
}

/** All of a float, lying or leaning on the water: of its tip alone nobody would know that it is a float. */
function lying(
  float: Float,
  degrees: number,
  tipScale: number,
  { axisX, widthMm, surfaceMm }: { readonly axisX: Mm; readonly widthMm: Mm; readonly surfaceMm: Mm },
): Item[] {
  const longMm = lengthMm(float);
  const scale = Math.min(tipScale, (0.9 * (widthMm - axisX)) / longMm);
  const middle = point((axisX + widthMm) / 2, surfaceMm);
  const head = point(middle.xMm, surfaceMm - (longMm * scale) / 2);
  const outline = (partMm: Mm) => tipSides(float, partMm, scale, head);
  const upright = [
    polygon(outline(longMm), "paper", thin),
    polygon(outline(float.tipShowingMm), "accent", markedEdge),
  ];
  return rotated(upright, degrees, middle);
}

/** A line on either side of where the tip should stand; below the panel what it is. */
function wantedMark(
  said: string,
  at: { readonly yMm: Mm; readonly middle: Mm; readonly axisX: Mm; readonly surfaceMm: Mm },
  { widthMm, textMm }: FilmRoom,
  kit: DrawingKit,
): Item[] {
  const { yMm, middle, axisX, surfaceMm } = at;
  const fromX = widthMm - panelMm + 1;
  const wordsX = fromX + sampleMm + 1;
  const label = layLabel([{ text: said }], widthMm - wordsX, textMm, kit.measure);
  const labelY = surfaceMm + panelWaterMm + underPanelGapMm + label.heightMm / 2;
  const firstY = labelY - label.heightMm / 2 + textMm / 2;
  return [
    polyline([point(axisX, yMm), point(middle - besideTipMm, yMm)], wantedLine),
    polyline([point(middle + besideTipMm, yMm), point(widthMm, yMm)], wantedLine),
    polyline([point(fromX, firstY), point(fromX + sampleMm, firstY)], wantedLine),
    ...paintLabel(label, wordsX, labelY, kit.measure),
  ];
}
