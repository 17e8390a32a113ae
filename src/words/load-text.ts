import { allShot, type SolvedDepth, type SolvedShot } from "../model/solved.ts";
import type { Words } from "./words.ts";

/** Words that stay on one line together. */
export function unbroken(text: string): string {
  return text.replace(/ /g, "\u00A0");
}

/** A load as it is written on floats and tubs, heaviest size first: `2 AAA + 3 No 8`. Breaks only after a plus. */
export function loadText(shot: readonly SolvedShot[], words: Words): string {
  const bySize = new Map<string, { count: number; massG: number }>();
  for (const { size, massG } of shot) {
    bySize.set(size, { count: (bySize.get(size)?.count ?? 0) + 1, massG });
  }
  if (bySize.size === 0) return words("card.no-shot");
  return [...bySize]
    .sort(([, a], [, b]) => b.massG - a.massG)
    .map(([size, { count }]) => unbroken(`${count} ${size}`))
    .join("\u00A0+ ");
}

/**
 * The metal of every size that a rig uses, heaviest size first, the metal of the most sizes last and without naming
 * them: `AAA: tin; rest lead`.
 */
export function metalText(depths: readonly SolvedDepth[], words: Words): string {
  const all = depths.flatMap(allShot).sort((a, b) => b.massG - a.massG);
  const sizesByMetal = new Map<string, Set<string>>();
  for (const { metal, size } of all) {
    sizesByMetal.set(metal, (sizesByMetal.get(metal) ?? new Set()).add(size));
  }
  const metals = [...sizesByMetal].map(([metal, sizes]) => ({
    metal: words(`card.metal.${metal}`),
    sizes: [...sizes].map(unbroken),
  }));
  if (metals.length === 1) return words("card.all-one-metal", { metal: metals[0]!.metal });
  const rest = metals.reduce((most, one) => (one.sizes.length > most.sizes.length ? one : most));
  return [
    ...metals
      .filter((one) => one !== rest)
      .map(({ metal, sizes }) => words("card.sizes-of-metal", { sizes: sizes.join(", "), metal })),
    words("card.rest-of-metal", { metal: rest.metal }),
  ].join("; ");
}
