import { type Drawings, drawFilms } from "../drawing/pictures.ts";
import type { Printable } from "../model/printable.ts";
import { withCardFaces } from "../print/card-faces.ts";
import type { SiteInput } from "../site/input.ts";
import { lentSignsFile } from "../site/look.ts";
import { reasonText } from "../words/reason.ts";
import { rigTexts } from "../words/rig-texts.ts";
import { feedText, waterText } from "../words/water-text.ts";
import { type BuildSettings, liveBodyIn, type Solved } from "./stages.ts";

/** What the pages are made from. */
export function siteInput(
  solved: Solved,
  drawings: Drawings,
  printables: readonly Printable[],
  { siteAssets }: BuildSettings,
): SiteInput {
  const { library, source, kit, font } = solved;
  return {
    library,
    solved: source.solved,
    drawings,
    films: drawFilms(source),
    images: source.images,
    kit,
    assets: withCardFaces(font ? new Map([...siteAssets, [lentSignsFile, font.woff]]) : siteAssets, library),
    ...(font && { lentSigns: font.signs }),
    printables,
    liveBody: liveBodyIn(solved),
    inWater: (rig, depth) => waterText(rig, depth, kit),
    feedPlaces: (rig) => feedText(rig, kit),
    reason: (finding) => reasonText(finding, kit.words, kit.figures),
    rigTexts: rigTexts(kit),
  };
}
