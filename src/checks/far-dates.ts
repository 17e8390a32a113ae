import { message, type Place } from "../model/message.ts";
import type { ContentCheck } from "./check.ts";

/** What is this much later than the guide that has it was hardly written down on that day. */
const farDays = 366;

const dayOf = (date: string) => Date.parse(date) / 86_400_000;

/** Days on which something was found at a swim, long after the day of the edition: a slip of the year, in the one or the other. */
export const farDates: ContentCheck = ({ library: { guide, swims, notes } }) => {
  const { edition } = guide;
  const told = (date: string, key: string, place: Place) =>
    dayOf(date) > dayOf(edition) + farDays ? [message("date-far-off", place, { key, date, edition })] : [];
  return [
    ...swims.flatMap(({ sounded, placeOf }) => told(sounded, "sounded", placeOf(["sounded"]))),
    ...notes.flatMap(({ date, placeOf }) => told(date, "date", placeOf(["date"]))),
  ];
};
