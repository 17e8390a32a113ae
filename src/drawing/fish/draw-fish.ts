import type { FishLooks, FishSays } from "../../model/fish-looks.ts";
import { point } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import { labelRow } from "../labels/label-rows.ts";
import type { Drawing } from "../model.ts";
import { fishFigure } from "./fish-figure.ts";

/** A kind of fish that is drawn. */
interface DrawnFish {
  readonly title: string;
  readonly looks: FishLooks;
}

const marginMm = 1;
/** Between the fish and its labels, for the leaders. */
const leaderMm = 2.5;

/** A kind of fish from the side with the marks that tell it from others, as high as it needs to be. */
export function drawFish(
  { title, looks }: DrawnFish,
  { widthMm, textMm }: { readonly widthMm: number; readonly textMm: number },
  { measure, words }: DrawingKit,
): Drawing {
  const figureAt = (yMm: number) =>
    fishFigure(looks, { nose: point(marginMm, yMm), lengthMm: widthMm - 2 * marginMm });
  const level = figureAt(0);
  const rowsAt = (yMm: number) => {
    const { places } = figureAt(yMm);
    const row = (says: readonly FishSays[]) =>
      labelRow(
        says.map(({ at, say }) => ({ say, at: places[at] })),
        widthMm,
        textMm,
        measure,
      );
    return { above: row(looks.tell.above), below: row(looks.tell.below) };
  };
  const noseMm = marginMm + rowsAt(0).above.heightMm + leaderMm - level.topMm;
  const figure = figureAt(noseMm);
  const { above, below } = rowsAt(noseMm);
  const belowMm = figure.bottomMm + leaderMm;
  return {
    widthMm,
    heightMm: belowMm + below.heightMm + marginMm,
    title,
    description: words("drawing.fish.description", {
      tell: [...looks.tell.above, ...looks.tell.below].map(({ say }) => say).join("; "),
    }),
    items: [...figure.items, ...above.paint(marginMm, "down"), ...below.paint(belowMm, "up")],
  };
}
