import { entry } from "../../core/lists.ts";
import type { Face } from "../../drawing/model.ts";
import { type Fonts, faces } from "../../layout/fonts.ts";
import type { PaperSide, Placed } from "../../layout/paper.ts";
import { type Keep, makeAnew } from "../../model/kept.ts";
import { type Attachment, archiveEntries } from "./pdf-archive.ts";
import { latin1 } from "./pdf-bytes.ts";
import { fontNames } from "./pdf-content.ts";
import { PdfFile, packed } from "./pdf-file.ts";
import { PdfFont } from "./pdf-font.ts";
import { PdfImages } from "./pdf-images.ts";
import { CodedLines } from "./pdf-lines.ts";
import type { Links } from "./pdf-links.ts";
import { type DocumentFacts, pdfDate, producer, writeOutline, xmpPacket } from "./pdf-metadata.ts";
import { type Heading, paintSide, pointsPerMm } from "./pdf-page.ts";
import { type PaintedPart, paintPart } from "./pdf-part.ts";
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
  /** Where sides are kept as they are packed; where nothing is said, nowhere. */
  readonly keep?: Keep;
}

/** A tag per face, as subset fonts carry one. Source: ISO 32000-1, section 9.6.4. */
const subsetTags: Readonly<Record<Face, string>> = { regular: "DOTAAA", bold: "DOTAAB", italic: "DOTAAC" };

/**
 * Sides of paper as one tagged PDF: true vectors, embedded subset fonts, a structure tree, an outline of the
 * headings; it keeps the rules of PDF/UA-1 and PDF/A-3a. The same input gives the same bytes: the date is handed in, the file's identifier is a hash of its content.
 *
 * @throws Error where a side holds text without a role or a figure without alternative text: a fault of a template
 */
export function paintPdf(sides: readonly PaperSide[], options: PdfOptions, fonts: Fonts): Uint8Array {
  const file = new PdfFile();
  const embedded = {
    regular: new PdfFont(file, fonts.faces.regular.source, subsetTags.regular),
    bold: new PdfFont(file, fonts.faces.bold.source, subsetTags.bold),
    italic: new PdfFont(file, fonts.faces.italic.source, subsetTags.italic),
  };
  const images = new PdfImages(file);
  const lines = new CodedLines(embedded);
  const { pages, headings, tree } = paintSides(
    sides,
    options,
    { file, images, lines },
    partPainter(options, fonts),
  );
  const used = faces.filter((face) => embedded[face].isUsed);
  const fontDict = Object.fromEntries(used.map((face) => [fontNames[face], embedded[face].ref]));
  const tops = file.reserve();
  for (const { ref, dict } of pages) {
    file.set(ref, { ...dict, Parent: tops, Resources: { Font: fontDict, XObject: images.dict } });
  }
  for (const face of used) embedded[face].finish();
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

interface PaintedPages {
  readonly pages: readonly { readonly ref: PdfRef; readonly dict: PdfDict }[];
  readonly headings: readonly Heading[];
  readonly tree: StructureTree;
}

/** Paints parts; those that say what they are made from are painted once for all documents that know the same links. */
function partPainter({ links, parts = makeAnew }: PdfOptions, fonts: Fonts) {
  const isLink = (name: string) => links?.has(name) ?? false;
  return (part: Placed): PaintedPart => {
    const { from } = part;
    const paint = () => paintPart(part.items, isLink, fonts);
    return from === undefined
      ? paint()
      : parts("painted part", `${from} ${links ? "linked" : "plain"}`, paint);
  };
}

interface Shared {
  readonly file: PdfFile;
  readonly images: PdfImages;
  readonly lines: CodedLines;
}

function paintSides(
  sides: readonly PaperSide[],
  { links = new Map(), keep = makeAnew }: PdfOptions,
  shared: Shared,
  paint: (part: Placed) => PaintedPart,
): PaintedPages {
  const { file } = shared;
  const tree = new StructureTree(file);
  const refs = sides.map(() => file.reserve());
  const parts = { ...shared, tree, links, pages: refs, paint };
  const headings: Heading[] = [];
  const pages = sides.map((side, i) => {
    const ref = entry(refs, i);
    const painted = paintSide(side, ref, parts);
    headings.push(...painted.headings);
    const dict: PdfDict = {
      Type: "Page",
      MediaBox: [0, 0, side.widthMm * pointsPerMm, side.heightMm * pointsPerMm],
      Contents: file.addFlate(keep("packed", painted.stream, () => packed(latin1(painted.stream)))),
      StructParents: painted.number,
      Annots: painted.annotations.length > 0 ? painted.annotations : undefined,
      Tabs: "S",
      Rotate: side.viewTurn === 0 ? undefined : side.viewTurn,
    };
    return { ref, dict };
  });
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
