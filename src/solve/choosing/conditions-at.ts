import { bedOf, depthToFishMm } from "../../core/swim/bed.ts";
import type { Mm } from "../../core/units.ts";
import type { ChoosableSpot, ChoosableSwim, Conditions } from "../../model/choosing.ts";

/** What nobody has to know of a spot to ask for a rig: what is not said is as the swim has it. */
type Asked = Pick<Conditions, "wind" | "learner"> &
  Partial<Pick<Conditions, "rodLengthMm" | "box" | "paceMs" | "depthMm" | "fish">> & {
    /** How much higher the water stands than when it was sounded; below 0 where it is lower. */
    readonly levelMm?: Mm;
  };

/** Conditions at a spot of a swim; nothing where the water that is left is none to fish in. */
export function conditionsAt(
  swim: ChoosableSwim,
  { line, fromBankMm }: ChoosableSpot,
  asked: Asked,
): Conditions | undefined {
  const { levelMm = 0, fish, ...others } = asked;
  const plumbed = depthToFishMm(bedOf(line.soundings), fromBankMm) ?? 0;
  const snags = line.features.filter(({ what }) => what === "snag");
  const depthMm = asked.depthMm ?? plumbed + levelMm;
  if (depthMm <= 0) return undefined;
  return {
    water: swim.water,
    ...(swim.paceMs !== undefined && { paceMs: swim.paceMs }),
    fish: fish ?? swim.fish,
    fishWanted: fish ? "every" : "any",
    ...(snags.length > 0 && {
      snagMm: Math.min(...snags.map((snag) => Math.abs(snag.fromBankMm - fromBankMm))),
    }),
    ...others,
    depthMm,
    fromBankMm,
  };
}
