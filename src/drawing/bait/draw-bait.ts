import { power } from "../../core/power.ts";
import type { BaitLooks } from "../../model/bait-looks.ts";
import { type Point, point, polyline, text, thin } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { labelColumn, leaderMm } from "../labels/label-column.ts";
import type { Drawing, Item } from "../model.ts";
import { NoRoomError } from "../no-room.ts";
import { hookEye } from "../parts/hook.ts";
import { strandStrokes } from "../strands.ts";
import { baitShapes } from "./bait-shapes.ts";
import { hookedThrough } from "./hooked.ts";
import { hangsDownMm } from "./worm.ts";

/** A bait that is drawn on a hook. */
interface DrawnBait {
  readonly title: string;
  readonly looks: BaitLooks;
  /** Mass of the hook that it is drawn on [g]. */
  readonly hookMassG: number;
}

/** Times true size that a bait is drawn at, largest first: the largest at which it is no longer than this. */
const scales = [2, 1, 0.5] as const;
const longestMm = 34;
const pictureShare = 0.5;
const marginMm = 1.5;

/** Height of a hook from its mass [mm]: a wire as much thicker as it is longer, from memory of hooks 8 to 22. */
function hookHeightMm(massG: number): number {
  return 14.5 * power(massG / 0.1, 0.42);
}

/**
 * A bait on its hook with how it is known and hooked, and a bar of 10 mm to the same scale.
 *
 * @throws NoRoomError where the labels find no room
 */
export function drawBait(
  { title, looks, hookMassG }: DrawnBait,
  { widthMm, textMm }: { readonly widthMm: number; readonly textMm: number },
  kit: DrawingKit,
): Drawing {
  const { measure, words, figures } = kit;
  const scale = scales.find((one) => hangsDownMm(looks) * one <= longestMm) ?? 0.25;
  const heightMm = hookHeightMm(hookMassG) * scale;
  const lineMm = 5;
  const baitAt = (bend: Point) =>
    baitShapes[looks.shape]({
      bend,
      lengthMm: looks.lengthMm * scale,
      widthMm: looks.widthMm * scale,
      count: looks.count,
    });
  const x = (widthMm * pictureShare) / 2;
  // As far down as hook and bait reach up from the bend.
  const upMm = Math.max(heightMm, -highestMm(baitAt(point(x, 0)).items));
  const bend = point(x, marginMm + lineMm + upMm);
  const { items, places, flesh } = baitAt(bend);
  const eye = hookEye({ bend, heightMm });
  const footMm = Math.max(bend.yMm, lowestMm(items)) + 6;
  const at = { ...places, hook: point(bend.xMm + 0.52 * heightMm, bend.yMm - 0.55 * heightMm) };
  const labels = looks.tell
    .map(({ at: place, say }) => ({ at: at[place], runs: [{ text: say }] }))
    .sort((a, b) => a.at.yMm - b.at.yMm);
  const column = labelColumn(
    labels,
    {
      leftMm: widthMm * pictureShare + leaderMm,
      rightMm: widthMm - 0.5,
      topMm: 0.5,
      bottomMm: footMm + 2,
      textMm,
    },
    measure,
  );
  if (!column) throw new NoRoomError(`the labels of ${title}`, { widthMm, heightMm: footMm + 2 });
  return {
    widthMm,
    heightMm: footMm + 2,
    title,
    description: words("drawing.bait.description", {
      length: figures.size(looks.lengthMm),
      tell: looks.tell.map(({ say }) => say).join("; "),
    }),
    items: [
      polyline([point(bend.xMm, 0.3), eye], strandStrokes["hook length"]),
      ...items,
      ...hookedThrough({ bend, heightMm }, flesh),
      ...scaleBar(footMm, 10 * scale, textMm, tellScale(scale, kit)),
      ...column,
    ],
  };
}

/** How long the bar is, and the scale, which from picture to picture is another. */
function tellScale(scale: number, { words, figures }: DrawingKit): string {
  return words("drawing.bait.scale", {
    bar: figures.diameter(10),
    larger: figures.number(Math.max(scale, 1), 0),
    smaller: figures.number(Math.max(1 / scale, 1), 0),
  });
}

/** A bar that is as long as its words say, to the scale of the picture. */
function scaleBar(yMm: number, lengthMm: number, textMm: number, say: string): Item[] {
  const rightMm = marginMm + lengthMm;
  const tick = (xMm: number) => polyline([point(xMm, yMm - 1), point(xMm, yMm + 1)], thin);
  return [
    polyline([point(marginMm, yMm), point(rightMm, yMm)], thin),
    tick(marginMm),
    tick(rightMm),
    text(point(rightMm + 1.5, yMm + 0.35 * textMm), say, textMm, { ink: "soft" }),
  ];
}

const highestMm = (items: readonly Item[]) => Math.min(...heightsMm(items));
const lowestMm = (items: readonly Item[]) => Math.max(...heightsMm(items));

/** Heights that marks reach. */
function heightsMm(items: readonly Item[]): number[] {
  return items.flatMap((item) =>
    item.kind === "path"
      ? item.steps.flatMap((step) => (step[0] === "Z" ? [] : [step[step.length - 1] as number]))
      : item.kind === "circle"
        ? [item.cyMm - item.radiusMm, item.cyMm + item.radiusMm]
        : [],
  );
}
