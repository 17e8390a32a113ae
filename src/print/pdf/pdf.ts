import {
  type PDFContext,
  PDFDocument,
  type PDFFont,
  PDFHexString,
  PDFName,
  PDFString,
} from "@cantoo/pdf-lib";
import { entry } from "../../core/lists.ts";
import type { Face, Item } from "../../drawing/model.ts";
import { type Fonts, faces } from "../../layout/fonts.ts";
import type { PaperSide } from "../../layout/paper.ts";
import type { RasterImage } from "../../model/own-image.ts";
import { ContentWriter, fontNames } from "./pdf-content.ts";
import type { Links } from "./pdf-links.ts";
import { type DocumentFacts, pdfDate, producer, writeOutline, xmpPacket } from "./pdf-metadata.ts";
import { type Heading, paintSide, pointsPerMm } from "./pdf-page.ts";
import { StructureTree } from "./pdf-structure.ts";

interface PdfOptions extends DocumentFacts {
  /** How a printer that turns paper over should turn it. */
  readonly duplex?: "long edge" | "short edge" | "one side";
  /** Pages stand in the order of folding, so the file is for paper alone and claims no PDF/UA. */
  readonly forFolding?: boolean;
  /** Words whose link is not among these are plain words. */
  readonly links?: Links;
}

/** A tag per face, as subset fonts carry one. Source: ISO 32000-1, section 9.6.4. */
const subsetTags: Readonly<Record<Face, string>> = { regular: "DOTAAA", bold: "DOTAAB", italic: "DOTAAC" };

/**
 * Sides of paper as one tagged PDF: true vectors, embedded subset fonts, a structure tree, an outline of the
 * headings. The same input gives the same bytes: the date is handed in, the file's identifier is a hash of the input.
 *
 * @throws Error where a side holds text without a role or a figure without alternative text: a fault of a template
 */
export async function paintPdf(
  sides: readonly PaperSide[],
  options: PdfOptions,
  fonts: Fonts,
): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const { context, catalog } = document;
  // Reading a font anew for each document would take longer than all else that is done here.
  document.registerFontkit({ create: (bytes) => madeFrom(bytes, fonts) as never });
  const used = facesOf(sides);
  const embedded: Partial<Record<Face, PDFFont>> = {};
  for (const face of used) {
    const { bytes, postscriptName } = fonts.faces[face];
    const customName = `${subsetTags[face]}+${postscriptName}`;
    embedded[face] = await document.embedFont(bytes, { subset: true, customName });
  }

  const tree = new StructureTree(context);
  const headings: Heading[] = [];
  const images = [...imagesOf(sides).values()].map((image, i) => ({
    id: image.id,
    name: `Im${i + 1}`,
    ref: context.register(imageObject(context, image)),
  }));
  const writer = new ContentWriter(fonts, embedded, new Map(images.map(({ id, name }) => [id, name])));
  const pages = sides.map((side) => document.addPage([points(side.widthMm), points(side.heightMm)]));
  const parts = {
    context,
    writer,
    tree,
    fonts,
    links: options.links ?? new Map(),
    pages: pages.map(({ ref }) => ref),
  };
  sides.forEach((side, i) => {
    const { node, ref } = entry(pages, i);
    const painted = paintSide(side, ref, parts);
    headings.push(...painted.headings);
    node.set(PDFName.of("Contents"), context.register(context.flateStream(writer.takePage())));
    node.set(PDFName.of("StructParents"), context.obj(painted.number));
    if (painted.annotations.length > 0) node.set(PDFName.of("Annots"), context.obj([...painted.annotations]));
    node.set(PDFName.of("Tabs"), PDFName.of("S"));
    if (side.viewTurn !== 0) node.set(PDFName.of("Rotate"), context.obj(side.viewTurn));
    for (const { name, ref: image } of images) node.setXObject(PDFName.of(name), image);
    for (const face of used) node.setFontDictionary(PDFName.of(fontNames[face]), embedded[face]!.ref);
  });

  catalog.set(PDFName.of("Lang"), PDFString.of(options.language));
  catalog.set(PDFName.of("MarkInfo"), context.obj({ Marked: true }));
  catalog.set(PDFName.of("StructTreeRoot"), tree.finish());
  catalog.set(PDFName.of("ViewerPreferences"), context.obj(viewerPreferences(options)));
  const outline = writeOutline(context, headings);
  if (outline) catalog.set(PDFName.of("Outlines"), outline);
  if (headings.length > 1) catalog.set(PDFName.of("PageMode"), PDFName.of("UseOutlines"));
  const xmp = new TextEncoder().encode(xmpPacket(options, !options.forFolding));
  catalog.set(
    PDFName.of("Metadata"),
    context.register(context.stream(xmp, { Type: "Metadata", Subtype: "XML" })),
  );
  context.trailerInfo.Info = context.register(
    context.obj({
      Title: PDFHexString.fromText(options.title),
      Author: PDFHexString.fromText(options.author),
      ...(options.subject !== undefined && { Subject: PDFHexString.fromText(options.subject) }),
      Creator: PDFString.of(producer),
      Producer: PDFString.of(producer),
      CreationDate: pdfDate(options.date),
      ModDate: pdfDate(options.date),
    }),
  );
  const id = PDFHexString.of(await identifier(sides, options));
  context.trailerInfo.ID = context.obj([id, id]);
  return document.save({ addDefaultPage: false, updateFieldAppearances: false });
}

