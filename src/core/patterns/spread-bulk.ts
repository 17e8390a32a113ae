import { noAnswer } from "../finding.ts";
import { neighbours } from "../lists.ts";
import { placeGroup } from "./bulk.ts";
import { apartMm } from "./clearance.ts";
import type { PlacePattern, SpreadBulkSpec } from "./pattern.ts";

/** A bulk opened out evenly over the stated length, from its lowest shot up. */
export const placeSpreadBulk: PlacePattern<SpreadBulkSpec> = (spec, room) => {
  if (!(spec.overMm > 0))
    return noAnswer("pattern.bad-length", { what: "spread bulk", lengthMm: spec.overMm });
  return placeGroup(spec, room, (shot, lowestMm) => {
    const evenMm = shot.length > 1 ? spec.overMm / (shot.length - 1) : 0;
    const gapMm = Math.max(evenMm, ...neighbours(shot).map(([below, one]) => apartMm(below, one)));
    return shot.map((_, i) => lowestMm + gapMm * i);
  });
};
