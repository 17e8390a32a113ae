import type { FlowHang } from "../../core/flow/hang.ts";
import { entry, first, neighbours } from "../../core/lists.ts";
import { type Point, partWay, point, text } from "../items.ts";
import type { DrawingKit } from "../kit.ts";
import type { Item } from "../model.ts";
import { tellHold } from "./tell-hang.ts";

/** Height of a hook in a plot of lines in the current. */
export const hookMm = 2.8;

/** Kept free of lines and hooks at either end of a name. */
const freeMm = 1;

/** Where a panel has its float, its bed and its sides. */
export interface NamePlace {
  readonly top: Point;
  readonly scale: number;
  readonly bedMm: number;
  readonly leftMm: number;
  readonly rightMm: number;
  readonly textMm: number;
}

/** How each float is held, at the bait of its line; where line and hook leave no room, the key alone says it. */
export function namesOf(hangs: readonly FlowHang[], place: NamePlace, kit: DrawingKit): Item[] {
  const { top, scale, textMm } = place;
  const drawn = hangs.map((hang) =>
    hang.shape.map(({ xMm, depthMm }) => point(top.xMm + scale * xMm, top.yMm + scale * depthMm)),
  );
  const marks = drawn.flatMap((line) => [
    ...neighbours(line).flatMap(([a, b]) => [0, 0.25, 0.5, 0.75, 1].map((share) => partWay(a, b, share))),
    ...hookMarks(first(line), entry(line, 1)),
  ]);
  return hangs.flatMap((hang, i) => {
    const said = tellHold(hang, kit);
    const widthMm = kit.measure(said, textMm, "bold");
    const isClear = ({ xMm, yMm }: Point) =>
      marks.every(
        (mark) =>
          mark.xMm < xMm - freeMm ||
          mark.xMm > xMm + widthMm + freeMm ||
          mark.yMm < yMm - 0.9 * textMm ||
          mark.yMm > yMm + 0.35 * textMm,
      );
    const bait = first(entry(drawn, i));
    /** From words that start at a place to a bait. */
    const offMm = ({ xMm, yMm }: Point, to: Point) =>
      Math.hypot(to.xMm - Math.min(xMm + widthMm, Math.max(xMm, to.xMm)), to.yMm - (yMm - 0.35 * textMm));
    const isOwn = (start: Point) =>
      drawn.every((line) => first(line) === bait || offMm(start, first(line)) > offMm(start, bait) + 1);
    const at = nameStarts(bait, hang.leadMm > 0, widthMm, place).find(
      (start) => isClear(start) && isOwn(start),
    );
    if (!at) return [];
    // What stands here is in the way of the next one.
    for (let x = at.xMm; x <= at.xMm + widthMm; x += 1) marks.push(point(x, at.yMm - 0.35 * textMm));
    return [text(at, said, textMm, { face: "bold" })];
  });
}

/** Places that a hook takes up, along its shank and round its bend. */
function hookMarks(bend: Point, next: Point): Point[] {
  const share = hookMm / (Math.hypot(next.xMm - bend.xMm, next.yMm - bend.yMm) || 1);
  const eye = partWay(bend, next, share);
  const aside = point((bend.yMm - eye.yMm) * 0.5, (eye.xMm - bend.xMm) * 0.5);
  return [0, 0.5, 1].flatMap((along) => {
    const on = partWay(bend, eye, along);
    return [on, point(on.xMm + aside.xMm, on.yMm + aside.yMm), point(on.xMm - aside.xMm, on.yMm - aside.yMm)];
  });
}

/** Where the words at a bait may start, the best first: below it, over the bed, above or beside it; from the bait on. */
function nameStarts(bait: Point, isAhead: boolean, widthMm: number, place: NamePlace): Point[] {
  const { bedMm, leftMm, rightMm, textMm } = place;
  const lowestMm = bedMm - 0.4 * textMm;
  const beside = bait.yMm + 0.35 * textMm;
  const bases = [beside + hookMm / 2 + 0.8, lowestMm, bait.yMm - hookMm - 0.6, beside, beside - hookMm];
  const asides = [-2, 0, 2.5, 5, 8, 11, 14];
  const back = (aside: number) => bait.xMm - aside - widthMm;
  const onward = (aside: number) => bait.xMm + aside;
  return bases
    .filter((yMm) => yMm <= lowestMm)
    .flatMap((yMm) =>
      (isAhead ? [back, onward] : [onward, back]).flatMap((startOf) =>
        asides.map((aside) => point(startOf(aside), yMm)),
      ),
    )
    .filter(({ xMm }) => xMm > leftMm + 0.5 && xMm + widthMm < rightMm);
}
