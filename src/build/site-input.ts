import { type Drawings, drawFilms } from "../drawing/pictures.ts";
import { digestOf } from "../model/digest.ts";
import { makeAnew } from "../model/kept.ts";
import type { Printable } from "../model/printable.ts";
import { withCardFaces } from "../print/card-faces.ts";
import type { SiteInput } from "../site/input.ts";
import { lentSignsFile } from "../site/look.ts";
import { reasonText } from "../words/reason.ts";
import { rigTexts } from "../words/rig-texts.ts";
import { feedText, waterText } from "../words/water-text.ts";
import { mayLackRoom } from "./no-room.ts";
import { type BuildSettings, liveBodyIn, type Solved } from "./stages.ts";

/** What the pages are made from. */
export function siteInput(
  solved: Solved,
  drawings: Drawings,
  printables: readonly Printable[],
  settings: BuildSettings,
): SiteInput {
  const { siteAssets, keep = makeAnew } = settings;
  const mayLack = mayLackRoom(solved, settings);
  const { library, source, kit, font } = solved;
  const kitFrom = digestOf(library.guide, library.words);
  return {
    library,
    solved: source.solved,
    drawings,
    kept: (kind, from, draw, without) =>
      mayLack(() => keep(`${kind} on a page`, digestOf(kitFrom, from), draw), without),
    films: drawFilms(source),
    images: source.images,
    swims: solved.swims,
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
