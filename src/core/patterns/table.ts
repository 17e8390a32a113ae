import { type Answer, noAnswer } from "../finding.ts";
import { placeAllAtFloat } from "./all-at-float.ts";
import { placeBulk } from "./bulk.ts";
import { placeLift } from "./lift.ts";
import type { PatternKind, PatternRoom, PatternSpec, PlacedShot, PlacePattern } from "./pattern.ts";
import { placeShirtButton } from "./shirt-button.ts";
import { placeSpreadBulk } from "./spread-bulk.ts";
import { placeStrungOut } from "./strung-out.ts";
import { placeTaperedShirtButton } from "./tapered-shirt-button.ts";

/** The spec in which a kind of pattern is written. */
type SpecOf<K extends PatternKind, S = PatternSpec> = S extends { readonly kind: infer SK }
  ? K extends SK
    ? S
    : never
  : never;

/** Every pattern; one without its line here does not compile. */
const patterns: { readonly [K in PatternKind]: PlacePattern<SpecOf<K>> } = {
  "strung out": placeStrungOut,
  bulk: placeBulk,
  "spread bulk": placeSpreadBulk,
  "shirt button": placeShirtButton,
  "tapered shirt button": placeTaperedShirtButton,
  lift: placeLift,
  "all at the float": placeAllAtFloat,
};

/**
 * The shot on the line for a pattern and the room it has.
 *
 * @returns the shot from the hook up, each with its distance from the hook along the line; no answer where the
 * depth is too shallow for the pattern (`pattern.too-shallow`, with the depth that would do), where the tub lacks a
 * shot it names or where its load is too heavy.
 */
export function placePattern(spec: PatternSpec, room: PatternRoom): Answer<readonly PlacedShot[]> {
  const { depthMm, floatToHookMm, hookLengthMm, pullG, linePullMaxG } = room;
  for (const [what, lengthMm] of Object.entries({ depthMm, floatToHookMm, hookLengthMm })) {
    if (!(lengthMm > 0 && lengthMm < Number.POSITIVE_INFINITY)) {
      return noAnswer("pattern.bad-length", { what: what.slice(0, -2), lengthMm });
    }
  }
  if (!(pullG > 0)) return noAnswer("pattern.no-pull-left", { pullG });
  if (room.locked && !(linePullMaxG >= 0)) {
    return noAnswer("pattern.bad-line-pull", { linePullG: linePullMaxG });
  }
  const place = patterns[spec.kind] as PlacePattern<PatternSpec>;
  return place(spec, room);
}
