import { first } from "../core/lists.ts";
import type { LockGroups } from "../core/loading/loading.ts";
import type { Metal } from "../core/tackle/shot.ts";
import {
  type CountedShot,
  countSizes,
  type GroupedShot,
  groupShot,
  type ShotGroup,
} from "../core/tackle/shot-groups.ts";
import type { Mm } from "../core/units.ts";
import { allShot, type SolvedDepth } from "../model/solved.ts";
import type { Words } from "./words.ts";

/** Words that stay on one line together. */
export function unbroken(text: string): string {
  return text.replace(/ /g, "\u00A0");
}

/** Numbers that stay on one line with their unit: `6 ft 11 in` may break after its feet. */
export function withUnit(text: string): string {
  return text.replace(/([\d¼½¾]) (?=\D)/g, "$1\u00A0");
}

/** A load, heaviest size first: `AAA + 2 × No 1 + No 8`. Breaks only after a plus. */
export function shotText(shots: readonly CountedShot[], words: Words): string {
  if (shots.length === 0) return words("figures.no-shot");
  return countSizes(shots)
    .map(({ count, size }) => unbroken(count === 1 ? size : words("figures.several-shot", { count, size })))
    .join("\u00A0+ ");
}

/** A lock in its two groups: `2 × BB above, AAA below`. */
export function lockText({ below, above }: LockGroups, words: Words): string {
  if (below.length === 0) return words("figures.no-shot");
  const told = { above: shotText(above, words), below: shotText(below, words) };
  return words(above.length > 0 ? "figures.lock-groups" : "figures.lock-one-sided", told);
}

/** How distances from the hook are written: a run from one to another, and several one by one. */
interface DistancesText {
  readonly range: (fromMm: Mm, toMm: Mm) => string;
  readonly list: (distancesMm: readonly Mm[]) => string;
}

/**
 * Shot on the line with their places, from the hook up: `No 10 at 32 cm; 4 × No 8 at 52 to 112 cm`. A run says from where
 * to where it stands at equal gaps; shot pinched on together have the place of the lowest.
 */
export function placesText(line: readonly GroupedShot[], told: DistancesText, words: Words): string {
  const parts = joinSingles(groupShot(line)).map(({ kind, shots }) => {
    const [lowest, highest] = [first(shots).fromHookMm, shots.at(-1)!.fromHookMm];
    const places =
      kind === "run"
        ? told.range(lowest, highest)
        : told.list(kind === "together" ? [lowest] : shots.map(({ fromHookMm }) => fromHookMm));
    return words("figures.shot-at", { shot: shotText(shots, words), place: places });
  });
  return parts.length === 0 ? words("figures.no-shot") : parts.join("; ");
}

/** Neighbours of one size, each in its own place, as one group. */
function joinSingles(groups: readonly ShotGroup[]): readonly ShotGroup[] {
  const joined: ShotGroup[] = [];
  for (const group of groups) {
    const last = joined.at(-1);
    const [below, above] = [last?.shots[0], first(group.shots)];
    if (last?.kind === "single" && group.kind === "single" && below?.size === above.size)
      joined[joined.length - 1] = { ...last, shots: [...last.shots, ...group.shots] };
    else joined.push(group);
  }
  return joined;
}

/**
 * The metal of every size that a rig uses, heaviest size first, the metal of the most sizes last and without naming
 * them: `AAA: tin; rest lead`.
 */
export function metalText(depths: readonly SolvedDepth[], words: Words): string {
  const all = depths.flatMap(allShot).sort((a, b) => b.massG - a.massG);
  const sizesByMetal = new Map<Metal, Set<string>>();
  for (const { metal, size } of all) {
    sizesByMetal.set(metal, (sizesByMetal.get(metal) ?? new Set()).add(size));
  }
  const metals = [...sizesByMetal].map(([metal, sizes]) => ({
    metal: words(`metal.${metal}`),
    sizes: [...sizes].map(unbroken),
  }));
  if (metals.length === 1) return unbroken(words("card.all-one-metal", { metal: first(metals).metal }));
  const rest = metals.reduce((most, one) => (one.sizes.length > most.sizes.length ? one : most));
  return [
    ...metals
      .filter((one) => one !== rest)
      .map(({ metal, sizes }) => words("card.sizes-of-metal", { sizes: sizes.join(", "), metal })),
    words("card.rest-of-metal", { metal: rest.metal }),
  ].join("; ");
}
