import type { SiteInput } from "../site/input.ts";
import { sessionLine } from "../words/session/session-context.ts";
import { sessionTexts } from "../words/session/session-texts.ts";
import type { Solved } from "./stages.ts";

/** The sessions whose files ask for a page, by their days. */
export function shownSessions({ sessions, library: { guide }, kit }: Solved): SiteInput["sessions"] {
  return sessions
    .filter(({ session }) => session.isPublic)
    .map((solved) => {
      const { id, path, title, date } = solved.session;
      const context = { ...kit, solved, guide };
      return { id, path, title, date, line: sessionLine(context), texts: sessionTexts(context) };
    })
    .sort((a, b) => (a.date < b.date || (a.date === b.date && a.id < b.id) ? -1 : 1));
}
