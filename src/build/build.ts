import type { Root } from "mdast";
import { knotMessages } from "../checks/knots.ts";
import { checkLinks } from "../checks/links.ts";
import { checkMarkdown } from "../checks/markdown-allowed.ts";
import { checkContent } from "../checks/table.ts";
import { allTexts } from "../checks/texts.ts";
import { readLibrary } from "../content/read-library.ts";
import { readSources, type World } from "../content/world.ts";
import { known } from "../core/lists.ts";
import type { DrawingKit } from "../drawing/kit.ts";
import { measureText } from "../drawing/labels/font-metrics.ts";
import type { PictureSource } from "../drawing/pictures.ts";
import { readyImages } from "../images/ready-images.ts";
import type { OutputFile } from "../markup/output.ts";
import type { Library, MarkdownText } from "../model/library.ts";
import { hasErrors, message, type Staged } from "../model/message.ts";
import type { Printable } from "../model/printable.ts";
import type { SolvedRig } from "../model/solved.ts";
import { withCardFaces } from "../print/card-faces.ts";
import { DoesNotFitError, doesNotFitText } from "../print/does-not-fit.ts";
import { printFiles, type SheetChoice } from "../print/print-files.ts";
import { fileHash } from "../site/file-hash.ts";
import { siteFiles } from "../site/site-files.tsx";
import { makeFigures } from "../words/figures.ts";
import { withLiveFigures } from "../words/live/live-figures.ts";
import { reasonText } from "../words/reason.ts";
import { rigTexts } from "../words/rig-texts.ts";
import { feedText, waterText } from "../words/water-text.ts";
import { makeWords } from "../words/words.ts";
import { ContentError } from "./content-error.ts";
import { dataFiles } from "./data.ts";
import { imagesInUse, unusedImages } from "./images-in-use.ts";
import { published, rigsAskedFor } from "./publish.ts";
import { solveLibrary } from "./solve-library.ts";

/** Content with its sums done: all that pages, cards and data are made from. */
export interface Solved {
  /** What is published. */
  readonly library: Library;
  /** What texts draw and reckon from: what is left out of the guide, too. */
  readonly source: PictureSource;
  readonly rigs: readonly SolvedRig[];
  /** Every text with its live figures put in. */
  readonly live: ReadonlyMap<Root, Root>;
  readonly kit: DrawingKit;
}

/** Content that is right by itself, left out or not, and how its words and figures are written. */
export type Read = Pick<Solved, "library" | "kit">;

/**
 * Content folders → sources → library. The value is missing where the content has errors.
 *
 * @param shipped folder of the library that comes with the tool, for a guide of one's own to borrow from
 */
export async function readContent(
  world: World,
  folders: readonly string[],
  shipped?: string,
): Promise<Staged<Read | undefined>> {
  const { value: library, messages } = readLibrary(await readSources(world, folders, shipped));
  if (!library) return { value: undefined, messages };
  const markdown = allTexts(library).flatMap(checkMarkdown);
  const all = [...messages, ...markdown];
  if (hasErrors(markdown)) return { value: undefined, messages: all };
  const { guide } = library;
  const words = makeWords(library.words);
  const kit: DrawingKit = {
    words,
    figures: makeFigures(guide.units, words, guide.language),
    measure: measureText,
  };
  return { value: { library, kit }, messages: all };
}

/**
 * Content folders → sources → library → solved rigs. The value is missing where the content has errors; every message
 * of every stage that could run is given, whether or not there is a value.
 */
export async function solveContent(
  world: World,
  folders: readonly string[],
  shipped?: string,
): Promise<Staged<Solved | undefined>> {
  const read = await readContent(world, folders, shipped);
  if (!read.value) return { value: undefined, messages: read.messages };
  const { value, messages } = await solveRead(read.value);
  const all = [...read.messages, ...messages];
  return { value: hasErrors(all) ? undefined : value, messages: all };
}

/** Library → solved rigs, live texts and pictures; what the content's own files have to tell was told before. */
export async function solveRead({ library: whole, kit }: Read): Promise<Staged<Solved | undefined>> {
  const solved = await solveLibrary({ ...whole, rigs: rigsAskedFor(whole) }, kit.words, kit.figures);
  const library = published(whole, new Set([...whole.leftOut, ...solved.leftOut]));
  const rigs = solved.value.filter(({ rig }) => library.rigs.some(({ id }) => id === rig.id));
  const inTexts = { library: whole, solved: new Map(solved.value.map((rig) => [rig.rig.id, rig])) };
  const texts = liveTexts(library, inTexts, kit);
  const used = imagesInUse(texts.value.values(), library);
  const shown = [...library.images.values()].filter(({ id }) => used.has(id));
  const images = await readyImages(shown, library.guide.logo);
  const source = { ...inTexts, images: images.value };
  const knots = knotMessages(library, kit.words);
  const lent = new Set(whole.lent.values());
  const checked = [
    // What is weak in a text that is only lent is not for its borrower to mend.
    ...checkContent({ library, rigs, figures: kit.figures }).filter(({ place }) => !lent.has(place.file)),
    ...checkLinks(library),
    ...unusedImages(library, used),
  ];
  const all = [...knots, ...solved.messages, ...texts.messages, ...images.messages, ...checked];
  if (hasErrors(all)) return { value: undefined, messages: all };
  return { value: { library, source, rigs, live: texts.value, kit }, messages: all };
}

