import type { Guide } from "../../model/library.ts";

/** What a text, or a part of pages that the guide writes itself, may ask for of the guide by `:guide[]{of=NAME}`. */
interface GuideFacts {
  readonly title: string;
  readonly publisher: string;
  /** Day of the edition, as the guide's language writes it. */
  readonly edition: string;
  /** Of the law of lead and the other rules. */
  readonly place: string;
  readonly "site-address"?: string;
  readonly address?: string;
  /** All lines of the hours, one after another. */
  readonly hours?: string;
  readonly "club-number"?: string;
}

/** @param dateText writes a day */
export function guideFacts(guide: Guide, dateText: (day: string) => string): GuideFacts {
  const { title, publisher, edition, leadRule, siteAddress, visit, clubNumber } = guide;
  return {
    title,
    publisher,
    edition: dateText(edition),
    place: leadRule.place,
    ...(siteAddress !== undefined && { "site-address": siteAddress }),
    ...(visit && { address: visit.address }),
    ...(visit && visit.hours.length > 0 && { hours: visit.hours.join(", ") }),
    ...(clubNumber !== undefined && { "club-number": clubNumber }),
  };
}
