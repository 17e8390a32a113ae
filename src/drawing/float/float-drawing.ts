import { type Float, lengthMm } from "../../core/float/float.ts";
import { diameterAtMm } from "../../core/float/profile.ts";
import { last } from "../../core/lists.ts";
import { type Point, point, polyline, thin } from "../items.ts";
import type { Box, DrawingKit } from "../kit.ts";
import { type ColumnLabel, labelColumn, leaderMm } from "../labels/label-column.ts";
import { layLabel, paintLabel, together } from "../labels/label-text.ts";
import type { Drawing, Item } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { floatEyeRadiusMm } from "../parts/float-body.ts";
import { parts } from "../parts/parts.ts";
import { closeLook, type FloatPart, floatParts, rubberHeightsMm, thicknessMm } from "./float-parts.ts";
import { rubbersOn } from "./rubbers-on.ts";

export interface FloatTextOptions {
  readonly textMm: number;
  /** Shown larger or smaller than it is drawn, as on a page: nothing is said of the size then. */
  readonly stretched?: boolean;
}

/** Shares of the true size that a float too long for its box is drawn at; each has a name. */
export const floatScales = [
  { scale: 1, name: "true" },
  { scale: 0.5, name: "half" },
  { scale: 0.25, name: "quarter" },
] as const;

/** The share of its true size that a float is drawn at, with its name where one is claimed. */
export type FloatScale = (typeof floatScales)[number] | { readonly scale: number };

const leftMm = 14;
const marginMm = 0.5;

/** For a drawing that is stretched on its page no scale is claimed, so it need not be a round one. */
export const stretchedScales = Array.from({ length: 45 }, (_, i) => ({ scale: 1 - 0.02 * i }));

/**
 * One float to true size with its parts named, the water where it should stand with its shot on; at half or a quarter
 * of its size, and saying so, where the box is too low. As high as it needs to be, at most as high as the box.
 *
 * @throws NoRoomError where the box is too small
 */
export function drawFloat(
  float: Float,
  box: Box,
  kit: DrawingKit,
  { textMm, stretched = false }: FloatTextOptions = { textMm: 3.5 },
): Drawing {
  const { words, figures, measure } = kit;
  const length = figures.diameter(lengthMm(float));
  for (const scale of stretched ? stretchedScales : floatScales) {
    const said =
      "name" in scale
        ? words("drawing.float.caption", { length, scale: words(`drawing.float.scale.${scale.name}`) })
        : words("drawing.float.stretched", { length });
    const caption = layLabel([{ text: said, ink: "soft" }], box.widthMm - 2 * marginMm, textMm, measure);
    const topMm = 2.5;
    const lowest = box.heightMm - caption.heightMm - 2.5;
    if (topMm + lengthMm(float) * scale.scale + 2 * floatEyeRadiusMm > lowest) continue;
    const labels = floatLabels(float, scale, topMm, kit);
    const reach = Math.max(...labels.map((label) => label.at.xMm));
    const column = labelColumn(
      labels,
      {
        leftMm: reach + leaderMm,
        rightMm: box.widthMm - marginMm,
        topMm: 0.3,
        bottomMm: lowest + 1.5,
        textMm,
      },
      measure,
    );
    if (!column) continue;
    const bottoms = column.map((item) => (item.kind === "text" ? item.yMm + 0.25 * textMm : 0));
    const footMm = topMm + lengthMm(float) * scale.scale + 2 * floatEyeRadiusMm;
    const captionMm = Math.max(footMm, ...bottoms) + 2;
    return {
      widthMm: box.widthMm,
      heightMm: captionMm + caption.heightMm + 0.3,
      title: float.title,
      description: describeFloat(float, kit),
      items: [
        ...floatAtScale(float, scale, topMm),
        ...column,
        ...paintLabel(caption, marginMm, captionMm + caption.heightMm / 2, measure),
      ],
    };
  }
  throw new NoRoomError("a float with its parts", box, { folder: "floats", id: float.id });
}

