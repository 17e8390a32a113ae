import { bedDepth, bedOf } from "../../core/swim/bed.ts";
import type { ChosenSpot, Conditions, RigShelf } from "../../model/choosing.ts";
import { type ChoosingRules, windStrengths } from "../../model/choosing-rules.ts";
import { type Library, levels } from "../../model/library.ts";
import type { Spot, SwimEntry } from "../../model/swim.ts";
import { chooseRigs, type Try } from "./choose.ts";
import { conditionsAt } from "./conditions-at.ts";

/** Whom a swim's page is for first: who can take any rig, in a calm. */
const usualAsked = { learner: "next", wind: "calm" } as const satisfies Partial<Conditions>;

/** Rigs for every spot of every swim; none in a guide without rules for choosing, nor where there is no water. */
export function chosenSpots(
  library: RigShelf & Pick<Library, "choosing" | "swims">,
  tryOut?: Try,
): readonly ChosenSpot[] {
  const { choosing, swims } = library;
  if (!choosing) return [];
  return swims.flatMap((swim) =>
    swim.spots.flatMap((spot) => chosenSpot(swim, spot, choosing, library, tryOut) ?? []),
  );
}

function chosenSpot(
  swim: SwimEntry,
  spot: Spot,
  rules: ChoosingRules,
  shelf: RigShelf,
  tryOut: Try | undefined,
): ChosenSpot | undefined {
  const depth = bedDepth(bedOf(spot.line.soundings), spot.fromBankMm);
  const conditions = conditionsAt(swim, spot, usualAsked);
  if (!depth || !conditions) return undefined;
  const choice = chooseRigs(rules, conditions, shelf, tryOut);
  // Whoever can take less, in whatever wind, is offered none that this one is not.
  const offered = { ...shelf, rigs: choice.offered.map(({ entry }) => entry) };
  const bestFor = (asked: Pick<Conditions, "learner" | "wind">) =>
    chooseRigs(rules, { ...conditions, ...asked }, offered, tryOut).offered[0]?.entry;
  return {
    swim,
    spot,
    depth,
    conditions,
    choice,
    best: levels.map((learner) => ({
      learner,
      byWind: windStrengths.map((wind) => bestFor({ learner, wind })),
    })),
  };
}
