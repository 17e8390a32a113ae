/** What a rig in the list says of itself: see `RigSummary`. */
export type RigMarks = Readonly<Record<string, string | undefined>>;

/** The answers; an empty one asks nothing. */
export type RigWishes = Readonly<Record<string, string>>;

/** A rig set for one depth does for water this much shallower or deeper. */
const depthSlackMm = 300;

/** Whether a rig fits every answer given. */
export function fits(marks: RigMarks, wishes: RigWishes): boolean {
  const { water, method, level, depth, catch: fish } = wishes;
  if (water && marks.water !== water) return false;
  if (method && marks.method !== method) return false;
  if (level && marks.level !== level) return false;
  if (fish && !(marks.catch ?? "").split("|").includes(fish)) return false;
  if (depth) {
    const depths = (marks.depths ?? "").split(" ").map(Number);
    const wanted = Number(depth);
    return wanted >= Math.min(...depths) - depthSlackMm && wanted <= Math.max(...depths) + depthSlackMm;
  }
  return true;
}
