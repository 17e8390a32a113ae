import { digestOf, digestOnce } from "../model/digest.ts";
import { makeAnew } from "../model/kept.ts";
import type { SiteInput } from "../site/input.ts";
import { kitOffPages } from "./kit-of.ts";
import { mayLackRoom } from "./no-room.ts";
import type { BuildSettings, Solved } from "./stages.ts";

/** How pages, and drawings on them, are kept. What lacks something is not: the next build is to tell of it, too. */
export function keptOnPages(
  solved: Solved,
  settings: BuildSettings,
): Pick<SiteInput, "kept" | "keptPage" | "tried"> {
  const { keep = makeAnew } = settings;
  let lacking = 0;
  const mayLack = mayLackRoom(solved, settings, () => void lacking++);
  const { guide, words } = solved.library;
  const from = digestOf(guide, digestOnce(words));
  const kit = kitOffPages(solved.library);
  const keptWhole = <T>(kind: string, of: string, make: () => T): T => {
    const before = lacking;
    return unlessThrown(() =>
      keep(kind, of, () => {
        const made = make();
        if (lacking > before) throw new NotToBeKept(made);
        return made;
      }),
    );
  };
  return {
    kept: (kind, of, draw, without) =>
      mayLack(() => keep(`${kind} on a page`, digestOf(kit.saidFrom, of), () => draw(kit)), without),
    keptPage: (kind, of, make) => keptWhole(`${kind} as page`, digestOf(from, of), make),
    tried: (of, draw) => keptWhole("tried page", digestOf(kit.saidFrom, of), draw),
  };
}

class NotToBeKept extends Error {
  constructor(readonly made: unknown) {
    super();
  }
}

/** What was made, kept or not. */
function unlessThrown<T>(make: () => T): T {
  try {
    return make();
  } catch (error) {
    if (error instanceof NotToBeKept) return error.made as T;
    throw error;
  }
}
