import { pageWords } from "../../templates/pages/page-words.ts";
import {
  floatPicture,
  hangPicture,
  rigPicture,
  sinkPicture,
  smallRigPicture,
} from "../../templates/pages/rig-picture.ts";
import { nothingKept, type View } from "../../templates/pages/view.ts";
import { first, known } from "../core/lists.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { drawSign } from "../drawing/signs/draw-sign.ts";
import { drawingToSvg } from "../drawing/svg.ts";
import { publicAddress, sitePaths, termId } from "../model/addresses.ts";
import { once } from "../model/kept.ts";
import type { SolvedDepth, SolvedRig } from "../model/solved.ts";
import { proseFilm } from "./films.tsx";
import { type TermLink, termLinker } from "./glossary-links.ts";
import { imageElement, imagePath } from "./images.ts";
import type { SiteInput } from "./input.ts";
import { iconOf, themeColour } from "./look.ts";
import { markdownToHast } from "./markdown.ts";
import { relativeHref } from "./paths.ts";
import { prosePictures } from "./pictures.ts";
import { printablesOf } from "./printables.ts";
import { fromHast } from "./to-hast.ts";

type RigAtDepth = readonly [rig: SolvedRig, depth: SolvedDepth, idPrefix: string];
type DrawDepth<T> = (rig: SolvedRig, depth: SolvedDepth, kit: DrawingKit, idPrefix: string) => T;

/** What templates are given, for the page at this path. */
export function viewOf(path: string, input: SiteInput): View {
  const { library, kit, printables, liveBody, reason, rigTexts, inWater, feedPlaces, stamped, kept } = input;
  const { siteAddress } = library.guide;
  const logo = library.guide.logo === undefined ? undefined : known(input.images, library.guide.logo);
  const say = pageWords(kit.words);
  let tables = 0;
  const href = (target: string) => hrefFrom(path, stamped?.get(target) ?? target, siteAddress);
  const linkTerms = once(() => termLinker(path === sitePaths.glossary ? [] : termsOf(input, href)));
  // The sums of a rig follow from the rig.
  const ofDepth = <T extends string | undefined>(
    kind: string,
    draw: DrawDepth<T>,
    ...[rig, depth, idPrefix]: RigAtDepth
  ): T | "" =>
    kept<T | "">(kind, [rig.rig, depth.depthMm, idPrefix], (kit) => draw(rig, depth, kit, idPrefix), "");
  return {
    library,
    solved: input.solved,
    printables,
    printablesOf: (rigId) => printablesOf(rigId, printables),
    path,
    address: (target) => siteAddress && publicAddress(target, siteAddress),
    href,
    phone: nothingKept,
    themeColour: themeColour(library.guide),
    icon: iconOf(input),
    ...(logo && { logo: { ...first(logo.web), path: imagePath(logo, first(logo.web)) } }),
    say,
    reason,
    rigTexts,
    inWater,
    feedPlaces,
    figures: kit.figures,
    drawRig: (rig, depth, idPrefix) => ofDepth("rig", rigPicture, rig, depth, idPrefix),
    drawSink: (rig, depth, idPrefix) => ofDepth("sinking", sinkPicture, rig, depth, idPrefix),
    drawHang: (rig, depth, idPrefix) => ofDepth("hanging", hangPicture, rig, depth, idPrefix),
    drawFloatChart: (floats) =>
      prosePictures({ picture: "float-chart", floats }, input, "side-by-side")[0]?.svg ?? "",
    drawKnot: (knot) => prosePictures({ picture: "knot", knot }, input, knot),
    drawSmallRig: (rig, idPrefix) =>
      kept("small rig", [rig.rig, idPrefix], (kit) => smallRigPicture(rig, kit, idPrefix), ""),
    drawSign: (picture, sign) => drawingToSvg(drawSign(picture, sign), { idPrefix: termId(sign) }),
    drawFish: (fish) => prosePictures({ picture: "fish", fish }, input, fish)[0]?.svg,
    drawBait: (bait) => prosePictures({ picture: "bait", bait }, input, bait)[0]?.svg,
    drawFloat: (float, idPrefix) =>
      kept("float", [float, idPrefix], (kit) => floatPicture(float, kit, idPrefix), ""),
    markdown: (text, { level = 2, idPrefix = "" } = {}) =>
      markdownToHast(liveBody(text), {
        path: text.path,
        level,
        idPrefix,
        nextTableName: () => say("table", { number: ++tables }),
        href,
        pictures: (reference, prefix) => prosePictures(reference, input, prefix),
        film: (reference, prefix) => proseFilm(reference, input, prefix, href),
        image: (reference) => imageElement(reference, known(input.images, reference.image), href),
        linkTerms: linkTerms(),
      }).map(fromHast),
  };
}

/** A page for addresses that are not there is shown at any of them, so its links begin at the root of the host. */
function hrefFrom(path: string, target: string, siteAddress = "https://host.invalid/"): string {
  if (path !== sitePaths.notFound) return relativeHref(path, target);
  const { pathname, hash } = new URL(publicAddress(target, siteAddress));
  return pathname + hash;
}

function termsOf({ library }: SiteInput, href: View["href"]): TermLink[] {
  return library.glossary
    .filter(({ link }) => link)
    .map(({ term, also }) => ({
      forms: [term, ...also],
      address: href(`${sitePaths.glossary}#${termId(term)}`),
    }));
}
