import type { Float } from "../../core/float/float.ts";
import { known } from "../../core/lists.ts";
import { ballDiameterMm } from "../../core/tackle/shot.ts";
import type { Mm } from "../../core/units.ts";
import type { SolvedDepth, SolvedShot } from "../../model/solved.ts";
import { type Point, point } from "../items.ts";
import { shotRadiusMm } from "./moving.ts";

/** The line below a float that is loaded is drawn this long, whatever it is. */
export const lineMm = 24;

/** A shot that the rig does not have. */
export type MoreShot = Pick<SolvedShot, "massG" | "metal">;

/** The line from the rod comes to such a float's tip and runs along it. */
export const isHeldTwice = ({ attachment }: Float) => attachment === "top and bottom";

interface BelowFloat {
  readonly eye: Point;
  readonly end: Point;
}

/** Shot on the line, in the order in which they go on: the lock on either side of the eye, the rest down to the hook. */
export function pinchedOn(
  float: Float,
  depth: SolvedDepth,
  shot: readonly SolvedShot[],
  more: readonly MoreShot[],
  { eye, end }: BelowFloat,
): { readonly place: Point; readonly diameterMm: Mm }[] {
  const above = lockAbove(depth);
  // On the line of a float that slides nothing may be but below it: it goes to the rest of the bulk.
  const slides = float.attachment === "sliding";
  const isBelow = isHeldTwice(float);
  const counted = {
    above: above.length + (isBelow || slides ? 0 : more.length),
    below: isBelow ? more.length : 0,
  };
  const lockMm = besideEyeMm(depth.lockShot.length - above.length + counted.below);
  const restMm = Math.max(0.4 * lineMm, lineMm - lockMm);
  const upMm = aboveHookMm(depth, restMm);
  const on = { above: 0, below: 0 };
  const onRodLine = () => onLineToRod(eye, on.above++, counted.above);
  const belowEye = () => point(eye.xMm, Math.min(end.yMm, eye.yMm + besideEyeMm(on.below++)));
  let freeMm =
    Math.max(0, ...upMm.values()) + shotRadiusMm(Math.max(0, ...shot.map((one) => one.diameterMm)));
  const onBulk = (diameterMm: Mm) => {
    const radiusMm = shotRadiusMm(diameterMm);
    freeMm += 2 * radiusMm;
    return point(eye.xMm, end.yMm - freeMm + radiusMm);
  };
  const placeOf = (one: SolvedShot) => {
    if (above.includes(one)) return onRodLine();
    if (depth.lockShot.includes(one)) return belowEye();
    return point(eye.xMm, end.yMm - known(upMm, one));
  };
  return [
    ...shot.map((one) => ({ place: placeOf(one), diameterMm: one.diameterMm })),
    ...more.map(({ massG, metal }) => {
      const diameterMm = ballDiameterMm(massG, metal);
      return { place: slides ? onBulk(diameterMm) : isBelow ? belowEye() : onRodLine(), diameterMm };
    }),
  ];
}

/** How far above the hook each shot of the line is drawn: where it is, but beside the one below it, so that each of a bulk is seen. */
function aboveHookMm({ lineShot, floatToHookMm }: SolvedDepth, restMm: number): Map<SolvedShot, number> {
  const upMm = new Map<SolvedShot, number>();
  let leastMm = 0;
  for (const shot of lineShot) {
    const radiusMm = shotRadiusMm(shot.diameterMm);
    const placeMm = Math.max(leastMm + radiusMm, (restMm * shot.fromHookMm) / floatToHookMm);
    upMm.set(shot, placeMm);
    leastMm = placeMm + radiusMm;
  }
  const closer = Math.min(1, restMm / leastMm);
  return new Map([...upMm].map(([shot, placeMm]) => [shot, closer * placeMm]));
}

/** Those of the lock that are above the eye. */
function lockAbove({ lock, lockShot }: SolvedDepth): readonly SolvedShot[] {
  const sizes = lock.above.map(({ size }) => size);
  return lockShot.filter(({ size }) => {
    const at = sizes.indexOf(size);
    if (at >= 0) sizes.splice(at, 1);
    return at >= 0;
  });
}

/** How steeply the line to the rod rises from the eye. */
export const rodRise = 0.3;

/** How far from the eye a shot of the lock is drawn, the one beside it first. */
const besideEyeMm = (place: number) => 1.9 + 2.2 * place;

/** A shot of so many above the eye, on the line to the rod. */
function onLineToRod({ xMm, yMm }: Point, place: number, count: number): Point {
  const outMm = Math.min(1, (xMm - 1) / besideEyeMm(count - 1)) * besideEyeMm(place);
  return point(xMm - outMm, yMm - rodRise * outMm);
}
