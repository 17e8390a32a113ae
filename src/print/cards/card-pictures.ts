import type { BackLook, FrontLook, SizedPicture } from "../../../templates/cards/card-look.ts";
import { toldTipMm } from "../../core/float/tip.ts";
import { drawTrueTip } from "../../drawing/float/true-tip.ts";
import type { DrawingKit } from "../../drawing/kit.ts";
import { drawShotSlot, forSlot } from "../../drawing/shot-slot.ts";
import { mmPerPoint } from "../../markup/boxes.ts";
import { allShot, type SolvedRig } from "../../model/solved.ts";
import { drawnOf } from "./card-content.ts";
import type { CardFormat } from "./card-formats.ts";

/** The tip as the card tells it, true to size. */
export function tipPicture({ rig, depths }: SolvedRig, kit: DrawingKit, { wordPt }: FrontLook): SizedPicture {
  const { tipAsSetMm } = drawnOf(depths);
  const { widthMm, heightMm, items } = drawTrueTip(
    rig.float,
    toldTipMm(tipAsSetMm),
    wordPt * mmPerPoint,
    kit.figures.ruler.tip,
  );
  const alt = kit.words("drawing.rig.spoken-tip", { tip: kit.figures.tip(tipAsSetMm) });
  return { alt, widthMm, heightMm, draw: () => items };
}

/** A slot for the rig's shot, as wide as the card. */
export function gaugePicture(
  { depths }: SolvedRig,
  { back }: CardFormat,
  { marginMm, wordPt }: BackLook,
  { words, measure }: DrawingKit,
): SizedPicture {
  const shot = forSlot(depths.flatMap(allShot));
  const textMm = wordPt * mmPerPoint;
  const inMm = 2 * textMm;
  const widthMm = back.widthMm - 2 * marginMm;
  const { items, heightMm } = drawShotSlot(shot, { lengthMm: widthMm - 2 * inMm, textMm, measure });
  const alt = words("card.gauge-alt", { sizes: shot.map(({ size }) => size).join(", ") });
  return { alt, widthMm, heightMm, draw: () => [{ kind: "group", xMm: inMm, yMm: 0, items }] };
}
