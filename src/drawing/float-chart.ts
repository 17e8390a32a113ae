import { type Float, lengthMm } from "../core/float.ts";
import { describeFloat, type FloatTextOptions, floatScales } from "./float-drawing.ts";
import { point } from "./items.ts";
import type { Box, DrawingKit } from "./kit.ts";
import { type LabelText, layLabel, leading, paintLabel } from "./label-text.ts";
import type { Drawing, Item } from "./model.ts";
import { floatEyeRadiusMm } from "./parts/float-body.ts";
import { parts } from "./parts/parts.ts";

/** Between a float's foot and its name, and between the names and the line that states the scale. */
const gapMm = 1.5;

/**
 * Floats side by side to one scale, hung in the water as they stand with their shot on, for comparing their size.
 * As high as it needs to be, at most as high as the box.
 *
 * @throws Error where the box is too small
 */
export function drawFloatChart(
  floats: readonly Float[],
  box: Box,
  kit: DrawingKit,
  { textMm }: FloatTextOptions = { textMm: 3.5 },
): Drawing {
  const { words, figures, measure } = kit;
  const slotMm = box.widthMm / floats.length;
  const lay = (text: string, face: "bold" | "regular") =>
    layLabel([{ text, face }], slotMm - 2, textMm, measure);
  const names = floats.map((float) => [
    lay(float.title, "bold"),
    lay(words("drawing.float.takes", { capacity: figures.mass(float.capacityG) }), "regular"),
  ]);
  const heightOf = (name: readonly LabelText[]) => name.reduce((sum, part) => sum + part.heightMm, 0);
  const namesMm = Math.max(...names.map(heightOf));
  const captionMm = textMm * leading;
  const aboveMm = Math.max(...floats.map((float) => float.tipShowingMm));
  const belowMm = Math.max(...floats.map((float) => lengthMm(float) - float.tipShowingMm));
  const textsMm = gapMm + namesMm + gapMm + captionMm + 0.5;
  const scale = floatScales.find(
    (one) => 1.5 + (aboveMm + belowMm) * one.scale + 2 * floatEyeRadiusMm + textsMm <= box.heightMm,
  );
  if (!scale || names.flat().some((name) => name.widthMm > slotMm - 2))
    throw new Error(`no room for a chart of ${floats.length} floats in ${box.widthMm} × ${box.heightMm} mm`);

  const waterMm = 1.5 + aboveMm * scale.scale;
  const lowest = waterMm + belowMm * scale.scale + 2 * floatEyeRadiusMm;
  const items: Item[] = [...parts.waterSurface.draw({ leftMm: 0, rightMm: box.widthMm, yMm: waterMm })];
  for (const [i, float] of floats.entries()) {
    items.push(
      ...parts.floatBody.draw({
        profile: float.profile,
        tipMm: float.tipShowingMm,
        eye: float.attachment !== "top and bottom",
        at: point((i + 0.5) * slotMm, waterMm + (lengthMm(float) - float.tipShowingMm) * scale.scale),
        lengthScale: scale.scale,
        widthScale: scale.scale,
      }),
    );
    let top = lowest + gapMm;
    for (const name of names[i]!) {
      const left = (i + 0.5) * slotMm - name.widthMm / 2;
      items.push(...paintLabel(name, left, top + name.heightMm / 2, measure));
      top += name.heightMm;
    }
  }
  const drawnAt = words("drawing.float.chartScale", { scale: words(`drawing.float.scale.${scale.name}`) });
  const caption = layLabel([{ text: drawnAt, ink: "soft" }], box.widthMm - 1, textMm, measure);
  const captionTop = lowest + gapMm + namesMm + gapMm;
  items.push(...paintLabel(caption, 0.5, captionTop + caption.heightMm / 2, measure));
  return {
    widthMm: box.widthMm,
    heightMm: captionTop + caption.heightMm + 0.5,
    title: words("drawing.float.chart"),
    description: floats.map((float) => describeFloat(float, kit)).join(" "),
    items,
  };
}
