import { type Answer, answer, type Finding, noAnswer, warning } from "../finding.ts";
import { first } from "../lists.ts";
import { metalDensityKgM3, metals, pullG, pullShare, type Shot, type Tub } from "../tackle/shot.ts";
import type { G } from "../units.ts";
import { type Water, waterDensityKgM3 } from "../water/water.ts";
import { type DividedMix, nearEqualDifferenceG } from "./best-division.ts";
import { bestMix } from "./best-mix.ts";
import { heaviestPullG, type MetalSums, metalSums } from "./sums.ts";

/** What rounding may add to a pull [g]. */
const pullToleranceG = 1e-9;

/**
 * On the bank, pulls that differ by less than the smallest shot that is made (No 13: 0.01 g of lead, a pull of 0.009 g)
 * are equal: without this a mix of fifteen shot would win over three by a tenth of a milligram [g].
 */
export const bankToleranceG = 0.008;

/** Largest pull that a mix is chosen for [g]; no float of this kind of fishing carries as much. */
const targetPullMaxG = 50;

/** How the shot are grouped: pinched on either side of the float's eye, or together. */
export type Split = "halves" | "one group";

/** What a mix is chosen for. */
interface Choice {
  readonly tub: Tub;
  /** Pull that the shot should come to, and must not exceed [g]. */
  readonly targetPullG: G;
  readonly water: Water;
  /** Sizes that may be used; all in the tub where not given. */
  readonly sizes?: readonly string[];
  readonly split: Split;
  /** Pulls this close count as equal [g]: 1e-9 where not given. */
  readonly withinG?: G;
}

/** The shot that lock a float: pinched below its eye, towards the hook, and above it. */
export interface LockGroups<S extends Shot = Shot> {
  /** The group that pulls harder. */
  readonly below: readonly S[];
  readonly above: readonly S[];
}

/** Every shot of a lock, heaviest first. */
export function lockShotOf<S extends Shot>({ below, above }: LockGroups<S>): readonly S[] {
  return heaviestFirst([...below, ...above]);
}

/** A mix of shot from a tub. */
export interface Mix {
  /** Heaviest first. */
  readonly shot: readonly Shot[];
  readonly pullG: G;
  readonly massG: G;
  /** Target less pull: never below 0 by more than the tolerance. */
  readonly sparePullG: G;
  /** The halves either side of the float's eye, the one that pulls harder first. */
  readonly halves?: readonly [readonly Shot[], readonly Shot[]];
}

/** A mass to the milligram, as every sum takes it [g]. */
export function toMilligram(massG: G): number {
  return Math.round(massG * 1000) / 1000;
}

/** Pull of some shot together [g], masses to the milligram. */
export function totalPullG(shot: readonly Shot[], water: Water): number {
  return shot.reduce((sum, { massG, metal }) => sum + pullG(toMilligram(massG), metal, water), 0);
}

/**
 * The best mix of shot for a pull. In this order: the total pull closest to the target without exceeding it; with
 * halves, near-equal ones, none pulling more than 60 % of the whole; where no mix has such, a shot on each side of the
 * eye; fewest shot; halves as nearly equal in pull as can be; fewest sizes (a size in another metal is another one); of pulls that count as equal the closest; then more of the
 * heavier shot, the metal with the heaviest shot first. Masses are taken to the milligram and pulls within
 * `withinG` count as equal; within that the answer is exact.
 *
 * @returns the mix, with a warning where the tub runs out before the target (`loading.tub-runs-out`) and where a
 * single shot (`loading.one-sided-lock`) or unequal groups (`loading.uneven-lock`) have to lock the float; no answer where the tub has no shot to choose from
 * (`loading.no-shot`), where the smallest is too heavy (`loading.nothing-fits`) or where a figure makes no sense
 * (`loading.bad-target`, `loading.bad-shot`, `loading.bad-water`).
 */
export function chooseShot(choice: Choice): Answer<Mix> {
  const { tub, targetPullG, water, sizes, split, withinG = pullToleranceG } = choice;
  if (!(targetPullG >= 0 && targetPullG <= targetPullMaxG)) {
    return noAnswer("loading.bad-target", { targetPullG, mostPullG: targetPullMaxG });
  }
  if (!Number.isFinite(waterDensityKgM3(water))) {
    return noAnswer("loading.bad-water", { tempC: water.tempC, salinity: water.salinity });
  }
  const bad = tub.find(({ massG, count }) => !(toMilligram(massG) > 0 && massG < 1000) || !(count >= 0));
  if (bad) return noAnswer("loading.bad-shot", { size: bad.size, massG: bad.massG, count: bad.count });

  const usable = tub.filter(({ size, count }) => count >= 1 && (sizes === undefined || sizes.includes(size)));
  const smallest = lightestPull(usable, water);
  if (smallest === undefined) return noAnswer("loading.no-shot", { sizes: (sizes ?? []).join(", ") });
  if (smallest.pullG > targetPullG + pullToleranceG) {
    return noAnswer("loading.nothing-fits", {
      targetPullG,
      smallestSize: smallest.shot.size,
      smallestPullG: smallest.pullG,
    });
  }

  const mostPullG = targetPullG + pullToleranceG;
  const best = bestMix(sumsByMetal(usable, water, mostPullG), mostPullG, withinG, split === "halves");
  return described(best, choice, usable);
}

