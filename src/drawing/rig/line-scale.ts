/** A stretch of line between two things on it. */
export interface Stretch {
  /** True length [mm]. */
  readonly lengthMm: number;
  /** The least it may measure on the drawing [mm]. */
  readonly leastMm: number;
  /** The least once it is shortened and marked as such [mm]; none where it may not be. */
  readonly leastBrokenMm?: number;
}

export interface DrawnStretch {
  readonly drawnMm: number;
  /** Shortened: not to the scale of the others, to be marked as such. */
  readonly broken: boolean;
}

/** A stretch this much longer than the next longest tells nothing by its length and is shortened. */
const breakRatio = 2.2;
/** How long a shortened stretch is drawn, against the longest that is to scale. */
const brokenRatio = 1.25;
/** A stretch this short next to the longest is never what the longest is measured against. */
const negligibleShare = 0.02;
/** Shorten more and the picture is no longer of this rig. */
const mostBroken = 2;

/**
 * Draws stretches of line to one scale in the room there is, so that together they fill it. A stretch far longer than
 * every other is shortened, which leaves more room for the lower rig; short ones are held at their least.
 *
 * @returns undefined where even the least lengths do not fit
 */
export function scaleStretches(
  stretches: readonly Stretch[],
  roomMm: number,
): { drawn: DrawnStretch[]; scale: number } | undefined {
  const sorted = [...stretches].sort((a, b) => b.lengthMm - a.lengthMm);
  const longestMm = sorted[0]?.lengthMm ?? 0;
  const lastShortened = sorted.findIndex(({ lengthMm }, i) => {
    const nextMm = sorted[i + 1]?.lengthMm ?? 0;
    return i < mostBroken && nextMm > longestMm * negligibleShare && lengthMm > breakRatio * nextMm;
  });
  const shorten =
    lastShortened >= 0 &&
    sorted.slice(0, lastShortened + 1).every(({ leastBrokenMm }) => leastBrokenMm !== undefined);
  const nextMm = shorten ? sorted[lastShortened + 1]!.lengthMm : longestMm;
  const wanted = stretches.map(({ lengthMm, leastMm, leastBrokenMm }) =>
    lengthMm > nextMm
      ? { lengthMm: nextMm * brokenRatio, leastMm: leastBrokenMm!, broken: true }
      : { lengthMm, leastMm, broken: false },
  );
  if (wanted.reduce((sum, { leastMm }) => sum + leastMm, 0) > roomMm + 1e-9) return undefined;
  const scale = fillingScale(wanted, roomMm);
  const drawn = wanted.map(({ lengthMm, leastMm, broken }) => ({
    drawnMm: Math.max(leastMm, scale * lengthMm),
    broken,
  }));
  return { drawn, scale };
}

/** The scale at which `Σ max(least, scale · length)` is the room: held ones are taken out until none is left to hold. */
function fillingScale(stretches: readonly Stretch[], roomMm: number): number {
  const held = new Set<Stretch>();
  for (;;) {
    let room = roomMm;
    let length = 0;
    for (const one of stretches) {
      if (held.has(one)) room -= one.leastMm;
      else length += one.lengthMm;
    }
    const scale = length > 0 ? Math.max(0, room / length) : 0;
    const more = stretches.find((one) => !held.has(one) && scale * one.lengthMm < one.leastMm - 1e-12);
    if (!more) return scale;
    held.add(more);
  }
}
