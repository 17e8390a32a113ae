import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFObject,
  type PDFPage,
  PDFRawStream,
  PDFRef,
  PDFString,
} from "@cantoo/pdf-lib";
import { type PaintedPiece, paintedPieces } from "./content-stream.ts";
import { type RawFont, rawFont } from "./raw-font.ts";

/** A structure element as it stands in the file. */
export interface RawElement {
  readonly ref: string;
  readonly type: string;
  readonly parent: string;
  readonly kids: readonly RawElement[];
  readonly alt?: string;
  readonly scope?: string;
  /** Columns that a cell takes up. */
  readonly span: number;
  readonly box?: readonly number[];
  /** Marked content right below it: the page's reference and the number of the piece there. */
  readonly content: readonly { readonly page: string; readonly mcid: number }[];
  /** Annotations right below it. */
  readonly objects: readonly { readonly page: string; readonly ref: string }[];
}

/** An annotation of a page, such as a link. */
export interface RawAnnotation {
  readonly ref: string;
  readonly subtype: string;
  readonly contents: string | undefined;
  readonly structParent: number | undefined;
  readonly rect: readonly number[];
  /** Address that it leads to. */
  readonly address?: string;
  /** Reference of the page that it leads to. */
  readonly target?: string;
}

export interface RawPage {
  readonly ref: string;
  readonly structParents: number | undefined;
  readonly tabs: string | undefined;
  readonly annotations: readonly RawAnnotation[];
  readonly xObjects: number;
  /** The content stream, unpacked. */
  readonly content: string;
  readonly pieces: readonly PaintedPiece[];
  readonly fonts: ReadonlyMap<string, RawFont>;
}

export interface RawPdf {
  readonly header: string;
  readonly catalog: PDFDict;
  readonly encrypted: boolean;
  readonly root: RawElement;
  readonly roleMap: boolean;
  readonly pages: readonly RawPage[];
  /** `StructParents` of a page → the owner of each of its pieces. */
  readonly owners: ReadonlyMap<number, readonly string[]>;
  /** `StructParent` of an annotation → its owner. */
  readonly objectOwners: ReadonlyMap<number, string>;
  readonly xmp: string;
}

/** Reads what stands in the objects of a PDF, with nothing made good. */
export async function rawPdf(bytes: Uint8Array): Promise<RawPdf> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  const { catalog, context } = document;
  const treeRoot = catalog.lookup(PDFName.of("StructTreeRoot"), PDFDict);
  const [first, ...others] = treeRoot.lookup(PDFName.of("K"), PDFArray).asArray();
  if (others.length > 0) throw new Error("more than one root element");
  const metadata = catalog.lookup(PDFName.of("Metadata"));
  return {
    header: new TextDecoder("latin1").decode(bytes.subarray(0, 8)),
    catalog,
    encrypted: context.trailerInfo.Encrypt !== undefined,
    root: element(treeRoot, first as PDFRef, "StructTreeRoot"),
    roleMap: treeRoot.has(PDFName.of("RoleMap")),
    pages: document.getPages().map(rawPage),
    ...ownersOf(treeRoot),
    xmp: metadata instanceof PDFRawStream ? streamText(metadata) : "",
  };
}

/** The value of a name, string, number or boolean of a dictionary, as text. */
export function entry(dict: PDFDict | undefined, key: string): string | undefined {
  return plainText(dict?.lookup(PDFName.of(key)));
}

function plainText(object: PDFObject | undefined): string | undefined {
  if (object instanceof PDFString || object instanceof PDFHexString) return object.decodeText();
  if (object instanceof PDFName) return object.decodeText();
  return object?.toString();
}

function streamText(stream: PDFRawStream): string {
  return new TextDecoder().decode(decodePDFRawStream(stream).decode());
}

