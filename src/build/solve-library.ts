import type { Root } from "mdast";
import { knotMessages } from "../checks/knots.ts";
import { checkLinks } from "../checks/links.ts";
import { shelfMessages } from "../checks/shelves.ts";
import { checkContent } from "../checks/table.ts";
import { readyFont } from "../images/ready-font.ts";
import { readyImages } from "../images/ready-images.ts";
import type { InOrder } from "../model/in-order.ts";
import { type Keep, makeAnew } from "../model/kept.ts";
import type { Library } from "../model/library.ts";
import { hasErrors, type Staged } from "../model/message.ts";
import { isOurSign } from "../model/our-signs.ts";
import { stageDone } from "../model/stage-times.ts";
import { typedLengths } from "../words/typed-lengths.ts";
import { imagesInUse, unusedImages } from "./images-in-use.ts";
import { inOwnUnits } from "./in-own-units.ts";
import { kitOffPages } from "./kit-of.ts";
import { liveTexts } from "./live-texts.ts";
import { published, rigsAskedFor } from "./publish.ts";
import { solveRigs } from "./solve-rigs.ts";
import { solveSessions } from "./solve-sessions.ts";
import { solveShelves } from "./solve-shelves.ts";
import { solveSwims } from "./solve-swims.ts";
import type { Read, Solved } from "./stages.ts";

/**
 * Library → solved rigs, live texts and pictures; what the content's own files have to tell was told before.
 *
 * @param told without all that is only weak, which takes longest to find, where errors alone are asked for
 * @param inOrder in which the rigs are solved
 */
export async function solveLibrary(
  { library: read, kit }: Read,
  keep: Keep = makeAnew,
  told: "all" | "errors" = "all",
  inOrder?: InOrder,
): Promise<Staged<Solved | undefined>> {
  const lengths = typedLengths(read.guide.units, kit.figures);
  const onCards = typedLengths(read.guide.units, kit.figures.compact);
  const whole = lengths && onCards ? inOwnUnits(read, lengths, onCards) : read;
  const asked = { ...whole, rigs: rigsAskedFor(whole) };
  const solved = await solveRigs(asked, kit.words, kit.figures, keep, inOrder);
  const leftOut = new Set([...whole.leftOut, ...solved.leftOut]);
  const library = published(whole, leftOut);
  // What is weak is looked for in the texts as they are typed, where it is to be mended.
  const asTyped = lengths ? published(read, leftOut) : library;
  const rigs = solved.value.filter(({ rig }) => library.rigs.some(({ id }) => id === rig.id));
  const inTexts = { library: whole, solved: new Map(solved.value.map((rig) => [rig.rig.id, rig])) };
  const offPages = kitOffPages(library);
  const texts = liveTexts(library, inTexts, kit);
  const used = imagesInUse(texts.value.values(), library);
  const shown = [...library.images.values()].filter(({ id }) => used.has(id));
  const images = await readyImages(shown, library.guide.logo, keep);
  const font =
    library.font && (await readyFont(library.font, signsUsed(library, texts.value.values()), isOurSign));
  const swims = solveSwims(library, offPages, keep);
  const source = { ...inTexts, images: images.value, spots: swims.spots };
  const lent = new Set(whole.lent.values());
  const weak = told === "all" ? checkContent({ library: asTyped, rigs, ...offPages, keep }) : [];
  const shelves = solveShelves(library.shelves, solved.value, kit, keep);
  const sessions = solveSessions({ library: whole, rigs: solved.value, kit, keep });
  stageDone("solve", solved.value.length, "rigs");
  const all = [
    ...knotMessages(library, kit.words, keep),
    ...solved.messages,
    ...texts.messages,
    ...images.messages,
    ...shelves.messages,
    ...shelves.value.flatMap((shelf) => shelfMessages(shelf, library)),
    ...swims.messages,
    ...sessions.messages,
    // What is weak in a text that is only lent is not for its borrower to mend.
    ...weak.filter(({ place }) => !lent.has(place.file)),
    ...checkLinks(library),
    ...unusedImages(library, used),
  ];
  if (hasErrors(all)) return { value: undefined, messages: all };
  const value = {
    library,
    source,
    rigs,
    shelves: shelves.value,
    swims: swims.texts,
    sessions: sessions.value,
    live: texts.value,
    kit,
    ...(font && { font }),
  };
  return { value, messages: all };
}

/** All texts of a guide, one after another: whatever sign a page shows is in one of them. */
function signsUsed(library: Library, live: Iterable<Root>): string {
  const { images: _, font: __, ...rest } = library;
  return JSON.stringify([rest, ...live], (_key, value) => (value instanceof Map ? [...value] : value));
}
