import type { SolvedShot } from "../../src/solve/solved.ts";

/** Shot that sit together on the line and are put on together. */
export interface ShotGroup {
  readonly role: SolvedShot["role"];
  /** Sizes with how many of each, in the order met going up the line. */
  readonly sizes: readonly { readonly size: string; readonly count: number }[];
  readonly count: number;
  /** The lowest of them, from the hook. */
  readonly fromHookMm: number;
  readonly toHookMm: number;
}

/** Shot closer to the next than this count as one group: they are pushed up against each other. */
const touchingMm = 15;

/** The shot of a rig from the hook up, those of a lock or a bulk taken together. */
export function groupShot(shot: readonly SolvedShot[]): ShotGroup[] {
  const groups: SolvedShot[][] = [];
  for (const one of shot) {
    const last = groups.at(-1);
    const neighbour = last?.at(-1);
    const together =
      neighbour !== undefined &&
      neighbour.role === one.role &&
      Math.abs(one.fromHookMm - neighbour.fromHookMm) < touchingMm;
    if (last && together) last.push(one);
    else groups.push([one]);
  }
  return groups.map((group) => ({
    role: group[0]!.role,
    sizes: countSizes(group),
    count: group.length,
    fromHookMm: group[0]!.fromHookMm,
    toHookMm: group.at(-1)!.fromHookMm,
  }));
}

/** How many of each size, in the order first met. */
export function countSizes(shot: readonly { size: string }[]): { size: string; count: number }[] {
  const counts = new Map<string, number>();
  for (const { size } of shot) counts.set(size, (counts.get(size) ?? 0) + 1);
  return [...counts].map(([size, count]) => ({ size, count }));
}

/** `2 AAA + 3 No 8`: the notation of the trade. */
export function loadText(sizes: readonly { size: string; count: number }[]): string {
  return sizes.map(({ size, count }) => `${count} ${size}`).join(" + ");
}
