import type { SolvedDepth, SolvedRig } from "./solved.ts";

/** Happenings that a page can show moving. */
const filmNames = ["sinking", "settling", "depth", "plumbing", "current", "bites", "cast", "pinch"] as const;
/** The film that has a knot and no rig. */
export const knotFilmName = "knot";
export type FilmName = (typeof filmNames)[number];

/** Whether there is something to be seen of a rig at one depth. */
const isThere: Readonly<Record<FilmName, (solved: SolvedRig, depth: SolvedDepth) => boolean>> = {
  // Two ways to sink are held against each other.
  sinking: (_, { inWater }) =>
    inWater !== undefined && (inWater.sister !== undefined || inWater.sink.length > 1),
  // Where the depth sets the tip, shot hung clear take the float under.
  settling: (_, { tipSetBy, lineShot, lockShot }) =>
    tipSetBy === "shot" && lineShot.length + lockShot.length > 0,
  // In running water the line hangs in a curve, of which the guide tells the hook alone.
  depth: ({ rig }, { lineShot }) => rig.water === "still" && lineShot.length > 0,
  plumbing: (_, { plumbing }) => plumbing.steps.length > 1,
  // In running water bed and fish say the same.
  bites: ({ rig }, { lineShot, tipAsSetMm }) =>
    rig.water === "still" && lineShot.length > 0 && tipAsSetMm > 0,
  cast: ({ rig }) => rig.outfit !== "whip",
  pinch: (_, { lineShot, lockShot }) => lineShot.length + lockShot.length > 0,
  current: (_, { inWater }) => inWater !== undefined && inWater.flow.length > 1,
};

/** Whether there is a film of that name of a rig at one depth. */
export const isFilmOf = (name: string, solved: SolvedRig, depth: SolvedDepth): name is FilmName =>
  filmNames.some((film) => film === name && isThere[film](solved, depth));

/** The films that there are of a rig at one depth. */
export function filmsOf(solved: SolvedRig, depth: SolvedDepth): readonly FilmName[] {
  return filmNames.filter((name) => isThere[name](solved, depth));
}