/**
 * Texts of the library → the same with live figures. References to what is not there are errors; a lent text goes
 * without what it says there.
 */
function liveTexts(
  library: Library,
  source: Pick<PictureSource, "library" | "solved">,
  { words, figures }: DrawingKit,
): Staged<ReadonlyMap<Root, Root>> {
  const lent = new Set(library.lent.values());
  const live = allTexts(library).map((text) => {
    const isLent = lent.has(text.path);
    const made = withLiveFigures(text, { ...source, words, figures }, isLent ? "goes" : "stays");
    const told = isLent
      ? made.messages
          .filter(({ severity }) => severity === "error")
          .map((of) => message("lent-shortened", of.place, { of }))
      : made.messages;
    return { body: text.body, value: made.value, messages: told };
  });
  return {
    value: new Map(live.map(({ body, value }) => [body, value])),
    messages: live.flatMap(({ messages }) => messages),
  };
}

/** What a build is told besides its content. */
export interface BuildSettings {
  /** Day the files are dated, `2026-11-20`. */
  readonly date: string;
  /** Style sheet, fonts and page scripts by file name, made when the tool is compiled. */
  readonly siteAssets: ReadonlyMap<string, string | Uint8Array>;
  /** Which cards go on the sheets, and how often; each once where nothing is asked for. */
  readonly sheets?: SheetChoice;
  /** What is made of it; all where nothing is said. */
  readonly parts?: readonly Part[];
}

/** What is built: the site with the cards that it offers, what is printed, the figures as data. */
export const buildParts = ["web", "print", "data"] as const;
type Part = (typeof buildParts)[number];

/**
 * Solved rigs → data, cards and pages, one file at a time.
 *
 * @throws ContentError where something does not fit its card
 */
export async function* outputFiles(solved: Solved, settings: BuildSettings): AsyncIterable<OutputFile> {
  const { library, source, rigs, live, kit } = solved;
  const { guide, lessons } = library;
  const { parts = buildParts } = settings;
  if (parts.includes("data")) yield* dataFiles(rigs, library);
  if (!parts.includes("web") && !parts.includes("print")) return;
  const entries = new Map(library.rigs.map((entry) => [entry.rig.id, entry]));
  const printed = rigs.map((one) => ({ solved: one, entry: known(entries, one.rig.id) }));
  const liveBody = ({ body }: MarkdownText) => live.get(body) ?? body;
  const handouts = { lessons, pages: library.pages, pictures: source, liveBody };
  const printables: Printable[] = [];
  try {
    for await (const { printable, ...file } of printFiles({
      ...settings,
      guide,
      rigs: printed,
      markings: new Map(library.floats.map(({ float, marking }) => [float.id, marking])),
      handouts,
      kit,
    })) {
      if (parts.includes(file.path.startsWith("site/") ? "web" : "print")) yield file;
      if (!printable || !parts.includes("web")) continue;
      // The site has its own copy: served alone, or kept on a phone, it reaches nothing outside its folder.
      const copy = { ...file, path: `site/${file.path}` };
      const { length: sizeBytes } = file.content;
      printables.push({ ...printable, path: copy.path, sizeBytes, hash: fileHash(file.content) });
      yield copy;
    }
  } catch (error) {
    if (!(error instanceof DoesNotFitError)) throw error;
    const messages = error.problems.map((problem) =>
      message("does-not-fit", problem.place ?? { file: "guide.yaml" }, {
        reason: doesNotFitText(problem, kit.words),
      }),
    );
    throw new ContentError(messages);
  }
  if (!parts.includes("web")) return;
  yield* siteFiles({
    library,
    solved: source.solved,
    pictures: source,
    kit,
    assets: withCardFaces(settings.siteAssets, library),
    printables,
    liveBody,
    inWater: (rig, depth) => waterText(rig, depth, kit),
    feedPlaces: (rig) => feedText(rig, kit),
    reason: (finding) => reasonText(finding, kit.words, kit.figures),
    told: rigTexts(kit),
  });
}