function element(from: PDFDict, ref: PDFRef, parent: string): RawElement {
  const dict = from.context.lookup(ref, PDFDict);
  if (String(dict.get(PDFName.of("P"))) === "") throw new Error("an element without a parent");
  const kids = dict.lookupMaybe(PDFName.of("K"), PDFArray)?.asArray() ?? [];
  const attributes = dict.lookupMaybe(PDFName.of("A"), PDFDict);
  const page = String(dict.get(PDFName.of("Pg")));
  const type = entry(dict, "S")!;
  const box = attributes?.lookupMaybe(PDFName.of("BBox"), PDFArray);
  const alt = entry(dict, "Alt");
  const scope = entry(attributes, "Scope");
  return {
    ref: String(ref),
    type,
    parent,
    span: Number(entry(attributes, "ColSpan") ?? 1),
    kids: kids.filter((kid) => kid instanceof PDFRef).map((kid) => element(dict, kid as PDFRef, type)),
    content: kids.flatMap((kid) => {
      if (kid instanceof PDFNumber) return [{ page, mcid: kid.asNumber() }];
      if (!(kid instanceof PDFDict) || entry(kid, "Type") !== "MCR") return [];
      return [{ page: String(kid.get(PDFName.of("Pg"))), mcid: Number(entry(kid, "MCID")) }];
    }),
    objects: kids.flatMap((kid) =>
      kid instanceof PDFDict && entry(kid, "Type") === "OBJR"
        ? [{ page: String(kid.get(PDFName.of("Pg"))), ref: String(kid.get(PDFName.of("Obj"))) }]
        : [],
    ),
    ...(alt !== undefined && { alt }),
    ...(scope !== undefined && { scope }),
    ...(box && { box: box.asArray().map((n) => (n as PDFNumber).asNumber()) }),
  };
}

function ownersOf(treeRoot: PDFDict): Pick<RawPdf, "owners" | "objectOwners"> {
  const numbers = treeRoot.lookup(PDFName.of("ParentTree"), PDFDict).lookup(PDFName.of("Nums"), PDFArray);
  const owners = new Map<number, string[]>();
  const objectOwners = new Map<number, string>();
  let before = -1;
  for (let i = 0; i < numbers.size(); i += 2) {
    const number = numbers.lookup(i, PDFNumber).asNumber();
    if (number <= before) throw new Error("numbers of the parent tree do not rise");
    before = number;
    const value = numbers.lookup(i + 1);
    if (value instanceof PDFArray) owners.set(number, value.asArray().map(String));
    else objectOwners.set(number, String(numbers.get(i + 1)));
  }
  return { owners, objectOwners };
}

function annotation(from: PDFDict, ref: PDFRef): RawAnnotation {
  const dict = from.context.lookup(ref, PDFDict);
  const structParent = entry(dict, "StructParent");
  const action = dict.lookupMaybe(PDFName.of("A"), PDFDict);
  const address = entry(action, "URI");
  const target = action?.lookupMaybe(PDFName.of("D"), PDFArray)?.get(0);
  return {
    ref: String(ref),
    subtype: entry(dict, "Subtype")!,
    contents: entry(dict, "Contents"),
    structParent: structParent === undefined ? undefined : Number(structParent),
    rect: dict
      .lookup(PDFName.of("Rect"), PDFArray)
      .asArray()
      .map((n) => (n as PDFNumber).asNumber()),
    ...(address !== undefined && { address }),
    ...(target && { target: String(target) }),
  };
}

/** The library makes an array of a single stream as it opens a page. */
function contentOf(page: PDFDict): string {
  const contents = page.lookup(PDFName.of("Contents"));
  const streams =
    contents instanceof PDFArray ? contents.asArray().map((ref) => page.context.lookup(ref)) : [contents];
  return streams.map((stream) => streamText(stream as PDFRawStream)).join("\n");
}

function rawPage({ node, ref }: PDFPage): RawPage {
  const resources = node.Resources();
  const content = contentOf(node);
  const fonts = resources?.lookupMaybe(PDFName.of("Font"), PDFDict);
  const structParents = entry(node, "StructParents");
  return {
    ref: String(ref),
    structParents: structParents === undefined ? undefined : Number(structParents),
    tabs: entry(node, "Tabs"),
    annotations: (node.lookupMaybe(PDFName.of("Annots"), PDFArray)?.asArray() ?? []).map((one) =>
      annotation(node, one as PDFRef),
    ),
    xObjects: resources?.lookupMaybe(PDFName.of("XObject"), PDFDict)?.keys().length ?? 0,
    content,
    pieces: paintedPieces(content),
    fonts: new Map(
      (fonts?.keys() ?? []).map((name) => [name.decodeText(), rawFont(fonts!.lookup(name, PDFDict))]),
    ),
  };
}
