import type { Answer } from "../finding.ts";
import type { Metal, Shot, ShotScale, Tub } from "../tackle/shot.ts";
import type { Water } from "../water/water.ts";
import { bankToleranceG, chooseShot, type Mix, type Split, totalPullG } from "./loading.ts";

/** A shop that never runs out: every size of a scale in one metal. */
export function fullTub(scale: ShotScale, metal: Metal): Tub {
  return scale.sizes.map(({ name, massG }) => ({
    size: name,
    massG,
    metal,
    count: Number.POSITIVE_INFINITY,
  }));
}

/**
 * The same load from other tubs, such as another metal or another scale: for each the best mix that pulls no more.
 *
 * @param load the shot to be replaced
 */
export function sameLoadFrom<Name extends string>(
  load: readonly Shot[],
  tubs: Readonly<Record<Name, Tub>>,
  water: Water,
  split: Split,
): Record<Name, Answer<Mix>> {
  const targetPullG = totalPullG(load, water);
  const names = Object.keys(tubs) as Name[];
  return Object.fromEntries(
    names.map((name) => [
      name,
      chooseShot({ tub: tubs[name], targetPullG, water, split, withinG: bankToleranceG }),
    ]),
  ) as Record<Name, Answer<Mix>>;
}
