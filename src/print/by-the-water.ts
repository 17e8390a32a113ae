import type { Drawings } from "../drawing/pictures.ts";
import type { SolvedShelf } from "../model/shelf.ts";
import type { SolvedSession } from "../model/solved-session.ts";
import type { SwimText } from "../model/swim.ts";
import type { DoesNotFit } from "./does-not-fit.ts";
import type { TextPages } from "./handout/text-handout.ts";
import type { Press } from "./press.ts";
import type { PaintedFile } from "./printed-file.ts";
import { layOutSessions, sessionFiles, sessionProblems } from "./sessions/session-files.ts";
import { layOutShelves, shelfFiles, shelfProblems } from "./shelves/shelf-files.ts";
import { layOutSwims, swimFiles, swimProblems } from "./swims/swim-files.ts";

/** What is printed for places, days and shops, besides the guide itself. */
export interface ByTheWater {
  readonly swims: readonly SwimText[];
  readonly shelves: readonly SolvedShelf[];
  readonly sessions: readonly SolvedSession[];
  /** What is written on floats, by their ids. */
  readonly markings: ReadonlyMap<string, string>;
}

/** Sheets of swims, packs of sessions and lists and labels of shops: what does not fit, and the files of what does. */
export function layOutByTheWater(
  { swims, shelves, sessions, markings }: ByTheWater,
  plans: readonly TextPages[],
  drawings: Drawings,
  press: Press,
): { readonly problems: readonly DoesNotFit[]; readonly files: () => AsyncIterable<PaintedFile> } {
  const places = layOutSwims(swims, drawings, press);
  const shops = layOutShelves(shelves, drawings, press);
  const days = layOutSessions({ sessions, drawings, plans, markings }, press);
  const fitting = shops.filter((one) => shelfProblems([one]).length === 0);
  return {
    problems: [...swimProblems(places), ...shelfProblems(shops), ...days.flatMap(sessionProblems)],
    files: async function* () {
      yield* swimFiles(places, press);
      yield* sessionFiles(days, press);
      yield* shelfFiles(fitting, press);
    },
  };
}
