import { paintTying, tying } from "../drawing/knots/tying.ts";
import { marksToSvg } from "../drawing/svg.ts";
import type { KnotPicture } from "../model/knot-picture.ts";

/** What draws a knot with a share of a step tied; it says whether there is such a step. */
export function knotStage(moving: Element, json: string) {
  const knot = JSON.parse(json) as Pick<KnotPicture, "frame" | "steps">;
  const [, , widthMm = 0, heightMm = 0] = (moving.parentElement?.getAttribute("viewBox") ?? "")
    .split(" ")
    .map(Number);
  let steps: ReturnType<typeof tying> | undefined;
  let shown = "";
  return (place: number, share: number): boolean => {
    steps ??= tying(knot, { widthMm, heightMm });
    const step = steps[place];
    if (!step) return false;
    const marks = marksToSvg(paintTying(step, share));
    if (marks !== shown) moving.innerHTML = marks;
    shown = marks;
    return true;
  };
}
