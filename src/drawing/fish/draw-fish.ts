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
  const figure = fishFigure(looks, { nose: point(marginMm, 0), lengthMm: widthMm - 2 * marginMm });
  /** Labels of the fish with its nose so far down. */
  const row = (says: readonly FishSays[], downMm: number) =>
    labelRow(
      says.map(({ at, say }) => {
        const { xMm, yMm } = figure.places[at];
        return { say, at: point(xMm, yMm + downMm) };
      }),
      widthMm,
      textMm,
      measure,
    );
  const { tell } = looks;
  const noseMm = marginMm + row(tell.above, 0).heightMm + leaderMm - figure.topMm;
  const above = row(tell.above, noseMm);
  const below = row(tell.below, noseMm);
  const belowMm = noseMm + figure.bottomMm + leaderMm;
  return {
    widthMm,
    heightMm: belowMm + below.heightMm + marginMm,
    title,
    description: words("drawing.fish.description", {
      tell: [...tell.above, ...tell.below].map(({ say }) => say).join("; "),
    }),
    items: [
      { kind: "group", xMm: 0, yMm: noseMm, items: figure.items },
      ...above.paint(marginMm, "down"),
      ...below.paint(belowMm, "up"),
    ],
  };
}
