import type { FlowHang } from "../../core/flow/hang.ts";
import type { Mm } from "../../core/units.ts";
import type { DrawingKit } from "../kit.ts";

/** How the float is held: `held back 40 %`. */
export function tellHold({ heldBackShare }: FlowHang, { words, figures }: DrawingKit): string {
  if (heldBackShare === 0) return words("drawing.hang.free");
  if (heldBackShare === 1) return words("drawing.hang.stopped");
  return words("drawing.hang.held", { share: figures.share(heldBackShare) });
}

/** How the float is held and where the bait then is; `asFigure` may keep a figure and its unit in one line. */
export function tellHang(
  hang: FlowHang,
  depthMm: Mm,
  kit: DrawingKit,
  asFigure: (figure: string) => string = (figure) => figure,
): string {
  const { words, figures } = kit;
  const held = tellHold(hang, kit);
  // To the centimetre, as it is printed, so that words and figures agree.
  const lead = Math.round(hang.leadMm / 10);
  const where = lead === 0 ? "level" : lead > 0 ? "leads" : "trails";
  const height = Math.round(hang.offBedMm / 10);
  const values = { held, gap: asFigure(figures.shortGap(10 * Math.abs(lead))) };
  const bait = words(`drawing.hang.${where}`, values);
  return height === 0
    ? words("drawing.hang.on-bed", { bait })
    : words("drawing.hang.up", {
        bait,
        deep: asFigure(figures.shortDepth(depthMm - 10 * height)),
        height: asFigure(figures.shortGap(10 * height)),
      });
}