function sumsByMetal(usable: Tub, water: Water, mostPullG: G): MetalSums[] {
  return metals
    .map((metal) => ({ metal, stock: usable.filter((one) => one.metal === metal) }))
    .map(({ metal, stock }) =>
      metalSums(
        stock
          .map(({ size, massG, count }) => ({
            shot: { size, massG: toMilligram(massG), metal },
            massMg: Math.round(massG * 1000),
            count: Math.floor(count),
          }))
          .sort((a, b) => b.massMg - a.massMg || compareText(a.shot.size, b.shot.size)),
        pullShare(metalDensityKgM3[metal], water),
        mostPullG,
      ),
    )
    .filter(({ kinds }) => kinds.length > 0)
    .sort((a, b) => heaviestPullG(b) - heaviestPullG(a));
}

function described(best: DividedMix, choice: Choice, usable: Tub): Answer<Mix> {
  const { targetPullG, water, split } = choice;
  const halves = [heaviestFirst(best.heavier), heaviestFirst(best.lighter)] as const;
  const shot = heaviestFirst([...best.heavier, ...best.lighter]);
  const mixPullG = totalPullG(shot, water);
  const sparePullG = targetPullG - mixPullG;
  const findings: Finding[] = [];
  const unused = lightestPull(tubWithout(usable, shot), water);
  if (unused === undefined && sparePullG > pullToleranceG) {
    findings.push(warning("loading.tub-runs-out", { targetPullG, pullG: mixPullG, sparePullG }));
  }
  if (split === "halves" && shot.length === 1) {
    findings.push(warning("loading.one-sided-lock", { size: first(shot).size, pullG: mixPullG }));
  } else if (split === "halves" && best.differenceG > nearEqualDifferenceG(mixPullG) + pullToleranceG) {
    const [heavier, lighter] = halves;
    findings.push(
      warning("loading.uneven-lock", {
        heavierPullG: totalPullG(heavier, water),
        lighterPullG: totalPullG(lighter, water),
      }),
    );
  }
  return answer(
    {
      shot,
      pullG: mixPullG,
      massG: shot.reduce((sum, one) => sum + one.massG, 0),
      sparePullG,
      ...(split === "halves" ? { halves } : {}),
    },
    findings,
  );
}

/** The shot that pulls least, or undefined where there are none. */
function lightestPull(tub: Tub, water: Water): { shot: Shot; pullG: number } | undefined {
  let least: { shot: Shot; pullG: number } | undefined;
  for (const shot of tub) {
    const onePullG = pullG(toMilligram(shot.massG), shot.metal, water);
    if (least === undefined || onePullG < least.pullG) least = { shot, pullG: onePullG };
  }
  return least;
}

/** Shot in the order they are told: heaviest first, metals in the order of `metals`. */
export function heaviestFirst<S extends Shot>(shot: readonly S[]): S[] {
  return [...shot].sort(
    (a, b) =>
      b.massG - a.massG || metals.indexOf(a.metal) - metals.indexOf(b.metal) || compareText(a.size, b.size),
  );
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** What is left in the tub when these shot have been taken out; used-up compartments are left out. */
export function tubWithout(tub: Tub, taken: readonly Shot[]): Tub {
  const left = tub.map((one) => ({ ...one }));
  for (const shot of taken) {
    const own = left.find((one) => one.count >= 1 && sameShot(one, shot));
    if (own !== undefined) own.count -= 1;
  }
  return left.filter((one) => one.count >= 1);
}

function sameShot(a: Shot, b: Shot): boolean {
  return a.size === b.size && a.metal === b.metal && toMilligram(a.massG) === toMilligram(b.massG);
}

/**
 * The lock for a float once the line's shot are in place: what is left of the pull, from what is left in the tub.
 *
 * @param floatPullG pull of all shot together [g]
 * @returns the mix as `chooseShot` gives it, pulls on the bank counting as equal; no answer where the line has taken
 * the whole pull (`loading.nothing-left-for-lock`)
 */
export function lockFor(
  tub: Tub,
  onLine: readonly Shot[],
  floatPullG: G,
  water: Water,
  sizes?: readonly string[],
): Answer<Mix> {
  const linePullG = totalPullG(onLine, water);
  if (floatPullG - linePullG <= pullToleranceG) {
    return noAnswer("loading.nothing-left-for-lock", { linePullG, floatPullG });
  }
  return chooseShot({
    tub: tubWithout(tub, onLine),
    targetPullG: floatPullG - linePullG,
    water,
    split: "halves",
    withinG: bankToleranceG,
    ...(sizes ? { sizes } : {}),
  });
}
