import { type Float, lengthMm } from "../../core/float/float.ts";
import { first } from "../../core/lists.ts";
import { point } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import { type LabelText, layLabel, paintLabel } from "../labels/label-text.ts";
import type { Drawing, Item } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { floatEyeRadiusMm } from "../parts/float-body.ts";
import { parts } from "../parts/parts.ts";
import { type FloatScale, type FloatTextOptions, floatScales, stretchedScales } from "./float-drawing.ts";
import { closeLook } from "./float-parts.ts";

/** Between a float's foot and its name, and between rows. */
const gapMm = 1.5;
/** Least room for a name, in ems: two words of it side by side are wanted. */
const slotEms = 6.5;

/** A float with its name, its length and what it takes, each on lines of its own. */
interface Entry {
  readonly float: Float;
  readonly names: readonly LabelText[];
}

/**
 * Floats side by side to one scale, in rows, hung in the water as they stand with their shot on, for comparing their
 * size. As high as it needs to be, at most as high as the box.
 *
 * @throws NoRoomError where the box is too small
 */
export function drawFloatChart(
  floats: readonly Float[],
  box: Box,
  kit: DrawingKit,
  { textMm, stretched = false }: FloatTextOptions = { textMm: 3.5 },
): Drawing {
  const { words, figures, measure } = kit;
  const columns = Math.min(floats.length, Math.max(1, Math.floor(box.widthMm / (slotEms * textMm))));
  const rowCount = Math.ceil(floats.length / columns);
  const perRow = Math.ceil(floats.length / rowCount);
  const slotMm = box.widthMm / perRow;
  const lay = (text: string, face: "bold" | "regular") =>
    layLabel([{ text, face }], slotMm - 1.5, textMm, measure);
  const entries = floats.map(
    (float): Entry => ({
      float,
      names: [
        lay(float.title, "bold"),
        lay(words("drawing.float.stretched", { length: figures.diameter(lengthMm(float)) }), "regular"),
        lay(words("drawing.float.takes", { capacity: figures.mass(float.capacityG) }), "regular"),
      ],
    }),
  );
  const rows = Array.from({ length: rowCount }, (_, i) => entries.slice(i * perRow, (i + 1) * perRow));
  const captionAt = (scale: FloatScale) =>
    layLabel([{ text: scaleWords(scale, kit), ink: "soft" }], box.widthMm - 1, textMm, measure);
  const heightMm = (one: FloatScale) =>
    rows.reduce((sum, row) => sum + rowHeightMm(row, one.scale), captionAt(one).heightMm + 0.5);
  const scales: readonly FloatScale[] = stretched ? stretchedScales : floatScales;
  const scale = scales.find((one) => heightMm(one) <= box.heightMm);
  if (!scale)
    throw new NoRoomError(`a chart of ${floats.length} floats`, box, {
      folder: "floats",
      id: first(floats).id,
    });

  const items: Item[] = [];
  let top = 0;
  for (const row of rows) {
    items.push(...drawRow(row, scale.scale, { topMm: top, slotMm, widthMm: box.widthMm }, kit));
    top += rowHeightMm(row, scale.scale);
  }
  const caption = captionAt(scale);
  items.push(...paintLabel(caption, 0.5, top + caption.heightMm / 2, measure));
  return {
    widthMm: box.widthMm,
    heightMm: heightMm(scale),
    title: words("drawing.float.chart"),
    description: words("drawing.float.chart-told", {
      floats: floats
        .map((float) =>
          words("drawing.float.chart-one", { float: float.title, length: figures.diameter(lengthMm(float)) }),
        )
        .join("; "),
    }),
    items,
  };
}

function scaleWords(scale: FloatScale, { words }: DrawingKit): string {
  if (!("name" in scale)) return words("drawing.float.chart-stretched");
  return words("drawing.float.chart-scale", { scale: words(`drawing.float.scale.${scale.name}`) });
}

const aboveMm = (row: readonly Entry[]) => Math.max(...row.map(({ float }) => float.tipShowingMm));
const belowMm = (row: readonly Entry[]) =>
  Math.max(...row.map(({ float }) => lengthMm(float) - float.tipShowingMm));
const namesMm = (names: readonly LabelText[]) => names.reduce((sum, name) => sum + name.heightMm, 0);

function rowHeightMm(row: readonly Entry[], scale: number): number {
  const floatsMm = (aboveMm(row) + belowMm(row)) * scale + 2 * floatEyeRadiusMm;
  return gapMm + floatsMm + gapMm + Math.max(...row.map(({ names }) => namesMm(names))) + gapMm;
}

function drawRow(
  row: readonly Entry[],
  scale: number,
  { topMm, slotMm, widthMm }: { topMm: number; slotMm: number; widthMm: number },
  { measure }: DrawingKit,
): Item[] {
  const waterMm = topMm + gapMm + aboveMm(row) * scale;
  const lowest = waterMm + belowMm(row) * scale + 2 * floatEyeRadiusMm;
  const items: Item[] = [...parts.waterSurface.draw({ leftMm: 0, rightMm: widthMm, yMm: waterMm })];
  for (const [i, { float, names }] of row.entries()) {
    const x = (i + 0.5) * slotMm;
    items.push(
      ...parts.floatBody.draw({
        ...closeLook(float),
        at: point(x, waterMm + (lengthMm(float) - float.tipShowingMm) * scale),
        lengthScale: scale,
        widthScale: scale,
      }),
    );
    let top = lowest + gapMm;
    for (const name of names) {
      items.push(...paintLabel(name, x, top + name.heightMm / 2, measure, "middle"));
      top += name.heightMm;
    }
  }
  return items;
}
