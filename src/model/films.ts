import type { SolvedDepth, SolvedRig } from "./solved.ts";

/** Happenings that a page can show moving. */
const filmNames = ["sinking"] as const;
export type FilmName = (typeof filmNames)[number];

/** Whether there is something to be seen of a rig at one depth. */
const isThere: Readonly<Record<FilmName, (solved: SolvedRig, depth: SolvedDepth) => boolean>> = {
  // Two ways to sink are held against each other.
  sinking: (_, { inWater }) =>
    inWater !== undefined && (inWater.sister !== undefined || inWater.sink.length > 1),
};

/** The films that there are of a rig at one depth. */
export function filmsOf(solved: SolvedRig, depth: SolvedDepth): readonly FilmName[] {
  return filmNames.filter((name) => isThere[name](solved, depth));
}
