import type { Metal, Shot, ShotScale, Tub } from "../tackle/shot.ts";
import type { Water } from "../water/water.ts";
import { bankToleranceG, chooseShot, heaviestFirst, type Mix, type Split, totalPullG } from "./loading.ts";

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
 * The most shot that a person pinches on at one place for a load that fewer could make: more are a stiff string of
 * beads, and each pinch bruises the line. Common practice, no source.
 */
const mostAtOnePlace = 3;

/** Where shot come from. */
interface Shop {
  readonly tub: Tub;
}

/**
 * The same load from other shops, such as another metal or another scale: for each the best mix that pulls no more,
 * fewest shot first, then the closest. Left out are mixes of more shot than a person pinches on (three at one place, or
 * as many as the load itself has) and the load itself.
 *
 * @param load the shot to be replaced, which are pinched on together
 * @param split "halves" where they are pinched on either side of the float's eye
 */
export function sameLoadFrom<S extends Shop>(
  load: readonly Shot[],
  shops: readonly S[],
  water: Water,
  split: Split,
): (S & { readonly mix: Mix })[] {
  const targetPullG = totalPullG(load, water);
  const mostShot = Math.max(load.length, mostAtOnePlace * (split === "halves" ? 2 : 1));
  return shops
    .flatMap((shop) => {
      const mix = chooseShot({ tub: shop.tub, targetPullG, water, split, withinG: bankToleranceG });
      return mix.ok ? [{ ...shop, mix: mix.value }] : [];
    })
    .filter(({ mix: { shot } }) => shot.length <= mostShot && named(shot) !== named(load))
    .sort((a, b) => a.mix.shot.length - b.mix.shot.length || a.mix.sparePullG - b.mix.sparePullG);
}

/** Shot by size, mass and metal, in whichever order they are given. */
function named(shot: readonly Shot[]): string {
  return heaviestFirst(shot)
    .map(({ size, massG, metal }) => `${size} ${massG} ${metal}`)
    .join();
}
