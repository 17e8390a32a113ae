import { type Drawings, drawFilms } from "../drawing/pictures.ts";
import { makeAnew } from "../model/kept.ts";
import type { Printable } from "../model/printable.ts";
import { withCardFaces } from "../print/card-faces.ts";
import type { SiteInput } from "../site/input.ts";
import { lentSignsFile } from "../site/look.ts";
import { reasonText } from "../words/reason.ts";
import { rigTexts } from "../words/rig-texts.ts";
import { feedText, waterText } from "../words/water-text.ts";
import { choosingData } from "./choosing-data.ts";
import { keptOnPages } from "./kept-on-pages.ts";
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
  const { library, source, kit, font } = solved;
  const choosing = choosingData(library, kit);
  return {
    library,
    solved: source.solved,
    drawings,
    ...keptOnPages(solved, settings),
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