function madeFrom(bytes: Uint8Array, fonts: Fonts): object {
  const face = faces.find((one) => fonts.faces[one].bytes === bytes);
  if (face === undefined) throw new Error("bytes of no known font");
  return fonts.faces[face].made;
}

function viewerPreferences({ duplex }: PdfOptions) {
  const turning = {
    "long edge": "DuplexFlipLongEdge",
    "short edge": "DuplexFlipShortEdge",
    "one side": "Simplex",
  };
  return {
    DisplayDocTitle: true,
    PrintScaling: "None",
    ...(duplex && { Duplex: turning[duplex] }),
  };
}

function points(mm: number): number {
  return Math.round(mm * pointsPerMm * 1e4) / 1e4;
}

/** The faces that a document uses, in a fixed order. */
function facesOf(sides: readonly PaperSide[]): Face[] {
  const found = new Set<Face>();
  const look = (items: readonly Item[]): void => {
    for (const item of items) {
      if (item.kind === "text") found.add(item.face);
      else if (item.kind === "group") look(item.items);
    }
  };
  for (const side of sides) for (const part of side.parts) look(part.items);
  return faces.filter((face) => found.has(face));
}

/** The pictures of a document, each once. */
function imagesOf(sides: readonly PaperSide[]): ReadonlyMap<string, RasterImage> {
  const found = new Map<string, RasterImage>();
  const look = (items: readonly Item[]): void => {
    for (const item of items) {
      if (item.kind === "image") found.set(item.image.id, item.image);
      else if (item.kind === "group") look(item.items);
    }
  };
  for (const side of sides) for (const part of side.parts) look(part.items);
  return found;
}

/** A JPEG as it is. Source: ISO 32000-1, sections 7.4.8 and 8.9.5. */
function imageObject(context: PDFContext, { widthPx, heightPx, jpeg }: RasterImage) {
  return context.stream(jpeg, {
    Type: "XObject",
    Subtype: "Image",
    Width: widthPx,
    Height: heightPx,
    ColorSpace: "DeviceRGB",
    BitsPerComponent: 8,
    Filter: "DCTDecode",
  });
}

/** Half a SHA-256 of all that goes in, as hexadecimal digits. */
async function identifier(sides: readonly PaperSide[], options: PdfOptions): Promise<string> {
  const input = new TextEncoder().encode(JSON.stringify([sides, options], bytesAsText));
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", input));
  return Array.from(hash.subarray(0, 16), (byte) => byte.toString(16).padStart(2, "0").toUpperCase()).join(
    "",
  );
}

/** Bytes as JSON can say them shortly. */
const bytesAsText = (_: string, value: unknown) =>
  value instanceof Uint8Array ? new TextDecoder("latin1").decode(value) : value;
