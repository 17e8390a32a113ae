import { isToldAlike } from "../float/tip.ts";
import { neighbours } from "../lists.ts";
import type { GuideReading } from "./guide-step.ts";

/** Two states of a rig in still water, by what of it lies on the bed, for both of which its tip is told alike: it cannot tell them apart. */
interface Untold<T extends GuideReading = GuideReading> {
  /** With less on the bed, and with the next that comes to lie there as well; of each the line that shows the most tip. */
  readonly less: T;
  readonly more: T;
}

/** What lies on the bed: nothing, the bait alone, or so many shot as well. */
const lying = ({ state, shotOnBed }: GuideReading) => (state === "hangs" ? -1 : shotOnBed.length);

/** Whether two lines of a guide have something else on the bed, and the tip is told alike all the same. */
export function isToldAsBefore(one: GuideReading, before: GuideReading): boolean {
  const tips = [one.tipShowingMm, before.tipShowingMm] as const;
  return (
    lying(one) !== lying(before) && tips[0] !== null && tips[1] !== null && isToldAlike(tips[0], tips[1])
  );
}

/** All states that a guide in still water has in which the tip cannot be told from the one with less on the bed. */
export function untoldStates<T extends GuideReading>(guide: readonly T[]): readonly Untold<T>[] {
  const most = new Map<number, T>();
  for (const step of guide) {
    const before = most.get(lying(step));
    if (step.tipShowingMm !== null && step.tipShowingMm > (before?.tipShowingMm ?? -1))
      most.set(lying(step), step);
  }
  const states = [...most].sort(([a], [b]) => a - b).map(([, step]) => step);
  return neighbours(states).flatMap(([less, more]) => (isToldAsBefore(more, less) ? [{ less, more }] : []));
}

/** The state with less on the bed that the one of this line cannot be told from. */
export function untoldLess<T extends GuideReading>(one: GuideReading, guide: readonly T[]): T | undefined {
  return untoldStates(guide).find(({ more, less }) => isAlike(more, one) && isToldAsBefore(one, less))?.less;
}

/** The same, or where there is none the state with more. */
export function untoldFrom<T extends GuideReading>(one: GuideReading, guide: readonly T[]): T | undefined {
  const isBelow = ({ less, more }: Untold<T>) => isAlike(less, one) && isToldAsBefore(one, more);
  return untoldLess(one, guide) ?? untoldStates(guide).find(isBelow)?.more;
}

const isAlike = (one: GuideReading, other: GuideReading) => lying(one) === lying(other);
