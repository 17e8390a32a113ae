import { noAnswer, warning } from "../finding.ts";
import { totalPullG } from "../loading/loading.ts";
import { checked, clearOfKnot } from "./clearance.ts";
import type { LiftSpec, PlacedShot, PlacePattern } from "./pattern.ts";
import { oneOf } from "./supply.ts";

/**
 * One shot close to the hook, resting on the bed. It may pull harder than the float carries: the bed holds it, and a
 * tight line sets the tip.
 */
export const placeLift: PlacePattern<LiftSpec> = (spec, room) => {
  if (!(spec.fromHookMm > 0)) {
    return noAnswer("pattern.bad-length", { what: "anchor", lengthMm: spec.fromHookMm });
  }
  const anchor = oneOf(room.tub, spec.anchor);
  if (!anchor) {
    return noAnswer("pattern.not-in-tub", {
      size: spec.anchor,
      sizes: room.tub.map(({ size }) => size).join(", "),
    });
  }
  const { atMm, findings } = clearOfKnot(spec.fromHookMm, "anchor", room);
  const anchorPullG = totalPullG([anchor], room.water);
  const light =
    !room.locked && anchorPullG < room.pullG
      ? [
          warning("pattern.anchor-too-light", {
            size: anchor.size,
            pullG: anchorPullG,
            floatPullG: room.pullG,
          }),
        ]
      : [];
  const placed: PlacedShot[] = [{ ...anchor, role: "anchor", fromHookMm: atMm }];
  return checked(spec.kind, placed, room, [...findings, ...light]);
};