function floatAtScale(float: Float, { scale }: FloatScale, topMm: number): Item[] {
  const foot = topMm + lengthMm(float) * scale;
  const mark = topMm + float.tipShowingMm * scale;
  const items: Item[] = [
    ...parts.dimension.draw({ xMm: 4, fromMm: topMm, toMm: foot }),
    ...parts.waterSurface.draw({ leftMm: 7, rightMm: leftMm + 9, yMm: mark }),
    ...parts.floatBody.draw({
      ...closeLook(float),
      at: point(leftMm, foot),
      lengthScale: scale,
      widthScale: scale,
    }),
  ];
  if (float.attachment === "top and bottom") {
    const drawn = { float, foot: point(leftMm, foot), lengthScale: scale, widthScale: scale };
    const { line, rubbers } = rubbersOn(drawn);
    // From the rod, down along the float, and on to the shot.
    const ends = [point(leftMm - 6, topMm), point(last(line).xMm, foot + 2 * floatEyeRadiusMm)] as const;
    items.push(polyline([ends[0], ...line, ends[1]], thin), ...rubbers);
  }
  return items;
}

/** Names of the parts from the top down. */
function floatLabels(
  float: Float,
  { scale }: FloatScale,
  topMm: number,
  { words, figures }: DrawingKit,
): ColumnLabel[] {
  const foot = topMm + lengthMm(float) * scale;
  const height = (atMm: number) => foot - atMm * scale;
  const edge = (atMm: number) => leftMm + (diameterAtMm(float.profile, atMm) / 2) * scale + 0.6;
  const mark = lengthMm(float) - float.tipShowingMm;
  const label = (
    at: Point,
    name: FloatPart["name"] | "water" | "rubber" | "line" | "eye",
    about: string,
  ): ColumnLabel => ({
    at,
    runs: [{ text: words(`drawing.float.part.${name}`), face: "bold" }, { text: about }],
  });
  const named = floatParts(float).map((part) => {
    const middle = part.name === "tip" ? mark + float.tipShowingMm / 2 : (part.fromMm + part.toMm) / 2;
    const thickness = figures.diameter(thicknessMm(float, part));
    const at = point(edge(middle), height(middle));
    return label(at, part.name, words(`drawing.float.about.${part.name}`, { thickness }));
  });
  const capacity = together(figures.mass(float.capacityG));
  const tip = together(figures.tip(float.tipShowingMm));
  const water = label(
    point(leftMm + 9.6, height(mark)),
    "water",
    words("drawing.float.about.water", { capacity, tip }),
  );
  const held =
    float.attachment === "top and bottom"
      ? [
          ...rubberHeightsMm(float).map((atMm) =>
            label(point(edge(atMm) + 0.8, height(atMm)), "rubber", words("drawing.float.about.rubber")),
          ),
          label(point(leftMm + 1.4, foot + 2 * floatEyeRadiusMm), "line", words("drawing.float.about.line")),
        ]
      : [
          label(
            point(leftMm + 2 * floatEyeRadiusMm, foot + floatEyeRadiusMm),
            "eye",
            words(`drawing.float.eye.${eyeUse(float)}`),
          ),
        ];
  return [...named, water, ...held].sort((a, b) => a.at.yMm - b.at.yMm);
}

function eyeUse(float: Float): "sliding" | "locked" | "stopped" {
  if (float.attachment === "sliding") return "sliding";
  return float.heldByShot ? "locked" : "stopped";
}

/** A float in words. */
function describeFloat(float: Float, { words, figures }: DrawingKit): string {
  const told = floatParts(float).map((part) =>
    words("drawing.float.told-part", {
      part: words(`drawing.float.part.${part.name}`),
      length: figures.diameter(Math.round(part.toMm - part.fromMm)),
      thickness: figures.diameter(thicknessMm(float, part)),
    }),
  );
  return words("drawing.float.description", {
    float: float.title,
    length: figures.diameter(lengthMm(float)),
    capacity: figures.mass(float.capacityG),
    tip: figures.tip(float.tipShowingMm),
    parts: told.join("; "),
  });
}
