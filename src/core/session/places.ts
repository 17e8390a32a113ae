import type { Min } from "../units.ts";

/** How many of a group stand at each of so many places: as equal as may be, the first places first. */
export function spreadOver(people: number, places: number): readonly number[] {
  return Array.from(
    { length: places },
    (_, at) => Math.floor(people / places) + (at < people % places ? 1 : 0),
  );
}

/** A stretch of a session in which rigs are fished, in minutes after midnight. */
export interface FishedSpan {
  readonly fromMin: Min;
  readonly toMin: Min;
}

/** A span in equal parts of whole minutes, one after the other; parts without a minute are left out. */
export function spanInParts({ fromMin, toMin }: FishedSpan, parts: number): readonly FishedSpan[] {
  let atMin = fromMin;
  return spreadOver(toMin - fromMin, parts).flatMap((minutes) => {
    const span = { fromMin: atMin, toMin: atMin + minutes };
    atMin = span.toMin;
    return minutes > 0 ? [span] : [];
  });
}
