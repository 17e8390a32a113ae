import type { Min } from "../../core/units.ts";
import type { Guide } from "../../model/library.ts";
import type { SolvedSession } from "../../model/solved-session.ts";
import type { SwimEntry } from "../../model/swim.ts";
import type { TableKit } from "../table-kit.ts";

/** What the parts of a session's pack are written from. */
export interface SessionContext extends TableKit {
  readonly solved: SolvedSession;
  readonly guide: Guide;
}

const two = (number: number) => String(number).padStart(2, "0");

/** Minutes after midnight as a clock shows them: `09:30`. */
export const clockText = (minutes: Min): string =>
  `${two(Math.floor(minutes / 60) % 24)}:${two(minutes % 60)}`;

/** Each swim of a session once. */
export const swimsIn = ({ solved: { spots } }: SessionContext): readonly SwimEntry[] => [
  ...new Set(spots.map(({ swim }) => swim)),
];

/** When and with whom a session is, in one line. */
export function sessionLine({ solved: { session }, words, figures }: SessionContext): string {
  const { date, fromMin, roomMin, learners, adults } = session;
  const who = words("session.who", { learners: learners.count, adults });
  const ages = learners.ages === undefined ? "" : ` ${words("session.ages", { ages: learners.ages })}`;
  return words("session.line", {
    date: figures.date(date),
    from: clockText(fromMin),
    to: clockText(fromMin + roomMin),
    who: `${who}${ages}`,
  });
}
