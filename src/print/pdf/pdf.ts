import { entry } from "../../core/lists.ts";
import type { Fonts } from "../../layout/fonts.ts";
import type { PaperSide, Placed } from "../../layout/paper.ts";
import { type Keep, makeAnew } from "../../model/kept.ts";
import { type Attachment, archiveEntries } from "./pdf-archive.ts";
import { type Pack, PdfFile } from "./pdf-file.ts";
import { embeddedFonts } from "./pdf-font.ts";
import { PdfImages } from "./pdf-images.ts";
import type { Links } from "./pdf-links.ts";
import { type DocumentFacts, pdfDate, producer, writeOutline, xmpPacket } from "./pdf-metadata.ts";
import { type Heading, type Page, pageOfSide } from "./pdf-page.ts";
import { type PaintedPart, paintPart } from "./pdf-part.ts";
import { laidSide, type PaintedSide, sideFrom } from "./pdf-side.ts";
import { UsedSigns } from "./pdf-signs.ts";
import { StructureTree } from "./pdf-structure.ts";
import { type PdfDict, type PdfRef, PdfString } from "./pdf-values.ts";

interface PdfOptions extends DocumentFacts {
  /** How a printer that turns paper over should turn it. */
  readonly duplex?: "long edge" | "short edge" | "one side";
  /** Words whose link is not among these are plain words. */
  readonly links?: Links;
  /** Files that it carries. */
  readonly attached?: readonly Attachment[];
  /** Where parts are kept as they are painted; where nothing is said, nowhere. */
  readonly parts?: Keep;
  /** Where sides are kept as they are painted; where nothing is said, nowhere. */
  readonly sides?: Keep;
  /** Packs streams other than sides; as usual where nothing is said. */
  readonly pack?: Pack;
}

/**
 * Sides of paper as one tagged PDF: true vectors, embedded subset fonts, a structure tree, an outline of the
 * headings; it keeps the rules of PDF/UA-1 and PDF/A-3a. The same input gives the same bytes: the date is handed in, the file's identifier is a hash of its content.
 *
 * @throws Error where a side holds text without a role or a figure without alternative text: a fault of a template
 */
export function paintPdf(sides: readonly PaperSide[], options: PdfOptions, fonts: Fonts): Uint8Array {
  const file = new PdfFile(options.pack);
  const signs = new UsedSigns();
  const { pages, headings, tree } = pagesOf(sides, options, { file, signs }, partPainter(options, fonts));
  const fontDict = embeddedFonts(file, signs.all, fonts);
  const tops = file.reserve();
  for (const { ref, dict, pictures } of pages)
    file.set(ref, { ...dict, Parent: tops, Resources: { Font: fontDict, XObject: pictures } });
  file.set(tops, { Type: "Pages", Kids: pages.map(({ ref }) => ref), Count: pages.length });
  const root = file.add({
    Type: "Catalog",
    Pages: tops,
    Lang: PdfString.ascii(options.language),
    MarkInfo: { Marked: true },
    StructTreeRoot: tree.finish(),
    ViewerPreferences: viewerPreferences(options),
    ...archiveEntries(file, options.attached ?? [], options.date),
    Outlines: writeOutline(file, headings),
    PageMode: headings.length > 1 ? "UseOutlines" : undefined,
    Metadata: file.addStream(new TextEncoder().encode(xmpPacket(options)), {
      Type: "Metadata",
      Subtype: "XML",
    }),
  });
  return file.bytes({ Root: root, Info: file.add(information(options)) });
}

interface Pages {
  readonly pages: readonly (Page & { readonly ref: PdfRef })[];
  readonly headings: readonly Heading[];
  readonly tree: StructureTree;
}

/** Paints parts; those that say what they are made from are painted once for all documents that know the same links. */
function partPainter({ links, parts = makeAnew }: PdfOptions, fonts: Fonts) {
  const isLink = (name: string) => links?.has(name) ?? false;
  return (part: Placed): PaintedPart => {
    const { from } = part;
    const paint = () => paintPart(part.items, isLink, fonts);
    return from === undefined ? paint() : parts("painted part", `${from} ${linked(links)}`, paint);
  };
}

/** Which links are known follows from what is painted, where there are any. */
const linked = (links: Links | undefined) => (links && links.size > 0 ? "linked" : "plain");

interface Shared {
  readonly file: PdfFile;
  readonly signs: UsedSigns;
}

function pagesOf(
  sides: readonly PaperSide[],
  { links = new Map(), sides: keep }: PdfOptions,
  { file, signs }: Shared,
  paint: (part: Placed) => PaintedPart,
): Pages {
  const tree = new StructureTree(file);
  const refs = sides.map(() => file.reserve());
  const parts = { file, images: new PdfImages(file), tree, links, pages: refs };
  const paintedSide = (side: PaperSide): PaintedSide => {
    const lay = () => laidSide(side, paint);
    const from = sideFrom(side);
    return keep && from !== undefined ? keep("side", `${from} ${linked(links)}`, lay) : lay();
  };
  const pages = sides.map((side, i) => {
    const painted = paintedSide(side);
    signs.addAll(painted.signs);
    const ref = entry(refs, i);
    return { ref, ...pageOfSide(side, painted, ref, parts) };
  });
  const headings = pages.flatMap((page) => page.headings);
  return { pages, headings: headings.toSorted((a, b) => a.reading - b.reading), tree };
}

function information({ title, author, subject, date }: PdfOptions): PdfDict {
  return {
    Title: PdfString.text(title),
    Author: PdfString.text(author),
    Subject: subject === undefined ? undefined : PdfString.text(subject),
    Creator: PdfString.ascii(producer),
    Producer: PdfString.ascii(producer),
    CreationDate: pdfDate(date),
    ModDate: pdfDate(date),
  };
}

function viewerPreferences({ duplex }: PdfOptions): PdfDict {
  const turning = {
    "long edge": "DuplexFlipLongEdge",
    "short edge": "DuplexFlipShortEdge",
    "one side": "Simplex",
  };
  return { DisplayDocTitle: true, PrintScaling: "None", Duplex: duplex && turning[duplex] };
}
