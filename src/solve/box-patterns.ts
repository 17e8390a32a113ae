import type { PatternSpec } from "../core/patterns/pattern.ts";
import { sizesOf, withSizes } from "../core/patterns/sizes.ts";
import type { ShotSize, StockedShot, Tub } from "../core/tackle/shot.ts";

/**
 * A pattern as a box can make it: as it is where the box has its sizes in plenty, and else with the nearest lighter and
 * the nearest heavier size in the place of one that is missing or may run out.
 *
 * @param scale all sizes that the pattern may name, heaviest first
 * @param box heaviest first, of that scale
 */
export function boxPatterns(spec: PatternSpec, scale: readonly ShotSize[], box: Tub): readonly PatternSpec[] {
  const asked = sizesOf(spec);
  const named = [...new Set(asked.named)];
  let chosen: ReadonlyMap<string, string>[] = [new Map()];
  for (const size of named) {
    const options = standIns(size, scale, box);
    chosen = chosen.flatMap((sizes) => options.map((option) => new Map([...sizes, [size, option]])));
  }
  const groups = groupsFor(asked.group, scale, box);
  return chosen.flatMap((sizes) =>
    groups.map((group) => withSizes(spec, (size) => sizes.get(size) ?? size, group)),
  );
}

function standIns(size: string, scale: readonly ShotSize[], box: Tub): readonly string[] {
  const own = box.find((shot) => shot.size === size);
  if (own?.count === Number.POSITIVE_INFINITY) return [size];
  return [...(own ? [size] : []), ...besides(size, scale, box)];
}

/** The nearest size of the box on either side of one. */
function besides(size: string, scale: readonly ShotSize[], box: Tub): readonly string[] {
  const massG = scale.find(({ name }) => name === size)?.massG;
  if (massG === undefined) return [];
  const heavier = box.filter((shot) => shot.massG > massG).at(-1);
  const lighter = box.find((shot) => shot.massG < massG);
  return [heavier, lighter]
    .filter((shot): shot is StockedShot => shot !== undefined)
    .map((shot) => shot.size);
}

/** Sizes that a group may be made of: its own, and with those that stand in where one is missing or may run out. */
function groupsFor(
  group: readonly string[],
  scale: readonly ShotSize[],
  box: Tub,
): readonly (readonly string[])[] {
  const own = group.filter((size) => box.some((shot) => shot.size === size));
  const wider = [...new Set(group.flatMap((size) => standIns(size, scale, box)))];
  const isOwn = own.length === wider.length && own.every((size) => wider.includes(size));
  return isOwn ? [own] : own.length === 0 ? [wider] : [own, wider];
}
