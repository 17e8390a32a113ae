import { type Drawings, drawFilms } from "../drawing/pictures.ts";
import { digestOf, digestOnce } from "../model/digest.ts";
import { makeAnew } from "../model/kept.ts";
import type { Printable } from "../model/printable.ts";
import { withCardFaces } from "../print/card-faces.ts";
import type { SiteInput } from "../site/input.ts";
import { lentSignsFile } from "../site/look.ts";
import { reasonText } from "../words/reason.ts";
import { rigTexts } from "../words/rig-texts.ts";
import { feedText, waterText } from "../words/water-text.ts";
import { choosingData } from "./choosing-data.ts";
import { mayLackRoom } from "./no-room.ts";
import { shownSessions } from "./shown-sessions.ts";
import { type BuildSettings, liveBodyIn, type Solved } from "./stages.ts";

/** What the pages are made from. */
export function siteInput(
  solved: Solved,
  drawings: Drawings,
  printables: readonly Printable[],
  settings: BuildSettings,
): SiteInput {
  const { siteAssets, keep = makeAnew } = settings;
  let lacking = 0;
  const mayLack = mayLackRoom(solved, settings, () => void lacking++);
  const { library, source, kit, font } = solved;
  const choosing = choosingData(library, kit);
  const kitFrom = digestOf(library.guide, digestOnce(library.words));
  return {
    library,
    solved: source.solved,
    drawings,
    kept: (kind, from, draw, without) =>
      mayLack(() => keep(`${kind} on a page`, digestOf(kitFrom, from), draw), without),
    keptPage: (kind, from, make) => {
      const before = lacking;
      return unlessThrown(() =>
        keep(`${kind} as page`, digestOf(kitFrom, from), () => {
          const made = make();
          // What it lacks is to be told by the next build too.
          if (lacking > before) throw new NotToBeKept(made);
          return made;
        }),
      );
    },
    films: drawFilms(source),
    images: source.images,
    swims: solved.swims,
    ...(choosing && { choosing }),
    kit,
    assets: withCardFaces(
      font ? new Map([...siteAssets, [lentSignsFile, font.woff]]) : siteAssets,
      library,
      keep,
    ),
    ...(font && { lentSigns: font.signs }),
    printables,
    sessions: shownSessions(solved),
    liveBody: liveBodyIn(solved),
    inWater: (rig, depth) => waterText(rig, depth, kit),
    feedPlaces: (rig) => feedText(rig, kit),
    reason: (finding) => reasonText(finding, kit.words, kit.figures),
    rigTexts: rigTexts(kit),
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
